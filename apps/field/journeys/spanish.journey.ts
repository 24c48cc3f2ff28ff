import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bookText } from "../../../packages/records/src/testing/book-text.ts";
import { causePackEn } from "../src/words/cause.en.ts";
import { causePackEs } from "../src/words/cause.es.ts";
import { firstPackEn } from "../src/words/first.en.ts";
import { firstPackEs } from "../src/words/first.es.ts";
import { visitPackEn } from "../src/words/visit.en.ts";
import { visitPackEs } from "../src/words/visit.es.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { PLATE, takeIn } from "./small-book.ts";

/** Names without an English word, so that every one found is ours. */
const BOOK = bookText([
  ["settings", "settings", { technician: "J. Orme" }],
  ["site", "site", { name: "Escuela Ribera", askName: "R. Haro", askRole: "cocinera" }],
  ["point", "point", { site: "site", name: "Bajo el horno" }],
  [
    "unit",
    "unit",
    {
      point: "point",
      name: "Equipo 1",
      ...PLATE,
    },
  ],
]);

const texts = (words: unknown): string[] =>
  typeof words === "string"
    ? [words]
    : typeof words === "object" && words !== null
      ? Object.values(words).flatMap(texts)
      : [];

const spanish = new Set(texts([firstPackEs, visitPackEs, causePackEs]).map((text) => text.toLowerCase()));
/** Everything said in English alone, long enough to be no part of another word. */
const english = texts([firstPackEn, visitPackEn, causePackEn]).filter(
  (text) => text.length > 5 && /^[a-z ,.'-]+$/i.test(text) && !spanish.has(text.toLowerCase()),
);
/** Words no Spanish sentence has: they find what is said by a function. */
const SMALL = /(?<![\p{L}])(?:the|of|and|with|is|it|for|from|this|not|at|by|yet)(?![\p{L}])/iu;

describe("the phone in Spanish, offline", () => {
  let phone: Phone;
  const at = (place: string) => phone.page.goto(`${new URL(`#${place}`, phone.page.url())}`);
  /** No English on the screen, nothing wider than it. */
  const checkWords = async (where: string) => {
    const { shown, wide } = await phone.page.evaluate(() => ({
      shown: [
        ...[...document.querySelectorAll("body *")].flatMap((one) =>
          [...one.childNodes]
            .filter((node) => node.nodeType === Node.TEXT_NODE)
            .map((node) => node.nodeValue),
        ),
        ...[...document.querySelectorAll("[aria-label]")].map((one) => one.getAttribute("aria-label")),
      ].join("\n"),
      wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    }));
    const lines = shown.split("\n").filter((line) => line.trim() !== "English");
    expect(
      english.filter((text) => lines.some((line) => line.trim() === text)),
      where,
    ).toEqual([]);
    expect(
      lines.filter((line) => SMALL.test(line)),
      where,
    ).toEqual([]);
    expect(wide, `${where}: wider than the screen by`).toBe(0);
    await shoot(phone, `es-${where}`);
  };
  beforeAll(async () => {
    await openBrowser();
    phone = await pickUpPhone({ width: 360 });
    await takeIn(phone.page, BOOK);
    await phone.offline();
  });
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  it("one tap speaks Spanish and one tap brings English back, at the same place, without a network", async () => {
    const { page } = phone;
    await at("/settings");
    await phone.tap("Español");
    await page.getByRole("heading", { level: 1, name: "Ajustes" }).waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe("es");
    await phone.tap("English");
    await page.getByRole("heading", { level: 1, name: "Settings" }).waitFor();
    await phone.tap("Español");
    await page.getByRole("heading", { level: 1, name: "Ajustes" }).waitFor();
    await checkWords("ajustes");
    await phone.checkAccess("ajustes");
  });

  it("the book, a unit, its water, a filter visit and the search for a cause hold no English", async () => {
    const { page } = phone;
    for (const [place, title] of [
      ["/", /\p{L}+ \d/u],
      ["/more", /^Más$/],
      ["/site/site", /Escuela/],
      ["/site/site/water", /./],
      ["/unit/unit", /./],
      ["/unit/unit/edit", /^Lugar y equipo$/],
      ["/practice", /^Equipo de práctica$/],
    ] as const) {
      await at(place);
      await page.getByRole("heading", { level: 1, name: title }).waitFor();
      await checkWords(place.replaceAll("/", "-"));
    }
    await at("/unit/unit");
    await phone.tap(/^Otro tipo de visita/);
    await page.getByRole("heading", { level: 1, name: "¿Qué tipo de visita?" }).waitFor();
    await checkWords("kinds");
    await phone.tap(/^Solo filtros/);
    await page.waitForURL(/\/visit\//);
    const seen = new Set<string>();
    while (seen.size < 14 && !page.url().endsWith("/record")) {
      const here = page.url();
      seen.add(here);
      await page.getByRole("heading", { level: 1 }).waitFor();
      await checkWords(`visit-${seen.size}`);
      if (seen.size === 2) await phone.checkAccess("a number in Spanish");
      if ((await page.locator('.key[data-key="7"]').count()) > 0) await phone.number("7");
      else await page.locator(".thumb .next").click();
      const went = await page
        .waitForURL((url) => `${url}` !== here, { timeout: 3000 })
        .then(
          () => true,
          () => false,
        );
      if (!went) break;
    }
    expect(seen.size).toBeGreaterThan(4);
    const [, visit] = /\/visit\/([^/]+)/.exec(page.url()) ?? [];
    for (const place of ["", "/judgement", "/sign", "/leave", "/record", "/cause", "/expected", "/also"]) {
      await at(`/visit/${visit}${place}`);
      await page.getByRole("heading", { level: 1 }).waitFor();
      await checkWords(`visit${place.replaceAll("/", "-")}`);
    }
    expect(phone.errors).toEqual([]);
  });
});
