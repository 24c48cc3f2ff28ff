import { known, type Outcome, refused } from "@tapside/quantities";
import { CHARGE, type ConstituentId, MOLAR_MASS } from "./analysis.ts";
import { HARDNESS_UNIT_MG_PER_L_CACO3, type HardnessUnit } from "./hardness.ts";

/** What a report may hold, by our own ids. */
export type ReportedId =
  | ConstituentId
  | "Alk"
  | "hardness"
  | "pH"
  | "temperatureC"
  | "ec25"
  | "tds"
  | "totalChlorine";

const NAMES: readonly (readonly [ReportedId, RegExp])[] = [
  ["Ca", /^(ca|calcium)\b/],
  ["Mg", /^(mg|magnesium)\b/],
  ["Na", /^(na|sodium)\b/],
  ["K", /^(k|potassium)\b/],
  ["totalChlorine", /^(total chlorine|chlorine|residual chlorine|chloramines?|free chlorine|cl2)\b/],
  ["Cl", /^(cl|chloride)\b/],
  ["SO4", /^(so4|sulfate|sulphate)\b/],
  ["NO3", /^(no3|nitrate)\b/],
  ["F", /^(f|fluoride)\b/],
  ["SiO2", /^(sio2|si|silica|silicon)\b/],
  ["Alk", /^(alk|alkalinity|total alkalinity|hco3|bicarbonate|acid capacity)\b/],
  ["hardness", /^(hardness|total hardness)\b/],
  ["pH", /^ph\b/],
  ["temperatureC", /^(t|temp|temperature)\b/],
  ["ec25", /^(ec|ec25|conductivity|specific conductance|electrical conductivity)\b/],
  ["tds", /^(tds|total dissolved solids|dissolved solids|residue)\b/],
];

/** The quantity a name in a report means, or undefined. */
export function reportedId(name: string): ReportedId | undefined {
  const plain = name
    .trim()
    .toLowerCase()
    .replaceAll(/[_,]+/g, " ")
    .replaceAll("₄", "4")
    .replaceAll("₃", "3")
    .replaceAll("₂", "2");
  return NAMES.find(([, pattern]) => pattern.test(plain))?.[0];
}

const tidy = (unit: string) =>
  unit
    .trim()
    .replaceAll("₃", "3")
    .replaceAll("₂", "2")
    .replaceAll("₄", "4")
    .replace(/^ppm/i, "mg/L")
    .replace(/^(µ|μ|u)g\/L/i, "ug/L")
    .replace(/^ppb/i, "ug/L")
    .replace(/^mg\/l/i, "mg/L");

/** mg/L of the quantity itself in one mg/L "as" something else. */
const AS: readonly (readonly [RegExp, (id: ReportedId) => number | undefined])[] = [
  [
    /caco3/i,
    (id) => (id === "Alk" || id === "hardness" ? 1 : isIon(id) ? equivalentMass(id) / 50.05 : undefined),
  ],
  [/\b(as |-)?n$/i, (id) => (id === "NO3" ? MOLAR_MASS.NO3 / 14.0067 : undefined)],
  [/\bas no3$/i, (id) => (id === "NO3" ? 1 : undefined)],
  [/\bas sio2$/i, (id) => (id === "SiO2" ? 1 : undefined)],
  [/\bas si$/i, (id) => (id === "SiO2" ? MOLAR_MASS.SiO2 / 28.0855 : undefined)],
  [/\bas hco3$/i, (id) => (id === "Alk" ? 50.05 / 61.017 : undefined)],
];

const isIon = (id: ReportedId): id is ConstituentId => id in CHARGE && id !== "SiO2";
const equivalentMass = (id: ConstituentId) => MOLAR_MASS[id] / Math.abs(CHARGE[id]);

/** Factor from the unit of a report to ours: mg/L as the ion, alkalinity and hardness as CaCO3, µS/cm, °C. */
function factorOf(id: ReportedId, unit: string, name: string): number | undefined {
  const text = tidy(unit);
  if (id === "pH") return 1;
  if (id === "ec25")
    return /^m?S\/m$/.test(text) ? (text === "mS/m" ? 10 : 1e4) : /^mS/.test(text) ? 1000 : 1;
  if (id === "hardness" || id === "Alk") {
    const degree = text.replace(/^°/, "") as HardnessUnit;
    if (degree in HARDNESS_UNIT_MG_PER_L_CACO3 && degree !== "mmol/L")
      return HARDNESS_UNIT_MG_PER_L_CACO3[degree];
    if (/^mmol\/l/i.test(text)) return id === "hardness" ? 100.09 : 50.05;
  }
  const small = /^ug\/L/i.test(text) ? 0.001 : 1;
  if (/^meq\/l/i.test(text))
    return id === "Alk" || id === "hardness" ? 50.05 : isIon(id) ? equivalentMass(id) : undefined;
  if (/^mmol\/l/i.test(text)) return id in MOLAR_MASS ? MOLAR_MASS[id as ConstituentId] : undefined;
  if (text !== "" && !/^(mg|ug)\/L|^gpg/i.test(text)) return undefined;
  if (/^gpg/i.test(text)) return isIon(id) ? (17.118 * equivalentMass(id)) / 50.05 : undefined;
  const as = AS.find(([pattern]) => pattern.test(text) || pattern.test(name.trim()));
  const bicarbonate = id === "Alk" && /^(hco3|bicarbonate)/i.test(name.trim()) ? 50.05 / 61.017 : 1;
  const silicon = id === "SiO2" && /^(si|silicon)$/i.test(name.trim()) ? MOLAR_MASS.SiO2 / 28.0855 : 1;
  return small * (as?.[1](id) ?? bicarbonate * silicon);
}

/**
 * A figure of a report in our own units: mg/L as the ion, silica as SiO2, nitrate as NO3, alkalinity and hardness as
 * CaCO3, µS/cm. What the unit or the name says ("as CaCO3", "as N", "µg/L", "gpg", "meq/L", "°F") is followed.
 *
 * Source: definitions of the units and molar masses. Range: what water reports print. Error: none of its own.
 *
 * @example
 * ```ts
 * import { reportedAmount } from "@tapside/water";
 * reportedAmount("NO3", 4, "mg/L as N", "Nitrate").value; // => 17.71
 * reportedAmount("Ca", 250, "mg/L as CaCO3", "Calcium").value; // => 100.1
 * ```
 */
export function reportedAmount(
  id: ReportedId,
  value: number,
  unit: string,
  name: string = id,
): Outcome<number> {
  if (id === "temperatureC") return known(/^°?f$/i.test(unit.trim()) ? (value - 32) / 1.8 : value);
  const factor = factorOf(id, unit, name);
  return factor === undefined
    ? refused("report-unit-unknown", { quantity: name, unit })
    : known(value * factor);
}
