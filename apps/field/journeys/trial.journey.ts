import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { setUpKitchen } from "./kitchen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { textOfPdf } from "./text-of-pdf.ts";
import { timeCup } from "./time-cup.ts";

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
      (await page.locator("article.finding", { hasText: title }).first().textContent())?.replace(/\s+/g, " ");
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
