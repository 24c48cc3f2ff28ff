import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openUnit } from "./open-unit.ts";
import { closeBrowser, openBrowser, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";

describe("the demo book, offline", () => {
  beforeAll(async () => {
    await openBrowser();
  });
  afterAll(closeBrowser);

  it.each([
    { dark: false, width: 390 },
    { dark: true, width: 360 },
  ])("shows the district and its units, %j", async (look) => {
    const phone = await pickUpPhone(look);
    const suffix = look.dark ? "-dark" : "";
    await phone.offline();
    await phone.tap(/^Open the demo book/);
    await phone.page.getByText("Sallow Lane primary, Unit 1").first().waitFor();
    await phone.checkAccess("demo book");
    await shoot(phone, `book${suffix}`);
    for (const unit of [
      "Sallow Lane primary",
      "Heron Mere secondary",
      "Ivel Bridge nursery",
      "Larkmoor central kitchen",
    ]) {
      await openUnit(phone, unit);
      await phone.page.getByRole("heading", { level: 1, name: new RegExp(unit) }).waitFor();
      await phone.checkAccess(unit);
      expect(await phone.page.locator("main").textContent()).not.toMatch(/NaN|undefined|Infinity/);
      await shoot(phone, `unit-${unit.split(" ")[0]!.toLowerCase()}${suffix}`);
      await phone.tap(/^Book/);
    }
    await openUnit(phone, "Sallow Lane primary");
    await phone.tap(/^What should it read today/);
    for (const text of ["61", "13"]) await phone.number(text);
    await phone.page.getByText("A sound unit reads inside 19 times in 20.").waitFor();
    await phone.checkAccess("expected");
    const wider = await phone.page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
    expect(wider, "scrolls sideways").toBe(false);
    await shoot(phone, `expected-demo${suffix}`);
    await phone.tap(/^To the unit/);
    await phone.tap(/^The kitchen's day/);
    await phone.page.locator('article[data-remedy="elementAndTank"]').waitFor();
    await phone.checkAccess("kitchen's day");
    const served = await phone.page.locator('article[data-remedy="asItIs"]').innerHTML();
    await phone.page.getByRole("button", { name: "Colder water" }).click();
    await expect
      .poll(() => phone.page.locator('article[data-remedy="asItIs"]').innerHTML(), { timeout: 30_000 })
      .not.toBe(served);
    expect(await phone.page.locator("main").textContent()).not.toMatch(/NaN|undefined|Infinity/);
    await shoot(phone, `kitchen-day${suffix}`);
    await phone.tap(/^Unit/);
    await phone.tap(/^Book/);
    await phone.tap(/^Demo book/);
    await phone.page.getByText("This book is empty").waitFor();
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
    await phone.close();
  });

  it("a bypassed unit asks who allowed it and until when", async () => {
    const phone = await pickUpPhone();
    await phone.offline();
    await phone.tap(/^Open the demo book/);
    await openUnit(phone, "Sallow Lane");
    await phone.tap(/^Start visit/);
    await phone.tap(/^Bypassed/);
    await phone.checkAccess("bypassed");
    await phone.tap("Stays bypassed");
    await phone.tap(/^Next/);
    await phone.page.getByText("Tap by what right this person may allow it.").waitFor();
    await phone.tap("head office");
    await phone.tap(/^Next/);
    await phone.page.getByText("Write the day the permission ends.").waitFor();
    await phone.page.getByLabel(/^Until/).fill("2027-01-15");
    await phone.tap(/^Next/);
    await phone.page.getByText(/^Write the seal number/).waitFor();
    await phone.page.getByLabel(/^Seal number/).fill("4471");
    await phone.page.getByLabel(/^Litres a day/).fill("40");
    await phone.page.getByText(/hardness or litres a day are missing/).waitFor();
    await phone.page.getByLabel(/^Hardness of the tap water/).fill("10");
    await phone.page.getByText(/If about 40 L\/day, at most .* of scale so far; estimate/).waitFor();
    await phone.checkAccess("bypassed, all asked");
    await shoot(phone, "bypassed");
    await phone.tap(/^Next/);
    await phone.page.getByRole("heading", { level: 1, name: "Look and listen" }).waitFor();
    await phone.close();
  });

  it("dissolved solids of 100 ppm or less make the unit optional, and the owner decides", async () => {
    const phone = await pickUpPhone();
    await phone.offline();
    await phone.tap(/^Open the demo book/);
    await openUnit(phone, "High Fold");
    await phone.tap(/^Start visit/);
    await phone.tap(/^In use/);
    await phone.tap("All as it should be");
    for (const text of ["9", "40", "13"]) await phone.number(text);
    await phone.number("68");
    await phone.page.getByRole("heading", { level: 1, name: "RO is optional here" }).waitFor();
    await phone.page.getByText("hardness, alkalinity").waitFor();
    await phone.checkAccess("optional");
    await phone.tap(/^Owner keeps it/);
    await phone.page.getByRole("heading", { level: 1, name: "Feed temperature" }).waitFor();
    await phone.close();
  });
});
