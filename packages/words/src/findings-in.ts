import type { Finding } from "@tapside/assessment";
import type { FindingPhrases } from "./finding-phrases.ts";
import type { DecimalSign, Messages } from "./messages.ts";
import { plainNumber as short } from "./plain-number.ts";

type Detail = Readonly<Record<string, string | number>>;

/** A finding in the words of one language: what, verdict, why it cannot be told, and its limit with where that comes from. */
export const findingsIn =
  (say: FindingPhrases): Messages["finding"] =>
  (finding, sign = say.decimalSign) => {
    const [id, ofWhat] = finding.id.split(":");
    return {
      title: titleOf(say, finding, id, ofWhat),
      verdict: say.verdicts[finding.verdict],
      reason: reasonOf(say, finding, sign),
      limit: limitText(say, finding, sign),
      source: finding.limit ? say.source(finding.limit.source) : "",
    };
  };

function titleOf(say: FindingPhrases, finding: Finding, id: string | undefined, ofWhat: string | undefined) {
  const appliance = String(finding.detail?.appliance ?? "");
  if (id === "needs" || id === "needsOpen") return say.needsOf(appliance);
  if (id === "need" && ofWhat) return say.needOf(say.quantity(ofWhat), appliance);
  return ofWhat ? say.deliveredOf(say.quantity(ofWhat)) : (say.titles[id ?? ""] ?? finding.id);
}

function reasonOf(say: FindingPhrases, finding: Finding, sign: DecimalSign): string {
  const detail: Detail = finding.detail ?? {};
  if (finding.id === "roOptional")
    return say.roOptional(say.listed((finding.missing ?? []).map(say.quantity)));
  if (finding.id === "bypassed") return bypassReason(say, detail);
  if (detail.why === "noPort")
    return `${say.because(finding.missing ?? [])}; ${say.noPort(String(detail.fit ?? "").split(" "))}`;
  if (typeof detail.doubtful === "string") return say.leftOut(namesIn(say, detail.doubtful));
  if (finding.id === "doubtful") return say.keptDoubtful(namesIn(say, detail.slots));
  if (typeof detail.kept === "string") return say.needsKept(quantitiesIn(say, detail.kept));
  if (detail.why === "completed") return say.needCompleted;
  if (detail.why === "conductivity") return say.atMost(short(Number(detail.atMost), sign));
  if (finding.missing?.length) return say.because(finding.missing);
  if (detail.why === "remineralised") return say.remineralised;
  const pattern = say.patterns[detail.pattern ?? ""];
  if (pattern) return `${pattern}${elementPasses(say, detail, sign)}`;
  if (finding.verdict === "cannotTell" && typeof detail.code === "string")
    return say.refusal({ code: detail.code, detail });
  return usualReason(say, finding, sign);
}

const bypassReason = (say: FindingPhrases, { name, role, decision, until }: Detail): string =>
  name
    ? `${name}, ${role}: ${decision === "putInUse" ? say.backInUse : say.staysBypassed(until)}`
    : say.nobodyAsked;

/** Two figures: no more than a tank, a flow or a cartridge is known to. */
const twoFigures = (value: number, sign: DecimalSign): string => short(Number(value.toPrecision(2)), sign);

const elementPasses = (say: FindingPhrases, { elementPasses: flow }: Detail, sign: DecimalSign): string =>
  typeof flow === "number" ? say.elementPasses(twoFigures(flow, sign)) : "";

const namesIn = (say: FindingPhrases, slots: string | number | undefined): string =>
  say.listed(
    String(slots ?? "")
      .split(" ")
      .map(say.missingName),
  );

const quantitiesIn = (say: FindingPhrases, ids: string): string =>
  say.listed(ids.split(" ").map(say.quantity));

function usualReason(say: FindingPhrases, finding: Finding, sign: DecimalSign): string {
  const detail: Detail = finding.detail ?? {};
  const { usable, usableAtBest } = detail;
  if (finding.id === "airCharge" && typeof usable === "number")
    return say.usable(
      twoFigures(usable, sign),
      typeof usableAtBest === "number" ? twoFigures(usableAtBest, sign) : undefined,
    );
  switch (finding.id) {
    case "waterlogged":
      return say.waterlogged;
    case "carbonLeft":
      return carbonReason(say, detail, sign);
    case "deliveredOverMembrane":
      if (detail.tank === "vented" || detail.tank === "pumped")
        return say.fillsFreely[detail.tank][finding.verdict === "outside" ? "outside" : "normal"];
      return finding.verdict === "outside"
        ? say.nearFull
        : say.tankRatioNormal(short(1.4, sign), short(1.8, sign));
    case "feedPressure":
      return finding.verdict === "outside" ? say.judgeByFlow : "";
    case "boostedPressure":
      return boostedReason(say, finding, sign);
    default: {
      const against = say.references[String(detail.reference)] ?? "";
      return detail.provisional === "yes" ? say.provisional(against) : against;
    }
  }
}

function boostedReason(say: FindingPhrases, { verdict, detail = {} }: Finding, sign: DecimalSign): string {
  const { feed, unit, feedIs } = detail;
  if (typeof feed !== "number") return "";
  const text = `${short(Math.round(feed * 10) / 10, sign)} ${say.unit(String(unit))}`;
  return feedIs === "below" && verdict === "within" ? say.boosterMakesUp(text) : say.boosterAdds(text);
}

function carbonReason(say: FindingPhrases, { usedShare, lowM3, highM3 }: Detail, sign: DecimalSign): string {
  if (typeof usedShare === "number" && usedShare > 1) return say.carbonPassed(twoFigures(usedShare, sign));
  if (typeof lowM3 !== "number" || typeof highM3 !== "number") return "";
  return say.carbonRange(Math.max(0, lowM3).toFixed(0), Math.max(0, highM3).toFixed(0));
}

/** "16 to 20 psi: appliance label 20, less 2". */
function limitText(say: FindingPhrases, { limit }: Finding, sign: DecimalSign): string {
  if (!limit) return "";
  const own = limit.detail ?? {};
  const unit = [say.unit(limit.unit), limit.scale && say.scale(limit.scale)].filter(Boolean).join(", ");
  const label = typeof own.appliance === "string" && own.appliance ? `${own.appliance}: ` : "";
  const from = typeof own.label === "string" ? own.label : say.source(limit.source);
  const minimum =
    typeof own.minimum === "number"
      ? ` ${say.less(short(own.minimum, sign), short(Number(own.less), sign))}`
      : "";
  return `${rangeText(say, limit, sign)} ${unit}: ${label}${from}${minimum}`.replace("  ", " ");
}

function rangeText(say: FindingPhrases, { low, high }: NonNullable<Finding["limit"]>, sign: DecimalSign) {
  if (high === undefined) return say.atLeast(short(low ?? 0, sign));
  return low === undefined ? say.upTo(short(high, sign)) : say.between(short(low, sign), short(high, sign));
}
