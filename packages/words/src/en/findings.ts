import type { Finding } from "@tapside/assessment";
import type { DecimalSign, FindingWords } from "../messages.ts";
import { plainNumber } from "../plain-number.ts";
import { listed, missingName, quantity, source, unit, verdicts } from "./names.ts";
import { refusal } from "./refusals.ts";

const TITLES: Readonly<Record<string, string>> = {
  bypassed: "Bypassed",
  chlorineAfterCarbon: "Chlorine after carbon",
  saltPassage: "Salt passage",
  membraneFlow: "Membrane flow",
  percentReduction: "Reduction",
  recovery: "Recovery",
  filterDrop: "Pre-filter drop",
  airCharge: "Air charge",
  waterlogged: "Tank holds water in its air",
  delivered: "Delivered",
  deliveredNoLimit: "Delivered, no limit given",
  deliveredOverMembrane: "Delivered against membrane",
  feedTds: "Feed water",
  roOptional: "RO is optional here",
  usableLitres: "Usable water",
  shutOffPressure: "Shut-off expected at",
  fillingHours: "Filling time",
  carbonLeft: "Carbon left",
  feedPressure: "Feed pressure",
};

/** A finding in words. */
export function finding(one: Finding, decimalSign: DecimalSign = "."): FindingWords {
  return {
    title: title(one),
    verdict: verdicts[one.verdict],
    limit: limitWords(one, decimalSign),
    source: one.limit ? sourceWords(one, decimalSign) : "",
    reason: reason(one, decimalSign),
  };
}

function title(one: Finding): string {
  const known = TITLES[one.id];
  if (known) return known;
  const [stem, what] = one.id.split(":");
  return what ? `${TITLES[stem!] ?? stem}, ${quantity(what)}` : one.id;
}

function limitWords(one: Finding, sign: DecimalSign): string {
  const { limit } = one;
  if (!limit || (limit.low === undefined && limit.high === undefined)) return "";
  const number = (x: number) => plainNumber(x, sign);
  const scale = limit.scale ? `, scale ${limit.scale}` : "";
  const other = one.figure && one.figure.unit !== limit.unit ? ` ${unit(limit.unit)}` : "";
  return `${range(limit.low, limit.high, number)}${other}${scale}: ${sourceWords(one, sign)}`;
}

function range(low: number | undefined, high: number | undefined, number: (x: number) => string): string {
  if (low !== undefined && high !== undefined) return `${number(low)} to ${number(high)}`;
  return low !== undefined ? `at least ${number(low)}` : `up to ${number(high!)}`;
}

function sourceWords(one: Finding, sign: DecimalSign): string {
  const { source: id, detail } = one.limit!;
  if (id !== "applianceLabel") return source(id);
  if (typeof detail?.minimum === "number" && typeof detail.less === "number")
    return `appliance label ${plainNumber(detail.minimum, sign)}, less ${plainNumber(detail.less, sign)}`;
  return detail?.appliance ? `${detail.appliance} label` : source(id);
}

function reason(one: Finding, sign: DecimalSign): string {
  if (one.verdict === "cannotTell") return cannotTell(one);
  const { detail = {}, verdict } = one;
  const number = (x: string | number | undefined) =>
    typeof x === "number" ? plainNumber(x, sign) : String(x ?? "");
  switch (one.id) {
    case "bypassed":
      return detail.name
        ? `agreed with ${detail.name}, ${detail.role}${detail.until ? `, until ${detail.until}` : ""}`
        : "ask who agreed";
    case "roOptional":
      return one.missing?.length ? `not measured: ${listed(one.missing.map(missingName))}` : "";
    case "waterlogged":
      return "less gas than an uncharged tank holds";
    case "airCharge":
      return detail.usableAtBest === undefined || verdict !== "outside"
        ? ""
        : `set ${number(detail.set)}: ${litres(detail.usable)} becomes ${litres(detail.usableAtBest)} L`;
    case "membraneFlow":
    case "saltPassage":
      return elementReason(one);
    case "carbonLeft":
      return carbonReason(one, sign);
    case "deliveredOverMembrane":
      if (detail.why === "remineralised") return "minerals or blend added on purpose";
      return verdict === "outside"
        ? "tank always near full, or feed gets past"
        : "1.4 to 1.8 is normal: fills against pressure";
    case "feedPressure":
      return verdict === "outside" ? "judge by flow; many good sites run lower" : "";
    default:
      return one.figure?.converted ? `converted to scale ${one.figure.scale}` : "";
  }
}

const litres = (x: string | number | undefined): string => (typeof x === "number" ? x.toFixed(0) : "?");

const REFERENCES: Readonly<Record<string, string>> = {
  commissioning: "against its commissioning",
  firstVisit: "against its first visit",
  nameplate: "against the nameplate",
};

function elementReason({ detail = {}, verdict }: Finding): string {
  if (detail.pattern === "oxidised" && verdict === "outside") return "more flow and more salt: oxidised";
  const text = REFERENCES[String(detail.reference)] ?? "";
  return detail.provisional === "yes" && text ? `${text}, provisional` : text;
}

function carbonReason({ detail = {} }: Finding, sign: DecimalSign): string {
  const { usedShare, lowM3, highM3 } = detail;
  if (typeof usedShare === "number" && usedShare > 1)
    return `${plainNumber(Number(usedShare.toPrecision(2)), sign)} × what it is rated for has passed`;
  if (typeof lowM3 !== "number" || typeof highM3 !== "number") return "";
  return `${Math.max(0, lowM3).toFixed(0)} to ${Math.max(0, highM3).toFixed(0)} m³, by chlorine and rating`;
}

function cannotTell(one: Finding): string {
  if (one.detail?.why === "noPort") return "there is no gauge; a tee and a gauge would tell";
  if (one.missing?.length)
    return `because ${listed(one.missing.map(missingName))} ${one.missing.length > 1 ? "are" : "is"} missing`;
  return one.detail?.code ? refusal({ code: String(one.detail.code), detail: one.detail }) : "";
}
