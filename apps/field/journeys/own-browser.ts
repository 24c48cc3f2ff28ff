import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "playwright";
import { findBrowser } from "../../../tools/find-browser.mjs";

/** A real browser process with a profile that outlives it. */
export interface OwnBrowser {
  readonly page: Page;
  /** SIGKILL to the whole process group: nothing gets to say goodbye. */
  kill(): Promise<void>;
}

export async function startBrowser(profile: string): Promise<OwnBrowser> {
  const { executablePath, args, env } = await findBrowser();
  const portFile = join(profile, "DevToolsActivePort");
  rmSync(portFile, { force: true });
  const child = spawn(
    executablePath,
    [...args, "--headless=new", "--remote-debugging-port=0", `--user-data-dir=${profile}`, "about:blank"],
    { detached: true, stdio: "ignore", env: env as NodeJS.ProcessEnv },
  );
  const kill = () => ended(child, () => process.kill(-child.pid!, "SIGKILL"));
  try {
    const browser = await connected(portFile);
    const context = browser.contexts()[0]!;
    const page = context.pages()[0] ?? (await context.newPage());
    page.setDefaultTimeout(15_000);
    await page.setViewportSize({ width: 390, height: 844 });
    return { page, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

async function connected(portFile: string): Promise<Browser> {
  for (let tries = 0; tries < 300; tries++) {
    const [port, path] = existsSync(portFile) ? readFileSync(portFile, "utf8").split("\n") : [];
    if (port && path) return chromium.connectOverCDP(`ws://127.0.0.1:${port}${path}`);
    await new Promise((done) => setTimeout(done, 50));
  }
  throw new Error("the browser did not come up");
}

const ended = (child: ChildProcess, end: () => void) =>
  new Promise<void>((done) => {
    if (child.exitCode !== null || child.signalCode !== null) return done();
    child.once("exit", () => done());
    end();
  });
