import { codeOfUnit } from "@tapside/book";
import { afterAll, beforeAll, expect, it } from "vitest";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";

beforeAll(openBrowser);
afterAll(closeBrowser);

const goTo = (phone: Phone, to: string) =>
  phone.page.evaluate((hash) => {
    location.hash = hash;
  }, to);
const heading = (phone: Phone, text: string) =>
  phone.page.getByRole("heading", { level: 1, name: text }).waitFor();

const code = codeOfUnit("demo:1:unit");

it("a kitchen scans the sticker, says what is wrong, and the technician's call-out begins with it", async () => {
  const chef = await pickUpPhone();
  await chef.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await chef.offline();
  await goTo(chef, `/s/${code}`);
  await heading(chef, "What is wrong with the water?");
  await chef.checkAccess("call, empty");
  await chef.tap(/^Send/);
  await chef.page.getByRole("status").getByText("Touch what is wrong").waitFor();
  await chef.tap("Runs");
  await chef.page.getByLabel("What an appliance shows").fill("E4 water");
  await chef.page.getByLabel("Your name").fill("K. Finch");
  await chef.page.getByText("Open no housing: it is under pressure.").waitFor();
  await chef.checkAccess("call, told");
  await chef.tap(/^Send/);
  await chef.page.getByText("Copied. Paste it into a message to the technician.").waitFor();
  const message = await chef.page.evaluate(() => navigator.clipboard.readText());
  expect(message).toContain(`Unit ${code}, K. Finch`);
  expect(message).toContain("Drain runs while nobody draws; Alarm of an appliance: E4 water.");
  await chef.close();

  const phone = await pickUpPhone();
  await goTo(phone, "/");
  await phone.tap(/^Open the demo book/);
  await phone.page.getByText("Sallow Lane primary, Unit 1").first().waitFor();
  await phone.offline();
  await goTo(phone, "/scan");
  await phone.page.getByLabel("Code on the sticker").fill(message);
  await phone.tap(/^Open/);
  await heading(phone, "Sallow Lane primary");
  await phone.page.getByText("Alarm of an appliance: E4 water").waitFor();
  await phone.page.getByText("Shut-off valve stays open").waitFor({ timeout: 30_000 });
  await phone.checkAccess("called");
  await phone.tap("Start call-out");
  await phone.page.waitForURL(/visit.*ask/);
  const visit = /\/visit\/[^/]+/.exec(phone.page.url())?.[0] ?? "";
  await goTo(phone, `${visit}/check/complaint`);
  for (const item of ["Drain runs all the time", "Alarm of an appliance"])
    expect(await phone.page.getByRole("button", { name: item }).getAttribute("aria-pressed"), item).toBe(
      "true",
    );
  expect(await phone.page.getByLabel("In their words").inputValue()).toContain("E4 water; K. Finch");
  expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  await phone.close();
});

it("the book tells its own score: what was told beside what was read, elements, call-backs", async () => {
  const phone = await pickUpPhone();
  await goTo(phone, "/");
  await phone.tap(/^Open the demo book/);
  await phone.page.getByText("Sallow Lane primary, Unit 1").first().waitFor();
  await phone.offline();
  await goTo(phone, "/more");
  await phone.tap("Own score");
  await phone.page.getByText(/of the readings of sound units lay/).waitFor({ timeout: 60_000 });
  await phone.page.getByText("kept past their day: they read as good").waitFor();
  await phone.checkAccess("own score");
  expect(await phone.page.locator("main").textContent()).not.toMatch(/NaN|undefined|Infinity/);
  await phone.close();
});

it("a message that broke on its way, or of a unit not in the book, says so", async () => {
  const phone = await pickUpPhone();
  await goTo(phone, `/called/${code}/at%3Dsoon`);
  await phone.page.getByText("This is no message from a kitchen, or it broke on its way.").waitFor();
  await goTo(phone, `/called/${code}/${encodeURIComponent("at=2026-03-02T06:10:00.000Z&items=leak")}`);
  await phone.page.getByText("No unit of this book carries this sticker.").waitFor();
  await phone.page.getByText("Leak or wet floor").waitFor();
  await phone.close();
});
