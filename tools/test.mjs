import { ensureApp, ensureCli, ensureInstalled } from "./ensure-ready.mjs";

ensureInstalled();
ensureCli();
ensureApp();
await import("./verify.mjs");
