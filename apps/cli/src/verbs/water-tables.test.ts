import { describe, expect, it } from "vitest";
import type { CliIo } from "../command-verb.ts";
import { runCli } from "../run.ts";

/** Tables as people write them: what is in them decides, not how they are laid out. No source but the reference rows. */
async function run(args: readonly string[], csv: string) {
  const out: string[] = [];
  const complaints: string[] = [];
  const io: CliIo = {
    readText: () => csv,
    readBytes: () => new Uint8Array(),
    writeText: () => {},
    writeBytes: () => {},
    print: (line) => out.push(line),
    complain: (line) => complaints.push(line),
  };
  const code = await runCli([...args, "in.csv", "--json"], io);
  const { rows } = JSON.parse(out.at(-1)!) as { rows: Record<string, string | number>[] };
  return { code, rows, complaints };
}

/** Case O06 of `reference/water-cases/open.csv`: SI calcite 0.3264. */
const O06 = {
  T_C: "25",
  pH: "7.26",
  Alk_CaCO3_mg: "310.7",
  Ca_mg: "103.43",
  Mg_mg: "24.48",
  Na_mg: "41.95",
  K_mg: "3.87",
  Cl_mg: "49.16",
  SO4_mg: "57.07",
  NO3_mg: "18.38",
  F_mg: "0.376",
  SiO2_mg: "12.34",
};
const table = (rows: readonly Record<string, string>[], columns = Object.keys(rows[0]!)) =>
  [columns.join(","), ...rows.map((row) => columns.map((column) => row[column] ?? "").join(","))].join(
    "\r\n",
  );

describe("a table of waters", () => {
  it("answers the same whatever the order of its columns, with columns of its own kept", async () => {
    const turned = [...Object.keys(O06).reverse(), "note"];
    const { code, rows } = await run(["water"], table([{ ...O06, note: "well 3" }], turned));
    expect(code).toBe(0);
    expect(Math.abs(Number(rows[0]!.SI_calcite) - 0.3264)).toBeLessThan(0.003);
    expect(rows[0]!.note).toBe("well 3");
  });
  it("takes zeros and blanks of ions as none, and never writes NaN", async () => {
    const bare = { ...O06, Ca_mg: "0", F_mg: "", SiO2_mg: "0" };
    const { code, rows } = await run(["water"], table([bare]));
    expect(code).toBe(0);
    expect(rows[0]!.SI_calcite).toBe("");
    expect(JSON.stringify(rows)).not.toMatch(/NaN|null|Infinity/);
  });
  it.each([
    ["hydroxide above the alkalinity", { pH: "12", Alk_CaCO3_mg: "50" }, /hydroxide alone/],
    ["a negative ion", { Na_mg: "-4" }, /Na is below zero/],
    ["a pH that is none", { pH: "17" }, /pH 17/],
    ["a word for a number", { Ca_mg: "some" }, /not a number/],
    ["no alkalinity", { Alk_CaCO3_mg: "" }, /Alk_CaCO3_mg/],
  ])("refuses %s by name, answers the rest and ends with 1", async (_, change, said) => {
    const { code, rows, complaints } = await run(["water"], table([O06, { ...O06, ...change }]));
    expect(code).toBe(1);
    expect(rows).toHaveLength(1);
    expect(complaints.join()).toMatch(/row 3/);
    expect(complaints.join()).toMatch(said);
  });
  it.each([["heat"], ["degas"]])("water %s refuses the impossible and answers the rest too", async (verb) => {
    const { code, rows } = await run(["water", verb], table([O06, { ...O06, pH: "12", Alk_CaCO3_mg: "9" }]));
    expect(code).toBe(1);
    expect(rows).toHaveLength(1);
  });
});

describe("completing", () => {
  const columns = ["T_C", "pH", "EC25_uScm", "hardness_CaCO3_mg", "TDS_mg", "Alk_CaCO3_mg", "Cl_mg"];
  const given = {
    EC25_uScm: "838",
    hardness_CaCO3_mg: "359",
    TDS_mg: "510",
    Alk_CaCO3_mg: "311",
    Cl_mg: "49",
  };
  it.each(Object.keys(given))(
    "answers from %s alone, a wider water than from all of them",
    async (column) => {
      const alone = { [column]: given[column as keyof typeof given] };
      const { code, rows } = await run(["water", "complete"], table([alone, given], columns));
      expect(code).toBe(0);
      const width = (row: Record<string, string | number>) =>
        Number(row.SI_calcite_90_p95) - Number(row.SI_calcite_90_p05);
      expect(width(rows[0]!)).toBeGreaterThan(width(rows[1]!));
    },
  );
  it("leaves a source of its prior out when asked, and refuses one it does not know", async () => {
    const row = (without_source: string) => ({ ...given, without_source });
    const { code, rows } = await run(
      ["water", "complete"],
      table([row(""), row("USGS-INL"), row("Atlantis")]),
    );
    expect(code).toBe(1);
    expect(rows[0]!.Na_mg_p50).not.toBe(rows[1]!.Na_mg_p50);
  });
});

describe("a report", () => {
  it("is told by bottle; a figure below zero is refused by name", async () => {
    const { code, rows, complaints } = await run(
      ["water", "analysis"],
      "bottle,parameter,result,unit\nA1,Calcium,61,mg/L\nA1,pH,7.5,\nB2,Calcium,-5,mg/L\nB2,pH,7,",
    );
    expect(code).toBe(1);
    expect(rows.map((row) => row.bottle)).toEqual(["A1"]);
    expect(complaints.join()).toMatch(/B2.*Calcium is below zero/);
  });
});

describe("one blend for the appliances of a site", () => {
  const feed = { T_C: "15", feed_pH: "7.5", feed_Alk_CaCO3_mg: "140", feed_Ca_mg: "61", feed_Cl_mg: "105" };
  const permeate = { perm_pH: "6", perm_Alk_CaCO3_mg: "8", perm_Ca_mg: "2", perm_Cl_mg: "5" };
  const blank = Object.fromEntries(Object.keys({ ...feed, ...permeate }).map((name) => [name, ""]));
  const oven = { site: "A", appliance: "oven", use: "cold", limit_Cl_mg: "25.1" };
  const brewer = { site: "A", appliance: "jug", use: "cold", limit_Cl_mg: "15.1" };
  it("is the least of them: chloride 5 + 100 f (mass balance), 15.1 mg/L at 10 %; a water may stand in one row", async () => {
    const { code, rows } = await run(
      ["water", "blend"],
      table([
        { ...oven, ...feed, ...permeate },
        { ...brewer, ...blank },
      ]),
    );
    expect(code).toBe(0);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ site: "A", appliances: "oven; jug", blend_low: 0, blend_high: 0.1 });
    expect(rows[0]!.by_limit).toContain("oven chloride ..25.1 mg/L: 0..0.2");
  });
  it("says ion by ion why none does", async () => {
    const { rows } = await run(
      ["water", "blend"],
      table([
        { ...oven, limit_Cl_mg: "1", ...feed, ...permeate },
        { ...brewer, ...blank },
      ]),
    );
    expect(rows[0]!.why_none).toContain("chloride ..1 mg/L");
  });
  const quoted = (text: string) => `"${text}"`;
  /** The same figure as an office's table program and as another program writes it. */
  it.each([
    ["61,5", "61.5"],
    [" 61.50 ", "61,5"],
    ["6.15e1", "61,50"],
  ])("takes '%s' and '%s' in rows of one site for one figure", async (one, other) => {
    const { code, rows } = await run(
      ["water", "blend"],
      table([
        { ...oven, ...feed, ...permeate, feed_Ca_mg: quoted(one) },
        { ...brewer, ...blank, feed_Ca_mg: quoted(other) },
      ]),
    );
    expect(code).toBe(0);
    expect(rows[0]).toMatchObject({ blend_low: 0, blend_high: 0.1 });
  });
  it("refuses another figure in the other row, decimal comma or not", async () => {
    const { code, complaints } = await run(
      ["water", "blend"],
      table([
        { ...oven, ...feed, ...permeate, feed_Ca_mg: quoted("61,5") },
        { ...brewer, ...blank, feed_Ca_mg: "61.6" },
      ]),
    );
    expect(code).toBe(1);
    expect(complaints.join()).toMatch(/feed_Ca_mg differs/);
  });
  it("refuses two waters at one valve", async () => {
    const { code, complaints } = await run(
      ["water", "blend"],
      table([
        { ...oven, ...feed, ...permeate },
        { ...brewer, ...feed, ...permeate, feed_Cl_mg: "90" },
      ]),
    );
    expect(code).toBe(1);
    expect(complaints.join()).toMatch(/feed_Cl_mg differs/);
  });
});
