import type { Phone } from "./phone.ts";

/** Fills an entry of the set-up by its label and leaves it. */
export async function fill(phone: Phone, label: string | RegExp, text: string) {
  const entry = phone.page.getByLabel(label, typeof label === "string" ? { exact: true } : undefined).first();
  await entry.fill(text);
  await entry.blur();
}

export async function choose(phone: Phone, label: string, option: string) {
  await phone.page.getByLabel(label, { exact: true }).first().selectOption({ label: option });
}

async function addInstrument(
  phone: Phone,
  name: string,
  reads: string,
  unit: string,
  more: () => Promise<void>,
) {
  await phone.page.getByRole("button", { name: "Add an instrument" }).click();
  await fill(phone, "Instrument", name);
  await choose(phone, "Reads", reads);
  await choose(phone, "Unit", unit);
  await more();
  await phone.page.getByRole("link", { name: "Instruments" }).click();
}

/** An empty book becomes one kitchen with its unit, oven and instruments, all through the screen. */
export async function setUpKitchen(phone: Phone) {
  const { page } = phone;
  await page.goto(`${new URL("#/settings", page.url())}`);
  await fill(phone, "Your name", "J. Orme");
  await page.goto(`${new URL("#/instruments", page.url())}`);
  await addInstrument(phone, "Meter 7", "Dissolved solids", "ppm", async () => {
    await choose(phone, "Scale, for dissolved solids", "442");
    await fill(phone, "± % of reading", "2");
    await fill(phone, "Smallest step shown", "1");
  });
  await addInstrument(phone, "Gauge 2", "Pressure", "psi", async () => {
    await fill(phone, "± % of full scale", "0.7");
    await fill(phone, "Full scale", "100");
  });
  await page.goto(`${new URL("#/", page.url())}`);
  await page.getByRole("button", { name: "Add a site" }).first().click();
  await fill(phone, "Site", "Saltmarsh primary school");
  await fill(phone, "Who to ask", "R. Hale");
  await fill(phone, "Role", "kitchen lead");
  await page.getByRole("button", { name: "Add a unit" }).click();
  await page.getByRole("heading", { level: 1, name: "Place and unit" }).waitFor();
  const trade: readonly (readonly [string, string, string])[] = [
    ["Nameplate: permeate", "31.8", "L/h"],
    ["Nameplate: drain flow", "60", "L/h"],
    ["Nameplate: rejection, %", "94.3", ""],
    ["at test pressure", "4.14", "bar"],
    ["at temperature", "25", "°C"],
    ["with feed of NaCl", "500", "mg/L"],
    ["Tank volume", "53", "L"],
  ];
  for (const [label, text, unit] of trade) {
    const band = page.locator(".band.entry", { has: page.getByLabel(label, { exact: true }) });
    const switcher = band.locator(".unit-switch");
    while (unit && (await switcher.count()) > 0 && (await switcher.textContent()) !== unit)
      await switcher.click();
    await fill(phone, label, text);
  }
  await page.getByRole("button", { name: "Add an appliance" }).click();
  await fill(phone, "Appliance", "Combi oven");
  await fill(phone, /Minimum pressure/, "20");
  await page.getByRole("button", { name: "Add a limit from its label" }).click();
  await choose(phone, "Limit of", "Dissolved solids");
  await choose(phone, "Scale, for dissolved solids", "442");
  await fill(phone, "At most", "100");
  await page.getByRole("link", { name: "Back" }).last().click();
  await page.getByRole("link", { name: /^Unit/ }).click();
  await page
    .getByRole("button", { name: /^Start visit/ })
    .first()
    .waitFor();
}
