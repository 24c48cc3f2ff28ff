import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { setUpKitchen } from "./kitchen.ts";
import { shiftSeen, watchShift } from "./layout-shift.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { textOfPdf } from "./text-of-pdf.ts";
import { timeCup } from "./time-cup.ts";

/** Budget of the ordinary annual visit, common practice: what a technician puts up with. */
const MOST_NUMBERS = 14;
const MOST_TAPS = 25;

describe("the ordinary annual visit, offline, from an empty book to the PDF", () => {
  let phone: Phone;
  beforeAll(async () => {
    await openBrowser();
    phone = await pickUpPhone();
  });
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  it("stays within its budget and ends in a record", async () => {
    const { page } = phone;
    await phone.offline();
    await page.reload();
    await phone.checkAccess("empty book");
    await setUpKitchen(phone);
    await phone.checkAccess("unit without a visit");
    phone.count.taps = 0;
    await phone.tap(/^Start visit/);
    await phone.checkAccess("ask");
    await phone.tap(/^In use/);
    await phone.checkAccess("look");
    await phone.tap("All as it should be");
    await shoot(phone, "entry-empty");
    await phone.checkAccess("entry");
    for (const text of ["22", "42", "371", "301", "13", "0.9"]) await phone.number(text);
    await phone.tap("Not detected");
    for (const text of ["24", "61"]) await phone.number(text);
    await watchShift(page);
    for (const key of ["9", "9", "9", "9", "9", ...Array<string>(5).fill("rubOut"), "5", "1", ".", "6"])
      await page.locator(`.key[data-key="${key}"]`).click();
    expect(await shiftSeen(page), "jumps while a number is typed, refused and rubbed out").toEqual({
      sum: 0,
      moved: [],
    });
    await shoot(phone, "entry");
    await page.locator(".thumb .next").click();
    phone.count.numbers++;
    await timeCup(phone, 94, "stopwatch");
    await timeCup(phone, 65);
    await phone.number("15");
    await page.getByRole("heading", { level: 1, name: /As found, 13/ }).waitFor();
    await shoot(phone, "judgement");
    await phone.checkAccess("judgement");
    await phone.tap(/^(Replace|Set)/);
    await finishWork(phone);
    await phone.number("59.4");
    await timeCup(phone, 81);
    await timeCup(phone, 60);
    await phone.number("13");
    await phone.checkAccess("valves");
    await phone.tap(/^Next/);
    await phone.checkAccess("sign");
    await phone.tap(/^Next/);
    await phone.checkAccess("leave");
    await shoot(phone, "leave");
    await phone.tap(/^Left filling, not seen/);
    const downloaded = page.waitForEvent("download");
    await phone.tap(/^Issue record/);
    const path = await (await downloaded).path();
    await phone.checkAccess("record");
    await shoot(phone, "record");
    const text = await textOfPdf(new Uint8Array(readFileSync(path)));
    expect(text).toContain("Service record");
    expect(text).toContain("Saltmarsh primary school");
    expect(text).toContain("Does not test for");
    expect(text).toContain("shut-off not seen");
    expect(phone.count.numbers).toBeLessThanOrEqual(MOST_NUMBERS);
    expect(phone.count.taps).toBeLessThanOrEqual(MOST_TAPS);
    await phone.tap(/^To the unit/);
    await page
      .getByRole("button", { name: /^Start visit/ })
      .first()
      .waitFor();
    await shoot(phone, "unit");
    await phone.checkAccess("unit");
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });
});

/** Does every proposed piece of work until the re-measuring begins. */
async function finishWork(phone: Phone) {
  const { page } = phone;
  for (let i = 0; i < 12; i++) {
    const heading = (await page.getByRole("heading", { level: 1 }).textContent()) ?? "";
    if (/^After filters/.test(heading)) return;
    if (/^Air charge/.test(heading)) await phone.number("18");
    else {
      if (i === 0) {
        await shoot(phone, "work");
        await phone.checkAccess("work");
      }
      await phone.tap(/^Done/);
    }
  }
}
