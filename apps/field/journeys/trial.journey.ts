import { readFileSync } from "node:fs";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { setUpKitchen } from "./kitchen.ts";
import { expectCleanScreen, placeHere } from "./on-screen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { takeIn } from "./small-book.ts";
import { textOfPdf } from "./text-of-pdf.ts";
import { timeCup } from "./time-cup.ts";
import { drainAllNightBook, tasteComplaintBook } from "./trial-books.ts";

const PHOTO = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAABgAAAAMCAAAAABdWyKpAAAAEElEQVR4nGO4gwMwjEqgAwAOq/eBDwOlagAAAABJRU5ErkJggg==",
  "base64",
);

/** Readings of a computed trial, rounded as a technician reads; expected numbers: computed with an independent model. */
describe("a worked trial typed in, offline", () => {
  let phone: Phone;
  beforeAll(async () => {
    await openBrowser();
    phone = await pickUpPhone({ width: 390 });
  });
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  const goTo = (path: string) => phone.page.goto(`${phone.page.url().split("#")[0]}#${path}`);
  const here = () => phone.page.url().split("#")[1] ?? "";
  const heading = (name: string | RegExp) => phone.page.getByRole("heading", { level: 1, name }).waitFor();

  it("asks two numbers before the visit and says what every port should read", async () => {
    const { page } = phone;
    await phone.offline();
    await setUpKitchen(phone);
    await phone.tap(/^What should it read today/);
    await heading("What should it read today?");
    await phone.checkAccess("expected, empty");
    await shoot(phone, "expected-typing");
    await phone.number("61");
    await phone.number("13");
    await page.getByText("A sound unit reads inside 19 times in 20.").waitFor();
    await phone.checkAccess("expected");
    await shoot(phone, "expected");
    expect(await page.getByRole("img", { name: /^expected .* L\/min/ }).count()).toBe(2);
    await phone.tap(/^To the unit/);
  });

  it("keeps a photo now and takes its number later, with the time of the photo", async () => {
    const { page } = phone;
    await phone.tap(/^Start visit/);
    await phone.tap(/^In use/);
    await phone.tap(/^full, drain silent/);
    await phone.checkAccess("look");
    await shoot(phone, "look");
    await phone.tap("All as it should be");
    await heading("Delivered TDS");
    const chooser = page.waitForEvent("filechooser");
    await phone.tap(/^Photo now/);
    await (await chooser).setFiles({ name: "meter.png", mimeType: "image/png", buffer: PHOTO });
    await heading("Tank gauge");
    const visit = here().split("/read/")[0]!;
    await goTo(visit);
    await page.getByText("Type the number: Delivered TDS").waitFor();
    await phone.checkAccess("overview with a photo waiting");
    await shoot(phone, "overview-pending");
    await phone.tap(/^Type the number/);
    await page.getByRole("img", { name: "Photo of the display: Delivered TDS" }).waitFor();
    await phone.checkAccess("number from a photo");
    await shoot(phone, "entry-photo");
    await phone.number("22");
    await heading("Tank gauge");
  });

  it("takes the other readings, a doubtful one among them, and other litres drawn", async () => {
    const { page } = phone;
    for (const text of ["42", "371"]) await phone.number(text);
    for (const sign of "301") await page.locator(`.key[data-key="${sign}"]`).click();
    await phone.tap("Doubtful");
    await shoot(phone, "entry-doubtful");
    await phone.tap(/^Next/);
    await heading("Feed temperature");
    await goTo(here().replace("feedTemperature", "feedTds"));
    await heading("Feed TDS");
    await phone.tap("Doubtful");
    await phone.tap(/^Next/);
    await heading("Feed temperature");
    for (const text of ["13", "0.9"]) await phone.number(text);
    await phone.tap("Not detected");
    await heading("Tank after draw");
    await phone.tap(/drawn: change/);
    await heading("Litres drawn");
    await phone.number("8.0");
    await heading("Tank after draw");
    for (const text of ["24", "61", "51.6"]) await phone.number(text);
    await timeCup(phone, 94);
    await timeCup(phone, 65);
    await phone.number("15");
  });

  it("judges as the trial does, inside its uncertainty", async () => {
    const { page } = phone;
    await heading(/As found, 13/);
    const finding = async (title: string) =>
      (
        await page
          .locator("article.finding")
          .filter({ has: page.locator("strong", { hasText: new RegExp(`^${title}`) }) })
          .first()
          .textContent()
      )?.replace(/\s+/g, " ");
    expect(await finding("Air charge")).toContain("outside");
    expect(await page.getByRole("img", { name: /^3\.7 psi/ }).count()).toBe(1);
    expect(await finding("Pre-filter drop")).toContain("outside");
    expect(await page.getByRole("img", { name: /^9\.4 psi/ }).count()).toBe(1);
    await phone.tap(/more, within or for information/);
    expect(await page.getByRole("img", { name: /^95\.0\d* %/ }).count()).toBe(1);
    expect(await finding("Delivered")).toContain("within");
    await shoot(phone, "judgement-all");
  });

  it("leaves a refused point in the record with the person's words", async () => {
    const { page } = phone;
    const visit = here().split("/judgement")[0]!;
    await goTo(`${visit}/also`);
    await phone.checkAccess("also measure");
    await shoot(phone, "also");
    await phone.tap(/^Drain, feed closed/);
    await phone.checkAccess("leak");
    await phone.tap("Nothing flows");
    await heading("Also measure");
    await goTo(`${visit}/valves`);
    await phone.tap(/^Appliances seen filling/);
    await page.getByLabel(/^Seal number/).fill("0417");
    await phone.checkAccess("valves");
    await shoot(phone, "valves");
    await goTo(`${visit}/record`);
    const downloaded = page.waitForEvent("download");
    await phone.tap(/^Issue record/);
    const text = await textOfPdf(new Uint8Array(readFileSync(await (await downloaded).path())));
    expect(text).toContain("seal 0417");
    expect(text).toContain("full, drain silent");
    await phone.tap(/^To the unit/);
    await phone.tap(/^Filling and shut-off not seen/);
    await heading("Left open earlier");
    await phone.checkAccess("open points");
    await shoot(phone, "points");
    await phone.tap("Refused");
    await page.getByLabel(/^Their words/).fill("not this year");
    await phone.checkAccess("refusal");
    await phone.tap("Keep the refusal");
    await page.getByText(/refused by R. Hale, kitchen lead/).waitFor();
  });
});

/** What a technician types at a visit; what is not named is passed over. "none": the test shows nothing. */
interface Typing {
  readonly kind: RegExp;
  readonly reads: Readonly<Record<string, string>>;
  readonly seconds: Readonly<Record<string, number>>;
  readonly complaint?: string;
  readonly exception?: RegExp;
}

/** Gauges of these trials, by slot. */
const UNITS: Readonly<Record<string, string>> = {
  beforeFilterPressure: "bar",
  afterFilterPressure: "bar",
  tankFullPressure: "psi",
};

describe("two more worked trials typed in, offline", () => {
  let phone: Phone;
  beforeAll(async () => {
    await openBrowser();
  });
  afterEach(() => phone?.close());
  afterAll(closeBrowser);

  const takeUp = async (book: string) => {
    phone = await pickUpPhone({ width: 390 });
    await takeIn(phone.page, book);
    await phone.offline();
  };

  async function typeNumber(slot: string, text: string) {
    const key = phone.page.locator(".meter button");
    for (let i = 0; UNITS[slot] && i < 4 && (await key.textContent())?.trim() !== UNITS[slot]; i++)
      await key.click();
    await phone.number(text);
  }

  async function answer(place: string, { reads, seconds, complaint, exception }: Typing) {
    const [step = "", phase = "", slot = ""] = place.split("/");
    const read = reads[`${phase} ${slot}`] ?? reads[slot];
    const time = seconds[`${phase} ${slot}`] ?? seconds[slot];
    if (step === "read" && time) {
      if (slot === "drainFlowFeedClosed") await phone.tap("500 mL");
      return timeCup(phone, time);
    }
    if (step === "read" && read === "none") return phone.tap("Not detected");
    if (step === "read") return read ? typeNumber(slot, read) : phone.tap(/^Pass/);
    if (step === "check" && complaint) await phone.tap(complaint);
    if (step === "look" && exception) await phone.tap(exception);
    else if (step === "look") return phone.tap("All as it should be");
    if (step === "ask") return phone.tap(/^In use/);
    if (step === "work") return phone.tap(/^(All done|Done)/);
    if (step === "leave") return phone.tap(/^Left filling, not seen/);
    await phone.page.locator(".thumb .next").click();
  }

  /** Types the visit as far as the place that begins so. */
  async function typeUntil(end: string, typing: Typing) {
    const { page } = phone;
    for (let place = placeHere(page); !place.startsWith(end); place = placeHere(page)) {
      await expectCleanScreen(page, place);
      await answer(place, typing);
      await page.waitForFunction((was) => !location.hash.endsWith(was), place);
    }
  }

  async function startVisit({ kind }: Typing) {
    await phone.page.goto(`${new URL("#/unit/unit", phone.page.url())}`);
    await phone.tap(/^Another kind of visit/);
    await phone.tap(kind);
    await phone.page.waitForURL(/\/visit\//);
  }

  async function issued(): Promise<string> {
    const downloaded = phone.page.waitForEvent("download");
    await phone.tap(/^Issue record/);
    return textOfPdf(new Uint8Array(readFileSync(await (await downloaded).path())));
  }

  const finding = (title: string) =>
    phone.page
      .locator("article.finding", {
        has: phone.page.getByRole("heading", { name: new RegExp(`^${title},`) }),
      })
      .first();
  const verdict = async (title: string) =>
    (await finding(title).getByRole("heading").textContent())?.split(", ")[1];

  /** The trial's number lies inside the ± that stands beside the figure. */
  async function expectInside(title: string, trial: number) {
    const shown = await finding(title).locator(".figure").getByRole("img").getAttribute("aria-label");
    const spread = (await finding(title).locator(".figure").textContent())?.match(/± ([\d.]+)/)?.[1];
    expect(Math.abs(Number.parseFloat(shown!) - trial), `${title}: ${shown} ± ${spread}`).toBeLessThanOrEqual(
      Number(spread),
    );
  }

  it("the taste complaint: carbon first, the element oxidised, and new parts due from today", async () => {
    await takeUp(tasteComplaintBook());
    const typing: Typing = {
      kind: /^Taste or quality complaint/,
      complaint: "Smells of pool",
      reads: {
        chlorineFreeAfter: "0.85",
        "asFound chlorineAfter": "0.90",
        chlorineFreeBefore: "1.9",
        chlorineBefore: "2.0",
        deliveredTds: "61",
        waterMeter: "326",
        feedTds: "330",
        feedTemperature: "20",
        beforeFilterPressure: "4.40",
        afterFilterPressure: "4.22",
        "asFound permeateTds": "44",
        "asLeft chlorineAfter": "none",
        "asLeft permeateTds": "14",
      },
      seconds: {
        "asFound permeateFlow": 64,
        "asFound drainFlow": 79,
        "asLeft permeateFlow": 83,
        "asLeft drainFlow": 78,
      },
    };
    await startVisit(typing);
    await typeUntil("judgement", typing);
    expect(await phone.page.locator("article.finding h2").first().textContent()).toBe(
      "Chlorine after carbon, outside",
    );
    await expectInside("Membrane flow", 1.32);
    await expectInside("Salt passage", 4.2);
    expect(await verdict("Salt passage")).toBe("outside");
    expect(await finding("Salt passage").textContent()).toContain("oxidised element");
    expect(await verdict("Carbon left")).toBe("outside");
    await phone.tap(/more, within or for information/);
    await expectInside("Percent reduction", 86.7);
    await typeUntil("record", typing);
    const text = await issued();
    expect(text).toMatch(
      /Done: replace carbon cartridge, rinse the carbon to drain, sanitise, replace membrane/,
    );
    expect(text).toMatch(/Found: Membrane flow \(as found\): outside/);
    expect(text).not.toMatch(/Outside: carbon left/);
    const inYears = (years: number) => `\\d{1,2} [A-Z][a-z]+ ${new Date().getUTCFullYear() + years}`;
    expect(text).toMatch(new RegExp(`Carbon cartridge: by ${inYears(1)}`));
    expect(text).toMatch(new RegExp(`Membrane element: by ${inYears(2)}`));
    expect(text).not.toContain("rated litres are used up");
  });

  it("the drain heard all night: the check valve, not the shut-off, and the element stays", async () => {
    await takeUp(drainAllNightBook());
    const typing: Typing = {
      kind: /^Call-out/,
      complaint: "Drain runs all the time",
      exception: /^Drain silent/,
      reads: {
        deliveredTds: "28",
        tankFullPressure: "37",
        waterMeter: "62",
        feedTds: "265",
        feedTemperature: "21",
        chlorineAfter: "none",
        beforeFilterPressure: "4.00",
        afterFilterPressure: "3.89",
        "asFound permeateTds": "13",
        "asLeft permeateTds": "12",
      },
      seconds: {
        drainFlowFeedClosed: 190,
        "asFound permeateFlow": 118,
        "asFound drainFlow": 106,
        "asLeft permeateFlow": 117,
        "asLeft drainFlow": 105,
      },
    };
    await startVisit(typing);
    await typeUntil("judgement", typing);
    expect(await verdict("Drain with feed closed")).toBe("outside");
    await expectInside("Drain with feed closed", 0.158);
    expect(await verdict("Tank against membrane")).toBe("outside");
    await phone.tap(/more, within or for information/);
    await expectInside("Membrane flow", 0.96);
    await expectInside("Salt passage", 1.06);
    await typeUntil("record", typing);
    const text = await issued();
    expect(text).toMatch(/Done: .*replace check valve/);
    expect(text).not.toMatch(/replace (the )?(shut-off|membrane element)/i);
    expect(text).toContain("page 2 of");
  });
});
