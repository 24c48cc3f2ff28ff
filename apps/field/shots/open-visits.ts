import {
  bookOf,
  type Change,
  EMPTY_STATE,
  exportFile,
  type FieldValue,
  fold,
  importFile,
  sha256Hex,
  uuidV7,
} from "@tapside/records";
import { grey } from "../journeys/grey-png.ts";

type Fields = Readonly<Record<string, FieldValue>>;

/** A photo of nothing in particular: a pipe before a wall. */
const PHOTO = grey(480, (x, y) => x > 190 && x < 290 && (y % 120 < 96 || x > 206));

/**
 * What the demo book lacks so that every screen has something to say: an annual visit half way, a call-out just begun, a type of
 * appliance, a chain, a planned day, an analysis, a photo. `now` in ms since 1970.
 */
export function openVisits(demo: string, now: number): string {
  const content = importFile(demo);
  if (content.kind !== "known") throw new Error("the demo book cannot be read");
  const book = bookOf(fold(EMPTY_STATE, content.value.changes));
  const bytes = new Uint8Array(PHOTO);
  const photo = { hash: sha256Hex(bytes), mime: "image/png", bytes };
  const before = book.visit.get("demo:1:visit2")!;
  const ago = (minutes: number) => new Date(now - minutes * 60_000).toISOString();
  const readings = Object.fromEntries(
    Object.entries(before.readings.asFound).map(([slot, reading]) => [
      `reading:asFound:${slot}`,
      { ...reading, at: ago(20) } as unknown as FieldValue,
    ]),
  );
  const records: readonly (readonly [kind: string, id: string, fields: Fields])[] = [
    [
      "visit",
      "shots-annual",
      {
        unit: "demo:1:unit",
        point: "demo:1:point",
        kind: "annual",
        startedAt: ago(40),
        technician: "J. Orme",
        "answer:inUse": "inUse",
        "answer:inspection": "asItShouldBe",
        "answer:bypass": { name: "M. Teal", role: "kitchen lead", decision: "keepBypassed" },
        ...readings,
        "reading:asFound:airCharge": { raw: "9", value: 9, unit: "psi", port: "tank", at: ago(18) },
        "reading:asFound:hardness": { raw: "11", value: 11, unit: "gpg", port: "feed", at: ago(18) },
        "reading:asLeft:permeateTds": {
          raw: "",
          value: null,
          unit: "ppm",
          scale: "NaCl",
          port: "permeateToWaste",
          at: ago(4),
          photo: photo.hash,
        },
        "photo:one": { for: "leave", hash: photo.hash, at: ago(4) },
        "timer:drain": {
          what: "tankDraining",
          startedMs: now - 12 * 60_000,
          durationMs: 600_000,
          task: "sanitise",
        },
        "timer:waste": { what: "toWaste", startedMs: now - 60_000, durationMs: 900_000 },
        "timer:fill": { what: "filling", startedMs: now - 60_000, durationMs: 7_200_000 },
      },
    ],
    [
      "visit",
      "shots-fresh",
      {
        unit: "demo:40:unit",
        point: "demo:40:point",
        kind: "callOut",
        startedAt: ago(5),
        technician: "J. Orme",
        "answer:inUse": "inUse",
      },
    ],
    ["model", "shots-model", { name: "Combi oven, 6 trays", type: "combiOven", source: "oven label" }],
    [
      "limit",
      "shots-limit",
      { appliance: "shots-model", quantity: "tds", high: 100, unit: "ppm", source: "oven label" },
    ],
    [
      "site",
      "shots-site",
      {
        name: "Reed Bank infants",
        chain: "Larkmoor meals",
        code: "LM-61",
        askName: "R. Hale",
        key: "office",
        hours: "7 to 15",
      },
    ],
    ["point", "shots-point", { site: "shots-site", name: "Under the oven", where: "left of the sink" }],
    ["unit", "shots-unit", { point: "shots-point", name: "Unit 1" }],
    [
      "waterAnalysis",
      "shots-analysis",
      {
        site: "shots-site",
        origin: "laboratory",
        sampledOn: "2026-10-02",
        bottleCode: "RB-7",
        lines: [
          { name: "Alkalinity", unit: "mg/L CaCO3", mean: 140 },
          { name: "pH", unit: "", mean: 7.6 },
          { name: "Calcium", unit: "mg/L", mean: 61 },
          { name: "Chloride", unit: "mg/L", mean: 38 },
        ],
      },
    ],
    [
      "plan",
      "shots-plan-1",
      { unit: "demo:1:unit", on: "2026-12-01", at: "06:30", reason: "carbon by litres" },
    ],
    ["plan", "shots-plan-2", { unit: "demo:56:unit", on: "2026-12-01", at: "08:40" }],
    [
      "plan",
      "shots-plan-3",
      { unit: "demo:28:unit", on: "2026-12-01", at: "10:30", reason: "drain runs all night" },
    ],
  ];
  const changes = records.map(
    ([kind, record, fields], i): Change => ({
      id: uuidV7(now + i, new Uint8Array(10).fill(i + 1)),
      record,
      kind,
      fields,
      at: `${new Date(now + i).toISOString()}/0000`,
      device: "shots",
      schema: 1,
    }),
  );
  return exportFile({ changes, photos: [photo] });
}
