import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { CliIo } from "../command-verb.ts";
import { runCli } from "../run.ts";

/** Tables as people write them: what is in them decides, not how they are laid out. Values from `reference/small-ro-unit`, `reference/wide-ro-units`, `reference/composed-ro-units` and `reference/permeate-pump-units`. */
async function run(verb: string, csv: string) {
  const out: string[] = [];
  const complaints: string[] = [];
  const written: Record<string, string> = {};
  const io: CliIo = {
    readText: () => csv,
    readBytes: () => new Uint8Array(),
    writeText: (path, text) => {
      written[path] = text;
    },
    writeBytes: () => {},
    print: (line) => out.push(line),
    complain: (line) => complaints.push(line),
  };
  const code = await runCli([...verb.split(" "), "in.csv", "-o", "out.csv", "--json"], io);
  const { rows = [] } = JSON.parse(out.at(-1) ?? "{}") as { rows?: Row[] };
  return { code, rows, complaints, written: written["out.csv"] ?? "" };
}
type Row = Record<string, string | number>;

const reference = (name: string) => readFileSync(`reference/${name}.csv`, "utf8");
const split = (csv: string) =>
  csv
    .trim()
    .split(/\r?\n/)
    .map((line) => line.split(","));
const rowsOf = (csv: string): Record<string, string>[] => {
  const [names = [], ...lines] = split(csv);
  return lines.map((line) => Object.fromEntries(line.map((value, i) => [names[i]!, value])));
};
const table = (rows: readonly Record<string, string>[], columns: readonly string[], end = "\n") =>
  [columns.join(","), ...rows.map((row) => columns.map((name) => row[name] ?? "").join(","))].join(end);

const outputs = {
  unit: [
    "feed_L_h",
    "permeate_L_h",
    "permeate_mg_L",
    "concentrate_L_h",
    "concentrate_mg_L",
    "recovery",
    "rejection_percent",
  ],
  "unit fill": [
    "fill_time_h",
    "stored_L",
    "mean_permeate_mg_L",
    "drain_L",
    "efficiency",
    "recovery_at_start",
    "shutoff_kPa_gauge",
  ],
  "unit fit": ["A_L_m2_h_bar", "B_L_m2_h", "restrictor_L_h"],
} as const;
type Verb = keyof typeof outputs;
/** SOURCE.md of the folders: flows, volumes and times 0.2 %, concentrations 0.5 %; our `unit fit` inverts the same table. */
const tolerance = (column: string) => (/mg_L$|^B_/.test(column) ? 0.005 : 0.002);

function expectAgreement(verb: Verb, rows: readonly Row[], expected: readonly Record<string, string>[]) {
  expect(rows).toHaveLength(expected.length);
  rows.forEach((row, i) => {
    for (const column of outputs[verb]) {
      const off = Math.abs(Number(row[column]) / Number(expected[i]![column]) - 1);
      // Near osmotic equilibrium flow hardly answers to A; what counts there is that the arithmetic stays far below the stated uncertainty.
      const u = Number(row[`${column}_u`] ?? 0) / Number(row[column]);
      expect(off, `${expected[i]!.id} ${column}`).toBeLessThan(u > 0.1 ? 0.1 * u : tolerance(column));
    }
  });
}

const sources = [
  ["unit", "small-ro-unit/operating_points"],
  ["unit", "wide-ro-units/operating_points"],
  ["unit fill", "small-ro-unit/fillings"],
  ["unit fill", "wide-ro-units/fillings"],
  ["unit", "composed-ro-units/operating_points"],
  ["unit fill", "composed-ro-units/fillings"],
  ["unit", "permeate-pump-units/operating_points"],
  ["unit fill", "permeate-pump-units/fillings"],
  ["unit fit", "small-ro-unit/operating_points"],
  ["unit fit", "wide-ro-units/operating_points"],
  ["unit fit", "composed-ro-units/operating_points"],
] as const;

/** What a person has: the inputs only; for a fit, the readings without the constants it looks for. */
const inputsOf = (verb: Verb, names: readonly string[]) =>
  names.filter((name) => !(outputs[verb] as readonly string[]).includes(name));

describe.each(sources)("tapside %s on %s", (verb, name) => {
  const expected = rowsOf(reference(name));
  const inputs = inputsOf(verb, Object.keys(expected[0]!));
  it("gives the computed columns from the input columns", async () => {
    const { code, rows, complaints } = await run(verb, table(expected, inputs));
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    expectAgreement(verb, rows, expected);
  });
  it("is the same for any order of columns, columns of one's own, CRLF and a byte order mark", async () => {
    const mine = expected.map((row, i) => ({ ...row, note: `kitchen ${i}` }));
    const columns = ["note", ...[...inputs].reverse()];
    const { code, rows, written } = await run(verb, `\uFEFF${table(mine, columns, "\r\n")}\r\n`);
    expect(code).toBe(0);
    expectAgreement(verb, rows, expected);
    expect(rows.map((row) => row.note)).toEqual(mine.map((row) => row.note));
    expect(written.split("\n")[0]!.split(",").slice(0, columns.length)).toEqual(columns);
  });
  it("computes columns of its own names anew, whatever stands there", async () => {
    const wrong = Object.fromEntries(outputs[verb].map((column) => [column, "999"]));
    const all = [...inputs, ...outputs[verb]];
    const { rows } = await run(
      verb,
      table(
        expected.map((row) => ({ ...row, ...wrong })),
        all,
      ),
    );
    expectAgreement(verb, rows, expected);
  });
});

describe("blank cells", () => {
  const [row] = rowsOf(reference("small-ro-unit/operating_points"));
  const columns = inputsOf("unit", Object.keys(row!));
  const answer = async (changed: Record<string, string>) =>
    (await run("unit", table([{ ...row!, ...changed }], columns))).rows[0]!;
  it("take the stated default: no polarisation, 414 kPa (60 psi) at the restrictor, empty tank", async () => {
    for (const [name, standsFor] of [
      ["beta", "1"],
      ["restrictor_rated_kPa", "414"],
      ["tank_pressure_kPa_gauge", "0"],
    ] as const)
      expect((await answer({ [name]: "" })).permeate_L_h, name).toBe(
        (await answer({ [name]: standsFor })).permeate_L_h,
      );
  });
  it.each(["feed_pressure_kPa_gauge", "temperature_C", "feed_NaCl_mg_L", "area_m2", "restrictor_L_h"])(
    "cannot be guessed for %s: the row is refused by that name, the others are answered",
    async (name) => {
      const { code, rows, complaints } = await run("unit", table([{ ...row!, [name]: "" }, row!], columns));
      expect(code).toBe(1);
      expect(rows).toHaveLength(1);
      expect(complaints.join()).toMatch(new RegExp(`^row 2 refused: .*${name}`));
    },
  );
});

describe("rows that have no answer", () => {
  const [point] = rowsOf(reference("small-ro-unit/operating_points"));
  const [fill] = rowsOf(reference("small-ro-unit/fillings"));
  it.each([
    ["unit", point!, { feed_pressure_kPa_gauge: "four" }, /four/],
    ["unit", point!, { temperature_C: "-3" }, /0 and 45/],
    ["unit", point!, { feed_pressure_kPa_gauge: "0", tank_pressure_kPa_gauge: "0" }, /./],
    ["unit", point!, { tank_pressure_kPa_gauge: "900" }, /tank/i],
    ["unit", point!, { area_m2: "-1" }, /area_m2/],
    ["unit", point!, { restrictor_L_h: "0" }, /restrictor_L_h/],
    ["unit fill", fill!, { air_charge_kPa_gauge: "600" }, /charge/i],
    ["unit fill", fill!, { tank_L: "" }, /tank/i],
    ["unit fill", fill!, { shutoff_ratio: "1.2" }, /./],
    ["unit fit", point!, { permeate_L_h: "" }, /permeate_L_h/],
    ["unit fit", point!, { permeate_mg_L: "9999" }, /./],
  ] as const)(
    "%s: %#, refused with its reason, exit code 1, its row left out",
    async (verb, row, change, reason) => {
      const columns = verb === "unit fit" ? Object.keys(row) : inputsOf(verb, Object.keys(row));
      const { code, rows, complaints, written } = await run(
        verb,
        table([row, { ...row, ...change }], columns),
      );
      expect(code).toBe(1);
      expect(rows).toHaveLength(1);
      expect(written.trim().split("\n")).toHaveLength(2);
      expect(complaints.filter((line) => line.startsWith("row 3 refused: "))).toHaveLength(1);
      expect(complaints.join(" ")).toMatch(reason);
      expect(complaints.join(" ") + written).not.toMatch(/NaN|undefined|Infinity/);
    },
  );
});
