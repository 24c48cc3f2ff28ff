export * from "./assessment.ts";
