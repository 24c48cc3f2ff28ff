// Brings the tree into a state that can run, doing only what is missing. Plain Node, no dependency: it runs before any is installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));
const stamps = join(root, "node_modules", ".tapside");

const hashOf = (parts) => {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(part);
  return hash.digest("hex");
};

const stampPath = (name) => join(stamps, name);
const isFresh = (name, hash) => existsSync(stampPath(name)) && readFileSync(stampPath(name), "utf8") === hash;

function keepStamp(name, hash) {
  mkdirSync(stamps, { recursive: true });
  writeFileSync(stampPath(name), hash);
}

/** Runs a command; ends this process with a clear sentence when it fails. */
export function run(command, args, why, env = {}) {
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: ["ignore", 2, 2],
    env: { ...process.env, ...env },
  });
  if (status === 0) return;
  console.error(`\n${why} failed: ${command} ${args.join(" ")}`);
  process.exit(status ?? 1);
}

/** The packages a lock file names, with their versions; those that may be left out on this platform apart. */
const lockedPackages = (path) =>
  Object.entries(JSON.parse(readFileSync(path, "utf8")).packages).filter(
    ([name, one]) => name.startsWith("node_modules/") && !one.link,
  );

/** True when every package of the lock file lies installed in its version: npm keeps its own list beside them. */
function holdsWhatTheLockSays() {
  const installedList = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(installedList)) return false;
  const installed = new Map(lockedPackages(installedList));
  return lockedPackages(join(root, "package-lock.json")).every(([name, { version, optional }]) =>
    installed.has(name) ? installed.get(name).version === version : optional,
  );
}

/**
 * Installs the dependencies when the lock file or Node's ABI changed since the last time, unless they already lie there:
 * `npm ci` deletes node_modules first, so it is never run without need.
 */
export function ensureInstalled() {
  const abi = process.versions.modules;
  const hash = hashOf([readFileSync(join(root, "package-lock.json")), abi]);
  if (isFresh("install", hash) && existsSync(join(root, "node_modules", "vite"))) return;
  alone("installing", () => {
    const sameAbi = !existsSync(stampPath("abi")) || isFresh("abi", abi);
    if (!(sameAbi && holdsWhatTheLockSays())) {
      console.error("Installing dependencies (once for this lock file) …");
      run("npm", ["ci", "--no-audit", "--no-fund"], "Installing dependencies");
    }
    keepStamp("abi", abi);
    keepStamp("install", hash);
  });
}

const sleep = (milliseconds) => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds);

function isRunning(pid) {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return error.code === "EPERM";
  }
}

/** Does something while no other start of this tree does the same; a lock whose owner is gone is taken over. */
function alone(name, action) {
  mkdirSync(join(root, ".tapside"), { recursive: true });
  const path = join(root, ".tapside", name);
  while (!taken(path)) {
    const owner = existsSync(path) ? Number(readFileSync(path, "utf8")) : 0;
    if (owner > 0 && !isRunning(owner)) rmSync(path, { force: true });
    sleep(200);
  }
  const release = () => rmSync(path, { force: true });
  process.once("exit", release);
  action();
  process.removeListener("exit", release);
  release();
}

function taken(path) {
  try {
    writeFileSync(path, String(process.pid), { flag: "wx" });
    return true;
  } catch (error) {
    if (error.code === "EEXIST") return false;
    throw error;
  }
}

function* filesBelow(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === "node_modules" || entry.name === "dist") continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* filesBelow(path);
    else yield path;
  }
}

/** A hash over the sources below these folders: names, sizes and contents. */
const sourcesHash = (folders) =>
  hashOf(
    folders
      .map((folder) => join(root, folder))
      .filter((folder) => existsSync(folder))
      .flatMap((folder) => (statSync(folder).isDirectory() ? [...filesBelow(folder)] : [folder]))
      .sort()
      .flatMap((path) => [path.slice(root.length), readFileSync(path)]),
  );

/** Builds something with Vite when any of its sources changed since the last time. */
export function ensureBuilt(name, folders, output, viteArgs) {
  const hash = sourcesHash(["package-lock.json", ...folders]);
  if (existsSync(join(root, output)) && isFresh(`build-${name}`, hash)) return;
  alone(`building-${name}`, () => {
    if (existsSync(join(root, output)) && isFresh(`build-${name}`, hash)) return;
    console.error(`Building ${name} …`);
    run(
      process.execPath,
      ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn", ...viteArgs],
      `Building ${name}`,
      { NODE_ENV: "production" },
    );
    keepStamp(`build-${name}`, hash);
  });
}

export const ensureApp = () =>
  ensureBuilt("app", ["packages", "apps/field", "examples"], "apps/field/dist/index.html", [
    "--config",
    "apps/field/vite.config.ts",
    "apps/field",
  ]);

export const ensureCli = () =>
  ensureBuilt("cli", ["packages", "apps/cli"], "apps/cli/dist/tapside.mjs", [
    "--config",
    "apps/cli/vite.config.ts",
    "apps/cli",
  ]);
