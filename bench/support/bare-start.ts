import type { Browser } from "playwright";

/** Asks for the frame after the one in which the first screen can be pressed. */
const WATCH = `const look = () =>
  requestAnimationFrame(() =>
    document.querySelector(".thumb .next")
      ? requestAnimationFrame(() => { window.standingMs = performance.now(); })
      : look());
look();`;

const POLL_MS = 300;
const LONGEST_POLLS = 100;

interface Answer {
  readonly id: number;
  readonly result?: { readonly result?: { readonly value?: unknown } };
}

/**
 * From the address to the first screen that can be pressed, in ms, in a page nobody inspects: a driven page works out for its driver where
 * each error was made, which takes a slow phone 0.3 s that it never spends in a hand. Pages of one `bareStarts` share their offline copy.
 */
export async function bareStarts(browser: Browser, url: string) {
  const session = await browser.newBrowserCDPSession();
  const { browserContextId } = await session.send("Target.createBrowserContext");
  const waiting = new Map<number, (answer: Answer) => void>();
  let last = 0;
  session.on("Target.receivedMessageFromTarget", ({ message }: { readonly message: string }) => {
    const answer = JSON.parse(message) as Answer;
    waiting.get(answer.id)?.(answer);
  });

  async function page() {
    const { targetId } = await session.send("Target.createTarget", { url: "about:blank", browserContextId });
    const { sessionId } = await session.send("Target.attachToTarget", { targetId, flatten: false });
    const send = (method: string, params: object = {}) =>
      new Promise<Answer>((done) => {
        last += 1;
        waiting.set(last, done);
        const message = JSON.stringify({ id: last, method, params });
        void session.send("Target.sendMessageToTarget", { sessionId, message });
      });
    const value = async (expression: string) =>
      (await send("Runtime.evaluate", { expression, awaitPromise: true })).result?.result?.value;
    return { send, value, close: () => session.send("Target.closeTarget", { targetId }) };
  }

  async function start(throttle: number, before: "close" | "keepOffline"): Promise<number> {
    const { send, value, close } = await page();
    await send("Page.enable");
    await send("Page.addScriptToEvaluateOnNewDocument", { source: WATCH });
    await send("Emulation.setCPUThrottlingRate", { rate: throttle });
    await send("Page.navigate", { url });
    let standing: unknown;
    for (let i = 0; typeof standing !== "number" && i < LONGEST_POLLS; i++) {
      await new Promise((done) => setTimeout(done, POLL_MS));
      standing = await value("window.standingMs");
    }
    if (before === "keepOffline")
      await value("navigator.serviceWorker.ready.then(() => new Promise((done) => setTimeout(done, 2000)))");
    await close();
    if (typeof standing !== "number") throw new Error("the first screen never came");
    return standing;
  }
  return { start };
}
