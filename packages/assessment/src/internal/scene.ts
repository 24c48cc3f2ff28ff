import type { Outcome } from "@tapside/quantities";
import type { Phase, UnitFile } from "@tapside/records";
import type { Context, Figure, Figures, Finding } from "../assessment.ts";
import type { PhaseReadings } from "./amounts.ts";
import type { Visit } from "./parts-in-service.ts";

/** What a group of findings is judged from. */
export interface Scene {
  readonly file: UnitFile;
  readonly visit: Visit;
  readonly phase: Phase;
  readonly context: Context;
  readonly figures: Figures;
  readonly readings: PhaseReadings;
}

/** A figure told without a limit. */
export const note = (
  id: string,
  phase: Phase,
  figure: Outcome<Figure>,
  detail: Finding["detail"] = {},
): Finding[] =>
  figure.kind === "known"
    ? [{ id, phase, verdict: "information", figure: figure.value, consequence: 2, detail }]
    : [];
