import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { setUpKitchen } from "./kitchen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { textOfPdf } from "./text-of-pdf.ts";

describe("sanitising, step by step", () => {
  let phone: Phone;
  let visit: string;
  beforeAll(async () => {
    await openBrowser();
    phone = await pickUpPhone({ width: 360 });
    await phone.offline();
    await setUpKitchen(phone);
    await phone.tap(/^Another kind of visit/);
    await phone.tap(/^Restart/);
    await phone.tap(/^In use/);
    visit = phone.page.url().replace(/\/[^/]+$/, "");
    await phone.page.goto(`${visit}/work/sanitise`);
  }, 120_000);
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  const current = (title: RegExp) =>
    phone.page.locator('li[aria-current="step"]', { hasText: title }).waitFor();
  const done = () => phone.page.locator(".thumb .next").click();

  it("has the caution at the step where the hand is", async () => {
    const { page } = phone;
    await current(/Hold the appliances/);
    await page.getByText(/dry fire/).waitFor();
    await page.getByText(/60\s°C burns skin in under 5\ss/).waitFor();
    await phone.checkAccess("first step");
    await done();
    await current(/pressure to zero/);
    await page.getByText(/The gauge proves it, not the clock/).waitFor();
    expect(await page.getByText(/dry fire/).count()).toBe(0);
    await done();
    await current(/Element and all cartridges out/);
    await page.getByText(/bleach destroys the membrane/).waitFor();
    await done();
  });

  it("shows the dose with its arithmetic, and refuses a slip", async () => {
    const { page } = phone;
    await current(/Measure the sanitiser/);
    await page.getByText(/never with descaler, acid or ammonia/).waitFor();
    await page.getByLabel(/^Chlorine wanted/).fill("5000");
    await page.getByLabel(/^Strength/).fill("52,5");
    await page.getByText(/no sanitising dose/).waitFor();
    await page.getByLabel(/^Chlorine wanted/).fill("50");
    await page.getByText("50 mg/L × 53 L ÷ 52.5 g/L = 50.5 mL").waitFor();
    await phone.checkAccess("dose");
    await shoot(phone, "dose");
    await phone.tap(/^Dosed 50.5 mL/);
    await current(/Dose, fill, run to every outlet/);
    await done();
  });

  it("takes strips and contact time, and does not take a strip that is not zero", async () => {
    const { page } = phone;
    await page.getByLabel("Strip reads").fill("50");
    await phone.tap("Take this");
    await current(/Contact time/);
    await phone.tap(/^Start: Contact time/);
    await page
      .getByRole("timer")
      .getByText(/^Contact time: (30:00|29:5)/)
      .waitFor();
    await phone.checkAccess("contact running");
    await shoot(phone, "contact");
    await page.getByLabel(/^Minutes it stood/).fill("30");
    await phone.tap("Take this");
    await current(/Drain and rinse/);
    await page.getByLabel(/^Litres run/).fill("120");
    await phone.tap("Take this");
    await current(/must read zero/);
    await page.getByLabel("Strip reads").fill("0.5");
    await phone.tap("Take this");
    await page.getByText(/Not zero. Rinse again/).waitFor();
    await current(/must read zero/);
    await phone.checkAccess("strip not zero");
    await shoot(phone, "strip");
    await phone.tap(/^Nothing seen: zero/);
    for (const title of [/carbon rinsed/, /First water away/]) {
      await current(title);
      await done();
    }
    await current(/Give the appliances back/);
    await done();
    await page.waitForURL((url) => url.hash.endsWith("/work/discardTank"));
  });

  it("keeps refused advice with the words, and all of it lands in the record", async () => {
    const { page } = phone;
    await page.goto(`${visit}/advice`);
    await page.getByLabel("What you advised").fill("Empty the ice bin every holiday");
    await page.getByLabel(/^Their words/).fill("no staff for it");
    await phone.checkAccess("advice");
    await shoot(phone, "advice");
    await phone.tap("Refused");
    await page.getByText(/Advised: Empty the ice bin/).waitFor();
    await page.goto(`${visit}/times`);
    await page.getByLabel("Who else was there").fill("M. Dunn, caretaker");
    await page.getByLabel("Minutes worked").fill("75");
    await phone.checkAccess("times");
    await shoot(phone, "times");
    await done();
    await page.waitForURL((url) => !url.hash.endsWith("/times"));
    await page.goto(`${visit}/record`);
    const downloaded = page.waitForEvent("download");
    await phone.tap(/^Issue record/);
    const text = await textOfPdf(new Uint8Array(readFileSync(await (await downloaded).path())));
    expect(text).toContain("50 mg/L × 53 L ÷ 52.5 g/L = 50.5 mL");
    expect(text).toContain("30 min");
    expect(text).toContain("nothing seen, step 0.1 mg/L");
    expect(text).toContain("refused by R. Hale");
    expect(text).toContain("no staff for it");
    expect(text).toContain("M. Dunn, caretaker");
    expect(text).toContain("75 min worked");
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });
});
