#!/usr/bin/env node
import { ensureCli, ensureInstalled } from "../tools/ensure-ready.mjs";

ensureInstalled();
ensureCli();
await import("../apps/cli/dist/tapside.mjs");
