import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fill, setUpKitchen } from "./kitchen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { textOfPdf } from "./text-of-pdf.ts";
import { walkVisit } from "./walk-visit.ts";

/** Budgets, common practice: most numbers and taps of each kind when nothing is wrong. Timed flows are two taps and a next. */
const KINDS = [
  { tap: /^Filters only/, kind: "Filters only", numbers: 4, taps: 10 },
  { tap: /^Call-out/, kind: "Call-out", numbers: 14, taps: 24 },
  { tap: /^Taste or quality complaint/, kind: "Taste or quality complaint", numbers: 14, taps: 24 },
  { tap: /^Commissioning/, kind: "Commissioning", numbers: 14, taps: 24 },
  { tap: /^Survey/, kind: "Survey before an installation", numbers: 10, taps: 5 },
  { tap: /^Return visit/, kind: "Return visit", numbers: 8, taps: 20 },
  { tap: /^Shut-down/, kind: "Shut-down of a season", numbers: 2, taps: 8 },
  { tap: /^Restart/, kind: "Restart of a season", numbers: 10, taps: 24 },
  { tap: /^Removal/, kind: "Removal", numbers: 1, taps: 8 },
] as const;

describe("kinds of visit, offline", () => {
  let phone: Phone;
  let unit: string;
  /** Screens looked at by axe: most kinds share most of theirs. */
  const checked = new Set<string>();
  const checkOnce = async (screen: string) => {
    if (checked.has(screen)) return;
    checked.add(screen);
    await phone.checkAccess(screen);
  };
  beforeAll(async () => {
    await openBrowser();
    phone = await pickUpPhone({ width: 360, dark: true });
    await phone.offline();
    await setUpKitchen(phone);
    unit = phone.page.url();
  }, 120_000);
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  it.each(KINDS)(
    "$kind: at most $numbers numbers and $taps taps, and a record with its name",
    async (one) => {
      const { page, count } = phone;
      await page.goto(unit);
      count.taps = 0;
      count.numbers = 0;
      await phone.tap(/^Another kind of visit/);
      await checkOnce("kind");
      await phone.tap(one.tap);
      await page.waitForURL(/\/visit\//);
      await walkVisit(phone, one.kind.split(" ")[0]!.toLowerCase(), undefined, checked);
      await checkOnce("before the record");
      const downloaded = page.waitForEvent("download");
      await phone.tap(/^Issue record/);
      const text = await textOfPdf(new Uint8Array(readFileSync(await (await downloaded).path())));
      await page.getByText("The PDF is on this phone.").waitFor();
      await shoot(phone, `record-${one.kind.split(" ")[0]!.toLowerCase()}`);
      expect(text).toContain(one.kind);
      expect(text).not.toMatch(/undefined|NaN/);
      expect(count.numbers).toBeLessThanOrEqual(one.numbers);
      expect(count.taps).toBeLessThanOrEqual(one.taps);
    },
  );

  it("no access: one tap keeps time, reason and photo", async () => {
    const { page, count } = phone;
    await page.goto(unit);
    await phone.tap(/^Another kind of visit/);
    await phone.tap(/^No access/);
    await phone.checkAccess("no access");
    await shoot(phone, "no-access");
    count.taps = 0;
    const camera = page.waitForEvent("filechooser");
    await phone.tap("Nobody there");
    await (await camera).setFiles({ name: "door.png", mimeType: "image/png", buffer: dot });
    expect(count.taps).toBe(1);
    await page.getByText("The photo is kept on this phone.").waitFor();
    await phone.tap(/^Next/);
    const downloaded = page.waitForEvent("download");
    await phone.tap(/^Issue record/);
    const text = await textOfPdf(new Uint8Array(readFileSync(await (await downloaded).path())));
    expect(text).toContain("No access");
    expect(text).toMatch(/Nobody there, \d{2}:\d{2}/);
    expect(text).not.toContain("Filling, shut-off");
  });

  it("a visit broken off keeps what was done and says why", async () => {
    const { page } = phone;
    await page.goto(unit);
    await phone.tap(/^Another kind of visit/);
    await phone.tap(/^Call-out/);
    await phone.tap(/^In use/);
    await page.waitForURL(/\/(points|check\/complaint)$/);
    const visit = page.url().replace(/\/(points|check\/complaint)$/, "");
    await page.goto(`${visit}/check/complaint`);
    await phone.tap("Leak or wet floor");
    await phone.tap(/^Next/);
    await page.goto(`${visit}/look`);
    const leak = page.waitForEvent("filechooser");
    await phone.tap(/^Photo of the leak/);
    await (await leak).setFiles([]);
    await fill(phone, "Cannot photograph it, because", "the float stands before it");
    await phone.checkAccess("leak without a photo");
    await phone.tap("Go on without a photo");
    await phone.tap(/^All as it should be/);
    await page.goto(visit);
    await phone.tap(/^Break the visit off/);
    const camera = page.waitForEvent("filechooser");
    await phone.tap("Called away");
    await (await camera).setFiles([]);
    await phone.tap(/^Next/);
    const downloaded = page.waitForEvent("download");
    await phone.tap(/^Issue record/);
    const text = await textOfPdf(new Uint8Array(readFileSync(await (await downloaded).path())));
    expect(text).toContain("Called away");
    expect(text).toContain("the float stands before it");
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });
});

/** One black dot. */
const dot = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==",
  "base64",
);
