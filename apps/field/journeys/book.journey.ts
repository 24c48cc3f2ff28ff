import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { codeOfUnit, stickerLink } from "@tapside/book";
import { chromium } from "playwright";
import { encode } from "uqr";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../../tools/find-browser.mjs";
import { grey } from "./grey-png.ts";
import { fill } from "./kitchen.ts";
import { openUnit } from "./open-unit.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { smallBook, takeIn } from "./small-book.ts";
import { textOfPdf } from "./text-of-pdf.ts";

const LIST = readFileSync("examples/sites.csv");

/** A film for the camera: what of `frames` is dark, ten pictures a second. Source: YUV4MPEG2, as Chromium's fake camera reads it. */
function film(frames: readonly ((x: number, y: number) => boolean)[], size: number): Buffer {
  const colour = Buffer.alloc((size * size) / 2, 128);
  const pictures = frames.flatMap((dark) => {
    const grey = Buffer.alloc(size * size);
    for (let y = 0; y < size; y++) for (let x = 0; x < size; x++) grey[y * size + x] = dark(x, y) ? 16 : 235;
    return [Buffer.from("FRAME\n"), grey, colour];
  });
  return Buffer.concat([Buffer.from(`YUV4MPEG2 W${size} H${size} F10:1 Ip A1:1 C420\n`), ...pictures]);
}

/** A sticker held before the camera, in the middle of a square picture. */
function held(link: string, size: number): (x: number, y: number) => boolean {
  const { data, size: cells } = encode(link, { ecc: "Q", border: 4 });
  const scale = Math.floor(size / cells);
  const edge = Math.floor((size - cells * scale) / 2);
  return (x, y) => data[Math.floor((y - edge) / scale)]?.[Math.floor((x - edge) / scale)] ?? false;
}

/** A photo of a sticker. */
function photoOf(link: string): Buffer {
  const { data, size } = encode(link, { ecc: "Q", border: 4 });
  const scale = 6;
  return grey(size * scale, (x, y) => data[Math.floor(y / scale)]![Math.floor(x / scale)]!);
}

describe("the book, offline", () => {
  let phone: Phone;
  const at = (place: string) => phone.page.goto(`${new URL(`#${place}`, phone.page.url())}`);
  const heading = (name: string | RegExp) => phone.page.getByRole("heading", { level: 1, name }).waitFor();
  const pdfOf = async (button: RegExp) => {
    const pdf = phone.page.waitForEvent("download", { timeout: 30_000 });
    await phone.page.locator("main").getByRole("button", { name: button }).click();
    return textOfPdf(new Uint8Array(readFileSync(await (await pdf).path())));
  };
  const give = async (tap: string | RegExp, name: string, buffer: Buffer, mimeType: string) => {
    const chooser = phone.page.waitForEvent("filechooser");
    await phone.tap(tap);
    await (await chooser).setFiles({ name, mimeType, buffer });
  };
  beforeAll(async () => {
    await openBrowser();
  });
  beforeAll(async () => {
    phone = await pickUpPhone();
    await phone.offline();
  });
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  it("a broken list is shown with its reasons before anything is taken in; a good one comes in and out by undo", async () => {
    const { page } = phone;
    await phone.tap(/^Import a list/);
    await give(/^Choose the file/, "foreign.csv", Buffer.from("name;tank\nElm;53"), "text/csv");
    await page.getByText('The file has no column "site"').waitFor();
    const broken = Buffer.from(
      'site,tank_L,fitted_on\nElm,53,2025-01-01\nOak,lots,\nAsh,,2025-02-30\nYew,"5',
    );
    await give(/^Choose the file/, "broken.csv", broken, "text/csv");
    await page.getByText("3 rows refused").waitFor();
    await page.getByText('Line 3: tank_L: "lots" is not a number.').waitFor();
    await page.getByText("Line 5: A quote is opened and never closed").waitFor();
    await phone.checkAccess("list with refused rows");
    await shoot(phone, "list");
    await give(/^Choose the file/, "sites.csv", LIST, "text/csv");
    await page.getByText("2 new sites, 4 new units, 0 already in the book.").waitFor();
    await phone.tap(/^Take them in/);
    await page.getByText("Taken in: 4 rows").waitFor();
    await at("/");
    await page
      .getByRole("link", { name: /^Withy Bridge depot kitchen, Middle/ })
      .first()
      .waitFor();
    await phone.checkAccess("due list");
    await shoot(phone, "due");
  });

  it("search finds by code, by people, by place and tells where a lot is", async () => {
    const { page } = phone;
    const search = page.getByRole("searchbox");
    await search.fill("lm-22");
    await expect.poll(() => page.getByRole("link", { name: /^Withy Bridge/ }).count()).toBe(0);
    await page
      .getByRole("link", { name: /^Fen End infants/ })
      .first()
      .waitFor();
    await search.fill("C-410");
    await page.getByText("Parts of that lot or serial number").waitFor();
    expect(await page.getByRole("link", { name: /^Carbon cartridge, .*in service/ }).count()).toBe(3);
    await phone.checkAccess("search by lot");
    await page
      .getByRole("link", { name: /^Carbon cartridge, .*in service/ })
      .first()
      .click();
    const label = (picture: Buffer) => give("Read it from the label", "label.png", picture, "image/png");
    await label(grey(240, (x, y) => (x * 7 + y * 13) % 11 === 0));
    await page.getByText("No code could be read on this photo").waitFor();
    await label(photoOf("(10)C-777(21)S-42"));
    await expect.poll(() => page.getByLabel("Serial number").inputValue()).toBe("S-42");
    expect(await page.getByLabel("Lot").inputValue()).toBe("C-777");
    await phone.checkAccess("part read from its label");
    await page.locator(".thumb").getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => page.getByLabel("Lot").inputValue()).toBe("C-410");
    await at("/");
    await search.fill("nothing like it");
    await page.getByText("Nothing found").waitFor();
    await search.fill("");
  });

  it("a day holds its visits and the parts to carry", async () => {
    const { page } = phone;
    await page
      .getByRole("link", { name: /^Withy Bridge depot kitchen, Left/ })
      .first()
      .click();
    await heading(/Left/);
    await page.getByRole("link", { name: "Plan a visit" }).click();
    await page.locator("main .band").first().click();
    await page.getByLabel("Time").fill("06:30");
    await page.getByLabel("Time").blur();
    await fill(phone, "Reason", "carbon by litres");
    await phone.checkAccess("plan");
    await phone.tap(/^Day/);
    await page.getByText("carbon by litres").waitFor();
    await phone.checkAccess("day");
    await shoot(phone, "day");
  });

  it("the box is found: place, key, hours, valve, drain; the unit moves and both histories stand", async () => {
    const { page } = phone;
    await at("/");
    await page
      .getByRole("link", { name: /^Fen End infants/ })
      .first()
      .click();
    await page.getByRole("link", { name: /^Find it/ }).click();
    await heading(/Fen End infants, Kitchen/);
    await page.getByText("office").waitFor();
    expect(await page.getByLabel("Isolation valve").inputValue()).toBe("under the sink");
    await phone.checkAccess("find it");
    await phone.tap(/^Unit/);
    await page.getByRole("link", { name: /^Move, swap or lend/ }).click();
    await phone.checkAccess("move");
    await page.getByLabel("New place at").selectOption({ label: "Withy Bridge depot kitchen" });
    await heading(/Withy Bridge depot kitchen, Unit 1/);
    await page.getByRole("link", { name: /^Move, swap or lend/ }).click();
    await page.getByText("Fen End infants, Kitchen").first().waitFor();
    await page.getByRole("button", { name: /^Move it to Fen End infants/ }).click();
    await heading(/Fen End infants, Unit 1/);
    await page.getByRole("link", { name: /^Move, swap or lend/ }).click();
    await phone.tap("Take it to the store");
    await heading(/^Unit 1, in the store$/);
    await page.getByRole("link", { name: /^Find it/ }).click();
    await fill(phone, "Where it lies: shelf, van, workshop", "shelf 3");
    await phone.checkAccess("find it in the store");
    await at("/");
    await page.getByRole("searchbox").fill("shelf 3");
    await page
      .getByRole("main")
      .getByRole("link", { name: /^Unit 1, in the store, shelf 3/ })
      .waitFor();
    await page.getByRole("searchbox").fill("");
    await page
      .getByRole("link", { name: /^Withy Bridge depot kitchen, Right/ })
      .first()
      .click();
    await page.getByRole("link", { name: /^Move, swap or lend/ }).click();
    await page.getByRole("button", { name: "It is a loan" }).click();
    await page.getByLabel("On loan until").fill("2030-01-15");
    await page.getByRole("button", { name: /^Swap it for Unit 1/ }).click();
    await at("/");
    await page
      .getByRole("link", { name: /^Withy Bridge depot kitchen, Unit 1/ })
      .first()
      .waitFor();
  });

  it("a site changes hands on a day; a chain shows its sites by code", async () => {
    const { page } = phone;
    await page
      .getByRole("link", { name: /^Withy Bridge depot kitchen, Left/ })
      .first()
      .click();
    await page.getByRole("link", { name: /^Place, plate and parts/ }).click();
    await phone.tap("Site");
    await page.getByRole("link", { name: "Change of owner" }).click();
    await fill(phone, "New owner", "Osier Catering");
    await phone.checkAccess("change of owner");
    await page.locator(".thumb .next").click();
    await page.getByText("Osier Catering").waitFor();
    await page.getByRole("link", { name: /^Chain/ }).click();
    await heading("Larkmoor meals");
    await page.getByText("LM-21").waitFor();
    await phone.checkAccess("chain");
  });

  it("the camera is refused: a photo of the sticker or its code opens the unit", async () => {
    const { page } = phone;
    await at("/");
    await page
      .getByRole("link", { name: /^Withy Bridge depot kitchen, Middle/ })
      .first()
      .click();
    await page.getByRole("link", { name: /^Sticker/ }).click();
    const code = (await page.locator("main strong").textContent()) ?? "";
    await phone.checkAccess("sticker");
    const down = page.waitForEvent("download");
    await phone.tap(/^Stickers as PDF/);
    const text = await textOfPdf(new Uint8Array(readFileSync(await (await down).path())));
    expect(text).toContain(code);
    expect(text).toContain("Withy Bridge");
    await at("/scan");
    await page.getByText("The camera is not to be had").waitFor();
    await phone.checkAccess("scan");
    await shoot(phone, "scan");
    await give(
      "Photo of the sticker",
      "blank.png",
      grey(240, (x, y) => (x * 7 + y * 13) % 11 === 0),
      "image/png",
    );
    await page.getByText("no readable sign on this photo").waitFor();
    await give("Photo of the sticker", "sticker.png", photoOf(stickerLink(page.url(), code)), "image/png");
    await phone.tap(/^Unit/);
    await heading(/Middle/);
    await at("/scan");
    await fill(phone, "Code on the sticker", `${code.slice(0, -1)}${code.endsWith("0") ? "1" : "0"}`);
    await phone.tap(/^Open/);
    await page.getByText("One sign of this code is wrong").waitFor();
    await fill(phone, "Code on the sticker", code.toLowerCase().replace("-", " "));
    await phone.tap(/^Open/);
    await phone.tap(/^Unit/);
    await heading(/Middle/);
  });

  it("the camera sees a sticker go by and opens its unit, offline", async () => {
    const folder = mkdtempSync(join(tmpdir(), "tapside-camera-"));
    const path = join(folder, "sticker.y4m");
    const wall = (x: number, y: number) => (x * 7 + y * 13) % 11 === 0;
    const sticker = held(stickerLink(phone.page.url(), codeOfUnit("unit")), 480);
    writeFileSync(path, film([...Array(5).fill(wall), ...Array(10).fill(sticker)], 480));
    const { executablePath, args, env } = await findBrowser();
    const browser = await chromium.launch({
      executablePath,
      env: env as Record<string, string>,
      args: [
        ...args,
        "--use-fake-ui-for-media-stream",
        "--use-fake-device-for-media-stream",
        `--use-file-for-fake-video-capture=${path}`,
      ],
    });
    try {
      const other = await pickUpPhone({ browser });
      await other.offline();
      await takeIn(other.page, smallBook());
      await other.page.goto(`${new URL("#/scan", other.page.url())}`);
      await other.page.getByText("Hold the sticker in the picture.").waitFor();
      await other.page.waitForURL(/#\/s\//, { timeout: 20_000 });
      await other.tap(/^Unit/);
      await other.page.waitForURL(/#\/unit\/unit$/);
      expect(other.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
    } finally {
      await browser.close();
      rmSync(folder, { recursive: true });
    }
  });

  it("a new sticker asks which unit it goes on", async () => {
    const { page } = phone;
    await at("/s/0000-0000");
    await heading(/Sticker 0000-0000 is on no unit yet/);
    await phone.checkAccess("new sticker");
    await page.getByRole("button", { name: /^Withy Bridge depot kitchen, Middle/ }).click();
    await heading(/Middle/);
    await at("/s/0000-0000");
    await phone.tap(/^Unit/);
    await heading(/Middle/);
  });

  it("the claim file comes in one tap, as PDF and data", async () => {
    const { page } = phone;
    await page.getByRole("link", { name: /^Claim file/ }).click();
    await heading("Claim file");
    await phone.checkAccess("claim file");
    await shoot(phone, "claim");
    const files: string[] = [];
    page.on("download", (one) => files.push(one.suggestedFilename()));
    const pdf = page.waitForEvent("download", (one) => one.suggestedFilename().endsWith(".pdf"));
    await page.locator(".thumb .next").click();
    const text = await textOfPdf(new Uint8Array(readFileSync(await (await pdf).path())));
    expect(text).toContain("Water when it was fitted");
    expect(text).toContain("lot C-410");
    expect(files.some((name) => name.endsWith(".json"))).toBe(true);
  });

  it("the kitchen gets a card before the first visit, and the way leads back to the unit", async () => {
    const { page } = phone;
    await page.locator('.thumb a[href^="#/unit/"]').first().click();
    await page.getByRole("link", { name: /^For the kitchen/ }).click();
    await heading("For the kitchen");
    await phone.checkAccess("for the kitchen");
    await shoot(phone, "kitchen");
    expect(await pdfOf(/^Card for the kitchen/)).toContain("When the tank is full");
    await page.locator('.thumb a[href^="#/unit/"]').first().click();
    await heading(/Middle/);
  });

  it("the month, the van, a sensor's file and a meter's ledger open from the book and lead back", async () => {
    const { page } = phone;
    await at("/more");
    await phone.tap(/^Open the demo book/);
    await at("/van");
    await phone.tap(/^Carbon cartridge/);
    await phone.tap("Load one");
    await page.getByRole("button", { name: /^Load one.*1 in the van/ }).waitFor();
    await phone.checkAccess("one kind in the van");
    await at("/van");
    await shoot(phone, "van");
    await at("/month/2026-03");
    await page.getByText("Found outside their limits").waitFor();
    await phone.checkAccess("month");
    await shoot(phone, "month");
    const table = page.waitForEvent("download");
    await page.locator(".thumb .next").click();
    expect(readFileSync(await (await table).path(), "utf8")).toContain("section,site_code,site");
    await at("/instruments");
    await phone.tap(/^Meter 7/);
    await phone.tap(/^Ledger/);
    await heading(/^Ledger/);
    await phone.checkAccess("ledger");
    await shoot(phone, "ledger");
    await at("/unit/demo:1:unit/sensor");
    const csv =
      "time,value,unit,alarm\n2026-11-25 08:00,14,ppm,\n2026-11-25 09:00,,,water on floor\nsoon,1,ppm,\n";
    await give(/^Choose the file/, "tray.csv", Buffer.from(csv), "text/csv");
    await page.getByText(/Line 4: .*no time written/).waitFor();
    await phone.checkAccess("sensor");
    await shoot(phone, "sensor");
    await page.locator(".thumb .next").click();
    await at("/unit/demo:1:unit");
    await page.getByText("2 lines · 14 ppm · 1 alarm").waitFor();
    await at("/appliance/demo:3:appliance");
    await page.getByLabel("Its own counter counts").selectOption({ index: 1 });
    await at("/unit/demo:3:unit");
    await phone.tap(/^Start visit/);
    await page.waitForURL(/\/visit\/[^/]+\/\w+/);
    const visit = new URL(page.url()).hash.split("/")[2];
    await at(`/visit/${visit}/counters`);
    await page.locator("main input").first().fill("812");
    await phone.checkAccess("counters");
    await phone.tap(/^Next/);
    await at(`/visit/${visit}/counters`);
    expect(await page.locator("main input").first().inputValue()).toBe("812");
    await page.getByText("stood at 812").waitFor();
    await at("/day/2030-01-02");
    for (const visits of ["1 visit", "2 visits", "3 visits", "4 visits"]) {
      await page.locator("main button.band:has(.on-day)").first().click();
      await page.getByText(visits, { exact: true }).waitFor();
    }
    await page.getByText("Likely to be wanted").waitFor({ timeout: 20_000 });
    await phone.checkAccess("day with likely parts");
    await at("/unit/demo:1:unit/kitchen");
    expect(await pdfOf(/^The water in plain words/)).toContain("What the kitchen looks after itself");
  });

  it("every band of a unit's water opens what is known of its place", async () => {
    const { page } = phone;
    await at("/");
    await openUnit(phone, "Sallow Lane");
    const back = () => page.locator('.thumb a[href^="#/unit/"]').first().click();
    for (const band of ["tap", "cartridge", "shutOff", "element", "tank", "postFilter", "outlet"]) {
      await page.locator(`a[href$="/at/${band}"]`).click();
      await page.locator("main .band").first().waitFor();
      expect(await page.locator("main").textContent()).not.toMatch(/NaN|undefined|\[object/);
      await phone.checkAccess(`at ${band}`);
      await back();
    }
    await page.locator('a[href$="/due"]').click();
    await heading("Parts due");
    await phone.checkAccess("parts due");
    await back();
    await phone.tap("As left");
    await phone.checkAccess("as left");
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });
});
