import { afterAll, beforeAll, expect, it } from "vitest";
import { expectedBand, expectedMiddle } from "./expected-band.ts";
import { choose, fill } from "./kitchen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { PLATE, smallBook, takeIn } from "./small-book.ts";

const LIE = "How the two elements lie (not said: side by side)";

const TANK = "Tank gauge";

let phone: Phone;
const at = (place: string) => phone.page.goto(`${new URL(`#${place}`, phone.page.url())}`);

beforeAll(async () => {
  await openBrowser();
  phone = await pickUpPhone({ width: 360 });
  await takeIn(phone.page, smallBook());
  await phone.offline();
});
afterAll(async () => {
  await phone?.close();
  await closeBrowser();
});

const band = (port: string) => expectedBand(phone.page, port);
const expected = (port: string) => expectedMiddle(phone.page, port);

/** The two numbers stand there when it is asked again. */
async function askToday(texts: readonly string[] = []) {
  await at("/unit/unit/expected");
  for (const text of texts) {
    for (const key of [...text]) await phone.page.locator(`.key[data-key="${key}"]`).click();
    await phone.page.locator(".thumb .next").click();
  }
  await phone.page.locator(".port:visible").first().waitFor();
}

it("how two elements lie and the share of a blend valve are asked only where they are, and change what every port should read", async () => {
  const { page } = phone;
  await askToday(["58", "12"]);
  const [drain, delivered] = [await expected("Drain flow"), await expected("Delivered")];
  await at("/unit/unit/edit");
  await page.getByText("Has two elements (nameplate: of one)").waitFor();
  expect(await page.getByLabel(LIE).count()).toBe(0);
  expect(await page.getByLabel(/^Blend valve: share/).count()).toBe(0);
  await page.getByText("Has two elements (nameplate: of one)").click();
  await choose(phone, LIE, "one behind the other (series): they share one drain flow");
  await page.getByText("Has a blend valve").click();
  await fill(phone, /^Blend valve: share/, "10");
  await phone.checkAccess("composed unit");
  await askToday();
  await phone.checkAccess("what a composed unit should read");
  // A tenth of the label's feed is 50 mg/L; the tank's share of it falls by a tenth.
  expect(await expected("Delivered")).toBeGreaterThan(delivered + 0.05 * Number(PLATE.testFeedMgPerL));
  expect(await expected("Drain flow")).toBeGreaterThan(0.8 * drain);
  expect(await expected("Drain flow")).toBeLessThan(1.05 * drain);
  await at("/unit/unit/edit");
  await choose(phone, LIE, "side by side (parallel): each drains as its plate says");
  await askToday();
  expect(await expected("Drain flow")).toBeGreaterThan(1.7 * drain);
  expect(await page.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
});

it("a permeate pump is one tap: the tank holds purer water, and stands as full as its shut-off's share says", async () => {
  const { page } = phone;
  await askToday();
  const [tank, permeate, delivered] = [await band(TANK), await band("Permeate"), await expected("Delivered")];
  await at("/unit/unit/edit");
  await page.getByText(/^Permeate pump before the tank/).click();
  await phone.checkAccess("unit with a permeate pump");
  await askToday();
  expect(await band(TANK)).toEqual(tank);
  expect(await band("Permeate")).toEqual(permeate);
  expect(await expected("Delivered")).toBeLessThan(0.95 * delivered);
  await at("/unit/unit/try");
  await page.getByText("Full in").waitFor();
  expect(await page.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
});

it("a scale inhibitor on the page of a wanted recovery: what its label holds, and nothing assumed where it says nothing", async () => {
  const { page } = phone;
  const part = { unit: "unit", role: "scaleInhibitor", position: 0 } as const;
  await takeIn(page, smallBook({}, [["part", "inhibitor", part]]));
  await at("/unit/unit/try");
  await phone.tap(/^A wanted recovery/);
  await page.getByText(/^A scale inhibitor is fitted; its label/).waitFor();
  await phone.checkAccess("inhibitor without its label");
  await at("/part/inhibitor");
  await fill(phone, /^Label: calcite saturation index/, "1.5");
  await phone.checkAccess("part: inhibitor");
  await at("/unit/unit/try");
  await phone.tap(/^A wanted recovery/);
  await page.getByText(/^Calcite to a saturation index of 1\.5/).waitFor();
  expect(await page.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
});
