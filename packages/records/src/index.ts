export * from "./book.ts";
export * from "./change.ts";
export * from "./kinds.ts";
