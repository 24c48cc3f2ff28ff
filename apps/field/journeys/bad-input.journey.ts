import type { Locator } from "playwright";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectCleanScreen, placeHere, toFirstNumber } from "./on-screen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { bookOnDisk } from "./read-book.ts";
import { smallBook, takeIn } from "./small-book.ts";

let phone: Phone;
beforeAll(async () => {
  await openBrowser();
  phone = await pickUpPhone();
  await takeIn(phone.page, smallBook());
});
afterAll(async () => {
  expect(phone.errors).toEqual([]);
  await phone.close();
  await closeBrowser();
});

const go = (place: string) => phone.page.goto(`${new URL(`#${place}`, phone.page.url())}`);

/** Sets what a keyboard could not type; the entry hears of it as of typing. */
const put = (entry: Locator, text: string) =>
  entry.evaluate((element, value) => {
    const input = element as HTMLInputElement;
    input.focus();
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!.call(input, value);
    input.dispatchEvent(new Event("input", { bubbles: true }));
  }, text);

const problemAt = async (entry: Locator) =>
  (
    (
      await entry
        .locator("xpath=ancestor::*[contains(@class,'entry')][1]")
        .locator(".problem")
        .allTextContents()
    )[0] ?? ""
  ).trim();

async function inLitres(entry: Locator) {
  const turn = entry.locator("xpath=ancestor::*[contains(@class,'entry')][1]").locator(".unit-switch");
  while ((await turn.textContent()) !== "L") await turn.click();
}

const isSentence = (text: string) => /^["A-Z\d].+[.?!]$/.test(text);

/** What is typed for the litres of a tank, and the value it must have; undefined when it must be refused. */
const NUMBERS: readonly (readonly [typed: string, value?: number | null])[] = [
  ["3,5", 3.5],
  ["3.5", 3.5],
  [" 53 ", 53],
  ["+53", 53],
  ["053", 53],
  ["53.", 53],
  ["1 0", 10],
  ["", null],
  ["abc"],
  ["5O"],
  ["l2"],
  ["12 L"],
  ["1,234.5"],
  ["1.234,5"],
  ["3..5"],
  [","],
  ["1e9"],
  ["1e-9"],
  ["0x10"],
  ["-5"],
  ["−5"],
  ["--5"],
  ["5-"],
  ["NaN"],
  ["Infinity"],
  ["undefined"],
  ["null"],
  ["½"],
  ["٣٥"],
  ["🙂"],
  ["9999999"],
  ["99999999999999999999"],
  ["1\u00005"],
  ["5\ud800"],
];

describe("numbers of the set-up", () => {
  it.each(NUMBERS.map(([typed, value]) => ({ typed, value })))(
    "tank volume $typed",
    async ({ typed, value }) => {
      await go("/unit/unit/edit");
      const entry = phone.page.getByLabel("Tank volume", { exact: true });
      await inLitres(entry);
      await put(entry, "53");
      await entry.blur();
      await put(entry, typed);
      await entry.blur();
      const problem = await problemAt(entry);
      if (value === undefined) expect(isSentence(problem), `a sentence: ${problem}`).toBe(true);
      else expect(problem).toBe("");
      expect(await entry.inputValue(), "what was typed stands").toBe(typed);
      await expectCleanScreen(phone.page, JSON.stringify(typed), typed);
      await expect
        .poll(async () => (await bookOnDisk(phone.page)).unit.get("unit")?.tankL ?? null)
        .toBe(value === undefined ? 53 : value);
    },
  );
});

const LONG = "Under the stairs behind the second boiler ".repeat(60).trim();

/** Names as typed, and whether they can be kept. */
const NAMES: readonly (readonly [typed: string, kept: boolean])[] = [
  ["NaN", true],
  ["undefined", true],
  ["null", true],
  ["🙂 Küche 👩‍🍳", true],
  ["مدرسة", true],
  ["<img src=x onerror=alert(1)>", true],
  ["'; DROP TABLE visits; --", true],
  [LONG, true],
  ["a\u0000b", false],
  ["half \ud83d", false],
  ["", false],
  ["   ", false],
];

describe("names", () => {
  it.each(NAMES.map(([typed, kept]) => ({ typed, kept })))("site $typed", async ({ typed, kept }) => {
    await go("/site/site");
    const entry = phone.page.getByLabel("Site", { exact: true });
    await put(entry, "Reed Bank infants");
    await entry.blur();
    await put(entry, typed);
    await entry.blur();
    const problem = await problemAt(entry);
    if (kept) expect(problem).toBe("");
    else expect(isSentence(problem), `a sentence: ${problem}`).toBe(true);
    expect(await entry.inputValue(), "what was typed stands").toBe(typed);
    await expect
      .poll(async () => (await bookOnDisk(phone.page)).site.get("site")?.name)
      .toBe(kept ? typed : "Reed Bank infants");
    await go("/");
    await phone.page.getByRole("heading", { level: 1 }).waitFor();
    const wide = await phone.page.evaluate(() => document.documentElement.scrollWidth > innerWidth + 1);
    expect(wide, "nothing runs off the screen").toBe(false);
  });
});

describe("days", () => {
  it.each([["2199-01-01"], ["0001-01-01"], ["1850-06-01"]])("fitted on %s", async (typed) => {
    await go("/unit/unit/edit");
    await phone.tap(/^Add a part/);
    const entry = phone.page.locator('input[type="date"]').first();
    await entry.fill(typed);
    await entry.blur();
    expect(isSentence(await problemAt(entry))).toBe(true);
    expect(await entry.inputValue()).toBe(typed);
  });
});

/** Numbers typed on the keypad that cannot be what is read there. */
const READINGS = [
  ["deliveredTds", "9999999"],
  ["feedTemperature", "999"],
  ["tankFullPressure", "9999"],
  ["chlorineBefore", "99"],
  ["feedPh", "70"],
  ["hardness", "999999"],
] as const;

describe("numbers of the visit", () => {
  beforeAll(async () => {
    await toFirstNumber(phone.page);
  });
  it.each(READINGS)(
    "%s %s is refused in a sentence, stays, and is there after coming back",
    async (slot, typed) => {
      const { page } = phone;
      const visit = new URL(page.url()).hash.split("/")[2]!;
      await go(`/visit/${visit}/read/asFound/${slot}`);
      await page.locator('.key[data-key="1"]').waitFor();
      for (const sign of typed) await page.locator(`.key[data-key="${sign}"]`).click();
      await page.locator(".thumb .next").click();
      expect(placeHere(page), "not taken").toBe(`read/asFound/${slot}`);
      const sentence = (await page.locator("[role=status]").allTextContents())
        .map((text) => text.trim())
        .find(isSentence);
      expect(sentence, "a sentence").toBeDefined();
      await expectCleanScreen(page, slot);
      await go(`/visit/${visit}`);
      await page.locator("[data-step]").first().waitFor();
      await go(`/visit/${visit}/read/asFound/${slot}`);
      await page.locator(`.huge [aria-label^="${typed}"]`).waitFor();
      for (const _ of typed) await page.locator('.key[data-key="rubOut"]').click();
    },
  );

  it("letters, marks and a second decimal sign from a keyboard leave the number as it is; comma and point are one", async () => {
    const { page } = phone;
    const visit = new URL(page.url()).hash.split("/")[2]!;
    await go(`/visit/${visit}/read/asFound/waterMeter`);
    await page.locator('.key[data-key="1"]').waitFor();
    for (const sign of ["a", "-", "+", "e", "3", ",", "5", ".", "x", "5"]) await page.keyboard.press(sign);
    await page.locator('.huge [aria-label^="3.55"]').waitFor();
    await page.keyboard.press("Backspace");
    await page.locator('.huge [aria-label^="3.5 "]').waitFor();
  });

  it("bar typed as psi is asked about, not altered", async () => {
    const { page } = phone;
    const visit = new URL(page.url()).hash.split("/")[2]!;
    for (const [slot, text] of [
      ["beforeFilterPressure", "4.1"],
      ["afterFilterPressure", "3.9"],
    ] as const) {
      await go(`/visit/${visit}/read/asFound/${slot}`);
      await page.locator('.key[data-key="1"]').waitFor();
      await phone.number(text);
    }
    await go(`/visit/${visit}/judgement`);
    await page.getByText("Is this right?").first().waitFor();
    await page.getByText(/bar/).first().waitFor();
    await expectCleanScreen(page, "judgement");
    const [kept] = [...(await bookOnDisk(page)).visit.values()];
    expect(kept!.readings.asFound.beforeFilterPressure).toMatchObject({ raw: "4.1", unit: "psi" });
  });
});
