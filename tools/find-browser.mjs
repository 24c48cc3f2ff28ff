import { existsSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const SYSTEM = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
];

const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Where a browser for the tests is: the one named in TAPSIDE_CHROMIUM (a path, or `bundled`), the system's, Playwright's own, or the one brought along as a package. */
export async function findBrowser() {
  const named = process.env.TAPSIDE_CHROMIUM;
  if (named && named !== "bundled") return { executablePath: named, args: ARGUMENTS, env: process.env };
  const system = named === "bundled" ? undefined : SYSTEM.find((path) => existsSync(path));
  if (system) return { executablePath: system, args: ARGUMENTS, env: process.env };
  const fetched = named === "bundled" ? undefined : await browserOfPlaywright();
  if (fetched) return { executablePath: fetched, args: ARGUMENTS, env: process.env };
  return bundledBrowser();
}

/** The browser Playwright downloaded earlier, when there is one. */
async function browserOfPlaywright() {
  const { chromium } = await import("playwright");
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : undefined;
}

/** The bundled browser, with its own system libraries unpacked so that none need installing. */
async function bundledBrowser() {
  process.env.AWS_EXECUTION_ENV ??= "AWS_Lambda_nodejs20.x";
  const { default: chromium } = await import("@sparticuz/chromium");
  const executablePath = await chromium.executablePath();
  const libraries = join(tmpdir(), "al2023", "lib");
  const env = {
    ...process.env,
    LD_LIBRARY_PATH: [libraries, process.env.LD_LIBRARY_PATH].filter(Boolean).join(":"),
  };
  return { executablePath, args: ARGUMENTS, env };
}
