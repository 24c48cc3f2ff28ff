import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openUnit } from "./open-unit.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";

/** A hard feed as a utility prints it: calcium 61 mg/L, alkalinity 140 mg/L as CaCO3 (an invented works of the demo district). */
const FIGURES = [
  ["Alkalinity", "140"],
  ["pH", "7,6"],
  ["Conductivity", "455"],
  ["Calcium", "61"],
  ["Magnesium", "7.9"],
  ["Sodium", "24"],
  ["Chloride", "38"],
  ["Sulfate", "46"],
] as const;

async function toWater(phone: Phone) {
  await phone.tap(/^Open the demo book/);
  await openUnit(phone, "Heron Mere secondary");
  await phone.tap(/^Water here/);
  await phone.page.getByRole("heading", { level: 1, name: "Water here" }).waitFor();
}

/** The district's report with one row that cannot be: looked at, then kept with bottle and place. */
async function takeReportIn(phone: Phone, suffix: string) {
  const csv = `${readFileSync("examples/larkmoor-water-report.csv", "utf8")}LM-0412,Larkmoor Primary kitchen tap,Sodium,much,,,mg/L\n`;
  await phone.tap(/^Report from a file/);
  const chosen = phone.page.waitForEvent("filechooser");
  await phone.tap(/^Choose the file/);
  await (await chosen).setFiles({ name: "report.csv", mimeType: "text/csv", buffer: Buffer.from(csv) });
  await phone.page.getByText("2 reports to take in, 1 row refused.").waitFor();
  await phone.page.getByText(/^Line 17: .*much/).waitFor();
  await phone.checkAccess("report from a file");
  await shoot(phone, `water-report-in${suffix}`);
  await phone.tap(/^Take them in/);
  await phone.page.getByText(/^Taken in: 2 reports/).waitFor();
  await phone.tap(/^Done/);
  await phone.page.getByText("LM-0412, Larkmoor Primary kitchen tap").waitFor();
}

const figure = (phone: Phone, name: string) => phone.page.getByLabel(name, { exact: true });

describe("a site's water, offline", () => {
  beforeAll(async () => {
    await openBrowser();
  });
  afterAll(closeBrowser);

  it.each([
    { dark: false, width: 390 },
    { dark: true, width: 360 },
  ])("is told from readings, then from an analysis typed in, %j", async (look) => {
    const suffix = look.dark ? "-dark" : "";
    const phone = await pickUpPhone(look);
    await phone.offline();
    await toWater(phone);
    await phone.page.locator('.curve[data-band="true"]').waitFor();
    expect(await phone.page.getByText("completed, not read").count()).toBeGreaterThan(3);
    await phone.page
      .getByText(/at 100 °C/)
      .first()
      .waitFor();
    await phone.checkAccess("water");
    await shoot(phone, `water${suffix}`);
    await phone.page.getByText("Does it suit?").scrollIntoViewIfNeeded();
    await shoot(phone, `water-blend${suffix}`);
    const slider = phone.page.getByRole("slider", { name: "Blend valve" });
    await slider.fill("30");
    await phone.page.getByText("30 % feed in the product").waitFor();

    await phone.tap(/^Named indices/);
    await phone.page.getByText("Larson–Skold").scrollIntoViewIfNeeded();
    await shoot(phone, `water-indices${suffix}`);
    await phone.tap(/^Named indices/);
    await phone.page.getByRole("img", { name: /^Conductivity of the feed at/ }).scrollIntoViewIfNeeded();
    await shoot(phone, `water-history${suffix}`);

    await phone.tap(/^Add an analysis/);
    for (const [name, text] of FIGURES) await figure(phone, name).fill(text);
    await figure(phone, "Sulfate").blur();
    await phone.page.getByText("Charge balance: agrees").waitFor();
    await figure(phone, "Calcium").fill("152");
    await phone.page.getByText("Is calcium given as CaCO₃, not as the ion?").waitFor();
    await figure(phone, "Calcium").fill("61");
    await figure(phone, "Calcium").blur();
    await phone.page.getByLabel("Bottle code").fill("HM-0412");
    await phone.page.getByLabel("Bottle code").blur();
    await phone.page.locator('.curve[data-band="true"]').waitFor();
    await phone.checkAccess("analysis");
    await shoot(phone, `water-analysis${suffix}`);
    await phone.tap(/^Done/);
    await phone.page.getByText("HM-0412").waitFor();
    await phone.page.locator('.curve[data-band="true"]').waitFor();
    expect(await phone.page.getByText("read or reported").count()).toBeGreaterThan(5);
    expect(await phone.page.locator("main").textContent()).not.toMatch(/NaN|undefined|Infinity/);
    await takeReportIn(phone, suffix);
    await phone.page.reload();
    await phone.page.getByText("HM-0412").waitFor();
    await phone.page.getByText("LM-0412, Larkmoor Primary kitchen tap").waitFor();
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
    await phone.close();
  });
});
