import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { expectCleanScreen, placeHere, toFirstNumber } from "./on-screen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { smallBook, takeIn } from "./small-book.ts";
import { textOfPdf } from "./text-of-pdf.ts";

const SOLIDS: Readonly<Record<string, string>> = { deliveredTds: "22", feedTds: "301", permeateTds: "15" };

/** Ports without a gauge or a fitting; what else cannot be read is passed over. */
const NO_PORT = [
  "tankFullPressure",
  "waterMeter",
  "chlorineBefore",
  "chlorineAfter",
  "beforeFilterPressure",
  "afterFilterPressure",
];

let phone: Phone;
beforeAll(async () => {
  await openBrowser();
  phone = await pickUpPhone();
});
afterAll(async () => {
  await phone?.close();
  await closeBrowser();
});

async function answer(place: string) {
  const slot = place.split("/").at(-1)!;
  if (place.startsWith("read/")) {
    if (SOLIDS[slot]) return phone.number(SOLIDS[slot]);
    return phone.tap(NO_PORT.includes(slot) ? "Not there" : /^Pass/);
  }
  if (place.startsWith("work/")) return phone.tap(/^Done/);
  if (place === "leave") return phone.tap(/^Left filling, not seen/);
  return phone.page.locator(".thumb .next").click();
}

it("with nothing but a TDS meter the visit ends in a record that lists what could not be judged, and why", async () => {
  const { page } = phone;
  await takeIn(page, smallBook({ ratedPermeateLPerH: null, ratedRejectLPerH: null }));
  await phone.offline();
  await toFirstNumber(page);
  const walked: string[] = [];
  while (placeHere(page) !== "record") {
    const place = placeHere(page);
    walked.push(place);
    expect(walked.length, walked.join(" ")).toBeLessThan(40);
    await expectCleanScreen(page, place);
    if (place === "judgement") {
      await page
        .getByText(/is missing|are missing/)
        .first()
        .waitFor();
      await phone.checkAccess("judgement of little");
    }
    await answer(place);
    await page.waitForFunction((was) => !location.hash.endsWith(was), place);
  }
  const downloaded = page.waitForEvent("download");
  await phone.tap(/^Issue record/);
  const text = await textOfPdf(new Uint8Array(readFileSync(await (await downloaded).path())));
  expect(text).toMatch(/Percent reduction|percent reduction/i);
  for (const unread of [/permeate flow/i, /pressure after the filters/i, /tank/i]) {
    const reasons = text.match(/(?:because|cannot tell)[^.]{0,160}missing/gi) ?? [];
    expect(
      reasons.some((reason) => unread.test(reason)),
      `${unread} among: ${reasons.join(" | ")}`,
    ).toBe(true);
  }
  await expectCleanScreen(page, "record");
  expect(text).not.toMatch(/NaN|undefined|Infinity/);
  expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
});
