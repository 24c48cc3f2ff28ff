import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { choose, fill } from "./kitchen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";

describe("setting up, offline", () => {
  let phone: Phone;
  const at = (place: string) => phone.page.goto(`${new URL(`#${place}`, phone.page.url())}`);
  beforeAll(async () => {
    await openBrowser();
  });
  beforeAll(async () => {
    phone = await pickUpPhone({ width: 360 });
    await phone.offline();
  });
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  it("a meter is asked for its scale, and a limit of what it is and on which scale", async () => {
    const { page } = phone;
    await at("/instruments");
    await phone.tap("Add an instrument");
    expect(await page.getByLabel("Reads", { exact: true }).inputValue()).toBe("");
    await choose(phone, "Reads", "Dissolved solids");
    expect(await page.getByLabel("Scale, for dissolved solids").inputValue()).toBe("");
    await page.getByText("Until it is chosen, readings count as NaCl").waitFor();
    await choose(phone, "Unit", "µS/cm");
    await phone.checkAccess("instrument");
    await fill(phone, /^In the standard of 1413/, "1399");
    await phone.tap("Keep this check");
    await page.getByText("1399 for 1413, off by -1.0 %").waitFor();
    await at("/models");
    await phone.tap("Add a type");
    await fill(phone, "Appliance type", "Combi, six trays");
    await phone.tap("Add a limit from its label");
    expect(await page.getByLabel("Limit of", { exact: true }).inputValue()).toBe("");
    await choose(phone, "Limit of", "pH");
    const high = page.locator(".band.entry", { has: page.getByLabel("At most", { exact: true }) });
    expect(await high.textContent()).not.toContain("mg/L");
    await choose(phone, "Limit of", "Dissolved solids");
    await page.getByText("Until it is chosen, the limit counts as NaCl").waitFor();
    await fill(phone, "At most", "100");
    await phone.checkAccess("appliance type");
  });

  it("what was typed and refused stands there again after leaving the screen, also after a restart", async () => {
    const { page } = phone;
    await at("/settings");
    await fill(phone, /pre-filter drop/, "999999");
    await page.getByText(/is possible here/).waitFor();
    await phone.checkAccess("settings");
    await at("/more");
    await phone.checkAccess("more");
    await at("/settings");
    expect(await page.getByLabel(/pre-filter drop/).inputValue()).toBe("999999");
    await page.getByText(/is possible here/).waitFor();
    await page.reload();
    expect(await page.getByLabel(/pre-filter drop/).inputValue()).toBe("999999");
    await fill(phone, /pre-filter drop/, "6");
    await at("/more");
    await at("/settings");
    expect(await page.getByLabel(/pre-filter drop/).inputValue()).toBe("6");
    await phone.tap("Back to the house's own");
    await expect.poll(() => page.getByLabel(/pre-filter drop/).inputValue()).toBe("");
  });

  it("the unit of an entry is remembered", async () => {
    const { page } = phone;
    await at("/");
    await phone.tap(/^Add a site/);
    await fill(phone, "Site", "Elm Lane nursery");
    const band = page.locator(".band.entry", { has: page.getByLabel("Altitude", { exact: true }) });
    await band.locator(".unit-switch").click();
    expect(await band.locator(".unit-switch").textContent()).toBe("ft");
    await at("/");
    await phone.tap(/^Elm Lane/);
    expect(await band.locator(".unit-switch").textContent()).toBe("ft");
  });

  it("a site, a unit, an instrument are taken out by a change and brought back by undo", async () => {
    const { page } = phone;
    await phone.tap("Add a unit");
    await fill(phone, "Nameplate: recovery, % (when it gives no drain flow)", "30");
    await fill(phone, "Shut-off closes at this share of feed pressure", "0.62");
    await phone.checkAccess("unit set-up");
    await page.getByRole("link", { name: /^Carbon cartridge/ }).click();
    await fill(phone, "Water meter when it was fitted", "101.5");
    await fill(phone, "Lot", "C-88");
    await phone.checkAccess("part");
    await page.goBack();
    await page.getByRole("button", { name: /^Take out of the book/ }).click();
    await page.getByText("Elm Lane nursery").first().waitFor();
    expect(await page.getByText("Unit 1").count()).toBe(0);
    await at("/instruments");
    await page.getByRole("link", { name: /^New instrument/ }).click();
    await page.getByRole("button", { name: /^Take out of the book/ }).click();
    await page.getByRole("heading", { name: "Instruments" }).waitFor();
    expect(await page.getByRole("link", { name: /^New instrument/ }).count()).toBe(0);
    await phone.tap("Undo");
    await page.getByRole("link", { name: /^New instrument/ }).waitFor();
    await phone.tap("Undo");
    await at("/");
    await page
      .getByRole("link", { name: /^Elm Lane nursery, Unit 1/ })
      .first()
      .waitFor();
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });

  it("phones can install it: PNG icons of both sizes and a maskable one", async () => {
    const fresh = await pickUpPhone();
    const manifest = await fresh.page.evaluate(async () => {
      const link = document.querySelector<HTMLLinkElement>('link[rel="manifest"]');
      return (await (await fetch(link!.href)).json()) as {
        icons: { src: string; sizes: string; type: string; purpose: string }[];
      };
    });
    const png = manifest.icons.filter((icon) => icon.type === "image/png");
    expect(png.map((icon) => `${icon.sizes} ${icon.purpose}`)).toEqual([
      "192x192 any",
      "512x512 any",
      "512x512 maskable",
    ]);
    for (const icon of png) {
      const side = await fresh.page.evaluate(async (src) => {
        const picture = await createImageBitmap(await (await fetch(src)).blob());
        return [picture.width, picture.height].join("x");
      }, icon.src);
      expect(side).toBe(icon.sizes);
    }
    await fresh.close();
  });
});
