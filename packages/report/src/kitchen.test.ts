import { assess } from "@tapside/assessment";
import { codeOfUnit } from "@tapside/book";
import type { UnitFile } from "@tapside/records";
import { messagesIn } from "@tapside/words/every-language";
import { kitchenInLanguage } from "@tapside/words/kitchen";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import type { RecordContent } from "./block.ts";
import { signSvg } from "./internal/sign-svg.ts";
import { buildKitchenCard } from "./kitchen-card.ts";
import { buildKitchenPage } from "./kitchen-page.ts";
import { recordPdf } from "./pdf.ts";
import { DEMO_UNITS, demoUnit, FONTS, withLastVisit } from "./test-support/demo-record.ts";

/** One of each kind: an ordinary one, one past which the water goes, the one with most to say. */
const TRIED = [1, 4, 7];

const LANGUAGES = ["en", "es"] as const;

const judged = (file: UnitFile) => {
  const visit = file.visits.at(-1)!;
  return {
    visit,
    assessment: assess(file, visit.id, { asOf: visit.endedAt!, timeZone: "UTC", settings: {} }),
  };
};

function card(file: UnitFile, language: string, issuedAt?: string, appUrl?: string): RecordContent {
  const { visit, assessment } = judged(file);
  return buildKitchenCard({
    file,
    assessment,
    words: messagesIn(language),
    kitchen: kitchenInLanguage(language),
    name: "A. Vance",
    phone: "555 0100",
    issuedAt: issuedAt ?? visit.endedAt!,
    timeZone: "UTC",
    appUrl,
  });
}

function page(file: UnitFile, language: string): RecordContent {
  const { visit, assessment } = judged(file);
  return buildKitchenPage({
    file,
    visitId: visit.id,
    assessment,
    words: messagesIn(language),
    kitchen: kitchenInLanguage(language),
    issuedAt: visit.endedAt!,
    timeZone: "UTC",
  });
}

async function readBack(content: RecordContent): Promise<{ readonly pages: number; readonly text: string }> {
  const pdf = await getDocument({ data: await recordPdf(content, "0".repeat(64), FONTS), verbosity: 0 })
    .promise;
  const { items } = await (await pdf.getPage(1)).getTextContent();
  const text = items.map((item) => ("str" in item ? item.str : "")).join(" ");
  return { pages: pdf.numPages, text: text.replace(/\s+/g, " ") };
}

const notSeen = (file: UnitFile, leftAt: string): UnitFile =>
  withLastVisit(file, (visit) => ({
    ...visit,
    answers: { ...visit.answers, filling: { state: "notSeen" }, times: { arrivedAt: leftAt, leftAt } },
  }));

describe.each(LANGUAGES)("pages for a kitchen in %s", (language) => {
  it.each(TRIED)("unit %i: card and page fit one sheet each", async (n) => {
    expect((await readBack(card(demoUnit(n), language))).pages).toBe(1);
    expect((await readBack(page(demoUnit(n), language))).pages).toBe(1);
  });
});

it.each(LANGUAGES)(
  "where the kitchen's phones reach the app, the sign opens its questions, on one sheet, in %s",
  async (language) => {
    const file = demoUnit(7);
    const open = card(file, language, undefined, "https://field.example/#/unit/u");
    const code = codeOfUnit(file.unit.id);
    const signIn = ({ blocks }: RecordContent) => blocks.find((block) => block.kind === "figure");
    expect(signIn(open)).toMatchObject({ svg: signSvg(`https://field.example/#/s/${code}`), alt: code });
    expect(signIn(card(file, language))).toMatchObject({ svg: signSvg(code) });
    const { pages, text } = await readBack(open);
    expect(pages).toBe(1);
    expect(text).toContain(kitchenInLanguage(language).card.signAsks);
  },
);

/** Litres of gas and pressures of the filling are tried in reverse-osmosis; here only what is said of the hours. */
it("says from when the water may be used: the upper end of the expected hours, on the wall's clock", async () => {
  const left = "2026-11-25T08:00:00.000Z";
  const file = notSeen(demoUnit(1), left);
  const { asFound, asLeft } = judged(file).assessment.figures;
  const hours = asLeft.fillingHours.kind === "known" ? asLeft.fillingHours : asFound.fillingHours;
  if (hours.kind !== "known") throw new Error("the demo unit's filling time is not known");
  const latest = Date.parse(left) + (hours.value.value + 2 * hours.value.u) * 3_600_000;
  const shown = new Date(Math.ceil(latest / 300_000) * 300_000).toISOString().slice(11, 16);
  const { text } = await readBack(card(file, "en", left));
  expect(text).toContain(`Do not use its water before ${shown}`);
  expect(text).toContain("A. Vance, 555 0100");
  expect((await readBack(card(file, "es", left))).text).toContain(`No use su agua antes de las ${shown}`);
});

it("says nothing of a filling that is long over, and that a bypassed unit gives tap water", async () => {
  const left = "2026-11-25T08:00:00.000Z";
  const file = notSeen(demoUnit(1), left);
  expect(JSON.stringify(card(file, "en", "2026-12-25T08:00:00.000Z"))).not.toContain("Do not use its water");
  const bypassed = withLastVisit(demoUnit(1), (visit) => ({ ...visit, answers: { inUse: "bypassed" } }));
  expect((await readBack(card(bypassed, "en"))).text).toContain("is bypassed");
  expect(JSON.stringify(page(bypassed, "en"))).toContain("bypassed: the appliances get tap water");
});

it("tells each appliance's limits that are kept, broken and not measured, by name only", () => {
  for (const n of DEMO_UNITS) {
    const file = demoUnit(n);
    const { blocks } = page(file, "en");
    for (const { name, type } of file.appliances) {
      const block = blocks.find((one) => one.kind === "list" && one.title === name);
      expect(block?.kind === "list" && block.items).toContain(kitchenInLanguage("en").page.care[type!]);
    }
  }
});

it("asks for the tank's gauge only where there is one", () => {
  const file = demoUnit(1);
  const without = { ...file, unit: { ...file.unit, portsAbsent: ["tank" as const] } };
  const asks = kitchenInLanguage("en").card.readOut.gauge;
  expect(JSON.stringify(card(without, "en"))).not.toContain(asks);
  expect(JSON.stringify(card({ ...file, unit: { ...file.unit, portsAbsent: [] } }, "en"))).toContain(asks);
});
