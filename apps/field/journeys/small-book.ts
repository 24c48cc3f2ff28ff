import type { FieldValue } from "@tapside/records";
import type { Page } from "playwright";
import { bookText, type KeptRecord } from "../../../packages/records/src/testing/book-text.ts";

type Fields = Readonly<Record<string, FieldValue>>;

/** Nameplate, tank and shut-off of the unit of these journeys. */
export const PLATE: Fields = {
  ratedPermeateLPerH: 31.8,
  ratedRejectLPerH: 60,
  ratedRejectionPercent: 94.3,
  testPressureKPaGauge: 414,
  testTemperatureC: 25,
  testFeedMgPerL: 500,
  tankL: 53,
  shutOffRatio: 0.64,
};

const RECORDS: readonly KeptRecord[] = [
  ["settings", "settings", { technician: "J. Orme" }],
  ["site", "site", { name: "Reed Bank infants", askName: "R. Hale", askRole: "kitchen lead" }],
  ["point", "point", { site: "site", name: "Under the oven" }],
  [
    "unit",
    "unit",
    {
      point: "point",
      name: "Unit 1",
      ...PLATE,
    },
  ],
  ["appliance", "oven", { point: "point", name: "Combi oven", minimumPressureKPaGauge: 138 }],
  [
    "instrument",
    "meter",
    { name: "Meter 7", kind: "tds", unit: "ppm", scale: "442", accuracyPercentOfReading: 2, resolution: 1 },
  ],
];

/** A book of one kitchen as an exported file, so that a journey begins at the visit. `unit` overrides fields of the unit; `more` are records beside. */
export const smallBook = (unit: Fields = {}, more: readonly KeptRecord[] = []): string =>
  bookText(
    [...RECORDS, ...more].map(
      ([kind, id, fields]) => [kind, id, kind === "unit" ? { ...fields, ...unit } : fields] as const,
    ),
  );

/** Takes a file in through the screen. */
export async function takeIn(page: Page, text: string) {
  await page.goto(`${new URL("#/more", page.url())}`);
  await page
    .getByLabel("Import a file")
    .last()
    .setInputFiles({ name: "book.json", mimeType: "application/json", buffer: Buffer.from(text) });
  await page.getByText("taken in").waitFor();
}
