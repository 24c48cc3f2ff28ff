import type { Outcome } from "@tapside/quantities";
import { sayWhyNot } from "../words/say-why-not.ts";

/** Why a figure is not there; empty when it is. */
export const whyNot = (outcome: Outcome<unknown>): string =>
  outcome.kind === "known" ? "" : sayWhyNot(outcome);
