import type { Messages } from "./messages.ts";

/** What one language says of findings; which of it is said is decided once, for all languages. Numbers come as text. */
export interface FindingPhrases
  extends Pick<
    Messages,
    "decimalSign" | "verdicts" | "quantity" | "source" | "unit" | "missingName" | "refusal"
  > {
  /** Titles by the finding's id. */
  readonly titles: Readonly<Record<string, string>>;
  deliveredOf(quantity: string): string;
  /** A property against a published need of an appliance, and all its needs together. */
  needOf(property: string, appliance: string): string;
  needsOf(appliance: string): string;
  /** Needs that are kept, by name. */
  needsKept(names: string): string;
  readonly needCompleted: string;
  /** What a pattern of readings points to. */
  readonly patterns: Readonly<Record<string, string>>;
  readonly references: Readonly<Record<string, string>>;
  /** "a, b and c". */
  listed(names: readonly string[]): string;
  because(missing: readonly string[]): string;
  roOptional(notMeasured: string): string;
  readonly nobodyAsked: string;
  readonly backInUse: string;
  staysBypassed(until: string | number | undefined): string;
  /** Nothing can be read there, and what would have to be fitted. */
  noPort(ports: readonly string[]): string;
  leftOut(names: string): string;
  keptDoubtful(names: string): string;
  atMost(text: string): string;
  readonly remineralised: string;
  elementPasses(flow: string): string;
  usable(now: string, atBest: string | undefined): string;
  readonly waterlogged: string;
  readonly nearFull: string;
  /** The tank's water against the permeate to waste where the element does not feel the tank: too much, and as it should be. */
  readonly fillsFreely: Readonly<
    Record<"vented" | "pumped", { readonly outside: string; readonly normal: string }>
  >;
  tankRatioNormal(low: string, high: string): string;
  readonly judgeByFlow: string;
  /** A feed below the usual band that the booster makes up, and one it adds to; with the feed's pressure. */
  boosterMakesUp(feed: string): string;
  boosterAdds(feed: string): string;
  provisional(against: string): string;
  carbonPassed(times: string): string;
  carbonRange(low: string, high: string): string;
  scale(name: string): string;
  between(low: string, high: string): string;
  upTo(high: string): string;
  atLeast(low: string): string;
  less(minimum: string, less: string): string;
}
