import { seededRandom } from "@tapside/diagnosis";
import { afterAll, beforeAll, expect, it } from "vitest";
import { toFirstNumber } from "./on-screen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { changesInFile, exportedText, rawOf } from "./read-book.ts";
import { smallBook, takeIn } from "./small-book.ts";

const STEPS = { ci: 400, soak: 4000 }[process.env.TAPSIDE_DEPTH ?? ""] ?? 220;
const SEED = Number(process.env.TAPSIDE_SEED ?? 20261125);

/** Not pressed: it opens a camera or a file dialog, takes the unit out, or leads to another book. */
const LEFT_ALONE = /\b(?:photos?|export|import|demo|share|keep pdf|take out|sticker|scan|claim|as pdf)\b/i;

let phone: Phone;
beforeAll(async () => {
  await openBrowser();
  phone = await pickUpPhone();
  await takeIn(phone.page, smallBook());
  await phone.offline();
  await toFirstNumber(phone.page);
});
afterAll(async () => {
  await phone?.close();
  await closeBrowser();
});

interface Seen {
  readonly place: string;
  readonly text: string;
  /** What can be pressed, in the order of the page. */
  readonly presses: readonly string[];
  readonly wayOn: boolean;
  readonly keypad: boolean;
}

/** The screen once it stands still: nothing being kept, nothing being fetched. */
async function see(): Promise<Seen> {
  await phone.page.waitForFunction(
    () =>
      !document.documentElement.classList.contains("keeping") &&
      [...document.querySelectorAll(".thumb, .stopwatch")].some((one) => one.checkVisibility()),
  );
  return phone.page.evaluate(() => {
    const pressable = [...document.querySelectorAll<HTMLElement>("button, a[href]")].filter(
      (one) => one.checkVisibility() && !one.hasAttribute("disabled"),
    );
    const thumb = document.querySelectorAll(".thumb button, .thumb a[href], .stopwatch button").length;
    return {
      place: location.hash,
      // biome-ignore lint/performance/useDomNodeTextContent: words of neighbours must not run together
      text: document.body.innerText,
      presses: pressable.map((one) => one.getAttribute("aria-label") ?? one.textContent ?? ""),
      wayOn: thumb >= 2,
      keypad: document.querySelector('.key[data-key="5"]')?.checkVisibility() === true,
    };
  });
}

const press = (index: number) =>
  phone.page.evaluate((at) => {
    const pressable = [...document.querySelectorAll<HTMLElement>("button, a[href]")].filter(
      (one) => one.checkVisibility() && !one.hasAttribute("disabled"),
    );
    pressable[at]?.click();
  }, index);

/** Types a number, now and then over one that stands there or after rubbing it out, and takes it; what it was when a next screen came. */
async function typeNumber(random: () => number, place: string): Promise<string | undefined> {
  const text = String(Math.round(random() * 900) / [1, 10, 100][Math.floor(random() * 3)]!).slice(0, 6);
  const rubsOut = random() < 0.5;
  const blank = await phone.page.evaluate(
    async ({ signs, rubs }) => {
      const isBlank = () => document.querySelector(".huge [aria-label]") === null;
      const key = async (sign: string) => {
        document.querySelector<HTMLElement>(`.key[data-key="${sign}"]`)?.click();
        await new Promise((drawn) => setTimeout(drawn, 0));
      };
      for (let rubbed = 0; rubs && !isBlank() && rubbed < 12; rubbed++) await key("rubOut");
      const fresh = isBlank();
      for (const sign of signs) await key(sign);
      document.querySelector<HTMLElement>(".thumb .next")?.click();
      return fresh;
    },
    { signs: [...text], rubs: rubsOut },
  );
  const after = await see();
  return blank && after.place !== place && !after.text.includes("not kept yet") ? text : undefined;
}

it(`a walk of ${STEPS} random steps meets no dead end, no slipped word and no error, and loses no entry (seed ${SEED})`, async () => {
  const random = seededRandom(SEED);
  const acknowledged: { readonly field: string; readonly raw: string }[] = [];
  const trail: string[] = [];
  const places = new Set<string>();
  for (let step = 0; step < STEPS; step++) {
    const seen = await see();
    const where = () => `after ${trail.slice(-8).join(" → ")}`;
    places.add(seen.place.replace(/\/(visit|part|appliance|instrument)\/[^/]+/, "/$1/…"));
    expect(seen.text, where()).not.toMatch(/\b(?:NaN|undefined|null|Infinity)\b|\[object /);
    expect(
      phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED")),
      where(),
    ).toEqual([]);
    expect(seen.wayOn, `a way on and a way back ${where()}, at ${seen.place}`).toBe(true);
    const reading = /#\/visit\/[^/]+\/read\/(\w+)\/(\w+)$/.exec(seen.place);
    if (!/^#\/(visit|unit)\//.test(seen.place)) {
      trail.push(`${seen.place} (led back)`);
      await phone.page.evaluate(() => {
        location.hash = "#/unit/unit";
      });
      continue;
    }
    if (reading && seen.keypad && random() < 0.85) {
      const raw = await typeNumber(random, seen.place);
      trail.push(`${seen.place} typed ${raw}`);
      if (raw) acknowledged.push({ field: `reading:${reading[1]}:${reading[2]}`, raw });
      continue;
    }
    const open = seen.presses.map((name, at) => ({ name, at })).filter(({ name }) => !LEFT_ALONE.test(name));
    expect(open, `something to press ${where()}, at ${seen.place}: ${seen.presses.join(", ")}`).not.toEqual(
      [],
    );
    const on = open.filter(({ at }) => at === seen.presses.length - 1);
    const chosen = (random() < 0.35 && on[0]) || open[Math.floor(random() * open.length)]!;
    trail.push(`${seen.place} [${chosen.name.slice(0, 24)}]`);
    await press(chosen.at);
  }
  await see();
  const changes = changesInFile(await exportedText(phone.page));
  const lost = acknowledged.filter(
    ({ field, raw }) => !changes.some((change) => rawOf(change, field) === raw),
  );
  expect(lost, `of ${acknowledged.length} acknowledged`).toEqual([]);
  expect(acknowledged.length, "numbers were taken").toBeGreaterThan(STEPS / 40);
  expect(places.size, [...places].join(" ")).toBeGreaterThan(12);
}, 600_000);
