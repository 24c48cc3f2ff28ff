import { expect, it } from "vitest";
import { waterCompleteVerb } from "./water-complete.ts";

/** Case O06 of `reference/water-cases/open.csv`, which the completion has never seen. */
const row = { T_C: "25", pH: "7.26", EC25_uScm: "838.2", hardness_CaCO3_mg: "359.1", Alk_CaCO3_mg: "310.7" };

it("covers a hard water's ions from five readings", () => {
  const answer = waterCompleteVerb.row(row);
  if (answer.kind !== "known") throw new Error(JSON.stringify(answer));
  const truth = { Ca_mg: 103.43, Mg_mg: 24.48, Na_mg: 41.95, Cl_mg: 49.16, SO4_mg: 57.07, NO3_mg: 18.38 };
  for (const [column, value] of Object.entries(truth)) {
    expect(Number(answer.value[`${column}_p05`]), column).toBeLessThan(value);
    expect(Number(answer.value[`${column}_p95`]), column).toBeGreaterThan(value);
  }
  expect(Object.keys(answer.value)).toEqual([...waterCompleteVerb.columns]);
});

/** SI moves by one for each unit of pH (definition of the index). */
it("names the column of the reading that would narrow the index most", () => {
  const { pH: _, ...rest } = row;
  expect(waterCompleteVerb.row(rest)).toMatchObject({ value: { next_reading: "pH" } });
  expect(waterCompleteVerb.row(row)).toMatchObject({ value: { next_reading: "Ca_mg" } });
});

it("asks for something to go by", () => {
  expect(waterCompleteVerb.row({ T_C: "" }).kind).toBe("missing");
});
