import type { Finding } from "@tapside/assessment";
import type { DecimalSign, FindingWords, Messages } from "../messages.ts";
import { plainNumber } from "../plain-number.ts";
import { listed, missing, missingName, quantity, source, verdicts } from "./names.ts";
import { refusal } from "./refusals.ts";

type Detail = Readonly<Record<string, string | number>>;

const TITLES: Readonly<Record<string, string>> = {
  bypassed: "Bypassed",
  saltPassage: "Salt passage",
  membraneFlow: "Membrane flow",
  percentReduction: "Percent reduction",
  recovery: "Recovery",
  filterDrop: "Pre-filter drop",
  waterlogged: "Tank waterlogged",
  airCharge: "Air charge",
  chlorineAfterCarbon: "Chlorine after carbon",
  delivered: "Delivered",
  deliveredNoLimit: "Delivered",
  deliveredOverMembrane: "Tank against membrane",
  feedTds: "Feed water",
  roOptional: "RO is optional here",
  usableLitres: "Usable litres",
  shutOffPressure: "Expected shut-off",
  fillingHours: "Expected filling",
  carbonLeft: "Carbon left",
  feedPressure: "Feed pressure",
  drainFeedClosed: "Drain with feed closed",
  drainTankFull: "Drain with tank full",
  postFilterDrop: "Post-filter drop",
  deliveredFlow: "Delivered flow",
  firstDraw: "First draw",
  meterCheck: "Meter in standard solution",
  doubtful: "Doubtful readings",
};

/** What a pattern of readings points to. */
const PATTERNS: Readonly<Record<string, string>> = {
  oxidised: "more flow and more salt together: the pattern of an oxidised element",
  checkValve: "water comes back from the tank: the check valve leaks",
  shutOff: "it stops with the feed closed: the shut-off does not close",
  closeFeedToTell: "close the feed: if it goes on, the check valve leaks; if it stops, the shut-off",
};

const short = plainNumber;

/** A finding in words: what, verdict, why it cannot be told, and its limit with where that comes from. */
export const finding: Messages["finding"] = (one, sign = ".") => {
  const detail: Detail = one.detail ?? {};
  const [id, ofWhat] = one.id.split(":");
  const words: FindingWords = {
    title: ofWhat ? `Delivered ${quantity(ofWhat)}` : (TITLES[id ?? ""] ?? one.id),
    verdict: verdicts[one.verdict],
    reason: reasonOf(one, detail, sign),
    limit: limitText(one, sign),
    source: one.limit ? source(one.limit.source) : "",
  };
  return words;
};

function reasonOf(finding: Finding, detail: Detail, sign: DecimalSign): string {
  if (finding.id === "roOptional")
    return `at 100 ppm or less the owner decides; not measured: ${listed((finding.missing ?? []).map(quantity))}`;
  if (finding.id === "bypassed") {
    return detail.name
      ? `${detail.name}, ${detail.role}: ${detail.decision === "putInUse" ? "put back in use" : `stays bypassed until ${detail.until ?? "not said"}`}`
      : "nobody asked yet";
  }
  if (detail.why === "noPort") return "there is no gauge; a tee and a gauge would tell";
  if (typeof detail.doubtful === "string") return `${namesIn(detail.doubtful)} doubtful, left out`;
  if (finding.id === "doubtful") return `${namesIn(detail.slots)}: kept, left out of the judgement`;
  if (detail.why === "conductivity")
    return `not measured; at this conductivity ${short(Number(detail.atMost), sign)} at most`;
  if (finding.missing?.length) return becauseMissing(finding.missing);
  if (detail.why === "remineralised")
    return "a remineraliser or blend valve makes more delivered solids right";
  if (typeof detail.pattern === "string" && PATTERNS[detail.pattern])
    return `${PATTERNS[detail.pattern]}${elementPasses(detail, sign)}`;
  if (finding.verdict === "cannotTell" && typeof detail.code === "string")
    return refusal({ code: detail.code, detail });
  if (
    finding.id === "airCharge" &&
    typeof detail.usable === "number" &&
    typeof detail.usableAtBest === "number"
  ) {
    return `usable ${short(detail.usable, sign)} L; ${short(detail.usableAtBest, sign)} L at the best charge`;
  }
  if (finding.id === "waterlogged") return "less gas than the tank can hold: water on the air side";
  return usualReason(finding, detail, sign);
}

const elementPasses = ({ elementPasses: flow }: Detail, sign: DecimalSign): string =>
  typeof flow === "number"
    ? `; through the element alone about ${short(Number(flow.toPrecision(2)), sign)} L/min would come`
    : "";

const namesIn = (slots: string | number | undefined): string =>
  listed(
    String(slots ?? "")
      .split(" ")
      .map(missingName),
  );

const becauseMissing = (ids: readonly string[]): string =>
  missing({ kind: "missing", missing: ids }).replace(/^cannot tell, /, "");

const REFERENCES: Readonly<Record<string, string>> = {
  commissioning: "against its commissioning",
  firstVisit: "against its first visit",
  nameplate: "against the nameplate",
};

function usualReason(finding: Finding, detail: Detail, sign: DecimalSign): string {
  switch (finding.id) {
    case "carbonLeft":
      return carbonReason(detail, sign);
    case "deliveredOverMembrane":
      return finding.verdict === "outside"
        ? "tank kept near full, or feed gets past"
        : "1.4 to 1.8 is normal: the tank fills against pressure".replaceAll(".", sign);
    case "feedPressure":
      return finding.verdict === "outside" ? "judge by flow: many good sites run lower" : "";
    default: {
      const against = REFERENCES[String(detail.reference)] ?? "";
      return detail.provisional === "yes" ? `${against}, provisional` : against;
    }
  }
}

function carbonReason({ usedShare, lowM3, highM3 }: Detail, sign: DecimalSign): string {
  if (typeof usedShare === "number" && usedShare > 1)
    return `${short(Number(usedShare.toPrecision(2)), sign)} × its rated litres have passed at this chlorine`;
  if (typeof lowM3 !== "number" || typeof highM3 !== "number") return "";
  return `${Math.max(0, lowM3).toFixed(0)} to ${Math.max(0, highM3).toFixed(0)} m³, by chlorine and rating`;
}

/** "16 to 20 psi: appliance label 20, less 2". */
function limitText(finding: Finding, sign: DecimalSign): string {
  const { limit } = finding;
  if (!limit) return "";
  const unit = [limit.unit, limit.scale && `scale ${limit.scale}`].filter(Boolean).join(", ");
  const range =
    limit.low !== undefined && limit.high !== undefined
      ? `${short(limit.low, sign)} to ${short(limit.high, sign)}`
      : limit.high !== undefined
        ? `up to ${short(limit.high, sign)}`
        : `at least ${short(limit.low ?? 0, sign)}`;
  const own = limit.detail ?? {};
  const label = typeof own.appliance === "string" && own.appliance ? `${own.appliance}: ` : "";
  const from = typeof own.label === "string" ? own.label : source(limit.source);
  const minimum =
    typeof own.minimum === "number"
      ? ` ${short(own.minimum, sign)}, less ${short(Number(own.less), sign)}`
      : "";
  return `${range} ${unit}: ${label}${from}${minimum}`.replace("  ", " ");
}
