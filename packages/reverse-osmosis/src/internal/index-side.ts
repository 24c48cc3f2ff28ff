import type { Uncertain } from "@tapside/quantities";
import type { TemperatureFormId } from "../temperature-correction.ts";
import { type DriveInputs, saltIndex, waterIndex } from "./standard-indices.ts";

export type UncertainInputs = Readonly<Record<keyof DriveInputs, Uncertain>>;

/** The indices at one point of the inputs. */
export interface IndexPoint {
  readonly values: DriveInputs;
  readonly water: number;
  readonly salt: number;
}

/** One input moved a tenth of its uncertainty up and down. */
interface Moved {
  readonly up: IndexPoint;
  readonly down: IndexPoint;
  readonly u: number;
}

/** Everything a ratio needs of one set of readings: the indices where it stands, and with each uncertain input moved. */
export interface IndexSide {
  readonly at: IndexPoint;
  readonly moved: readonly Moved[];
}

export function indexSide(inputs: UncertainInputs, form: TemperatureFormId): IndexSide {
  const entries = Object.entries(inputs) as [keyof DriveInputs, Uncertain][];
  const values = Object.fromEntries(entries.map(([name, { value }]) => [name, value]));
  const point = (moved: DriveInputs): IndexPoint => ({
    values: moved,
    water: waterIndex(moved, form),
    salt: saltIndex(moved),
  });
  const at = values as unknown as DriveInputs;
  return {
    at: point(at),
    moved: entries
      .filter(([, { u }]) => u !== 0)
      .map(([name, { value, u }]) => ({
        up: point({ ...at, [name]: value + u / 10 }),
        down: point({ ...at, [name]: value - u / 10 }),
        u,
      })),
  };
}

/**
 * First-order propagation through a function of two independent sets of readings: u² = Σ (cᵢuᵢ)², cᵢ by central differences of ±uᵢ/10.
 * Source: JCGM 100, equation (10). The indices of a set are worked out once for all functions of it.
 */
export function propagateSides(
  f: (now: IndexPoint, then: IndexPoint) => number,
  now: IndexSide,
  then: IndexSide,
): Uncertain {
  let variance = 0;
  for (const { up, down, u } of now.moved) variance += slope(f(up, then.at), f(down, then.at), u) ** 2;
  for (const { up, down, u } of then.moved) variance += slope(f(now.at, up), f(now.at, down), u) ** 2;
  return { value: f(now.at, then.at), u: Math.sqrt(Math.max(0, variance)) };
}

/** What an input contributes: its sensitivity times its uncertainty. */
const slope = (up: number, down: number, u: number): number => ((up - down) / (2 * (u / 10))) * u;
