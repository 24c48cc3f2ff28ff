import { known, type Outcome, refused } from "@tapside/quantities";
import { CACO3_G_PER_MOL, CASO4_G_PER_MOL, CONSTITUENTS, type ConservedWater } from "./analysis.ts";
import { type BothSolids, equilibrateBoth } from "./internal/both-solids.ts";
import { loadConserved, solveRefusal } from "./internal/load.ts";
import { openTo } from "./internal/open-to.ts";
import { solveMode } from "./internal/precipitate.ts";
import { SOLVED, startFresh } from "./internal/solve.ts";
import { BY_CARBON, BY_GAS } from "./internal/sweep.ts";
import { createWorkspace } from "./internal/workspace.ts";
import { speciateConserved } from "./speciate.ts";
import { type Water, waterOf } from "./water.ts";

export interface Boiling {
  readonly temperatureC: number;
  /** Water before over water after. */
  readonly concentrationFactor: number;
  /** Partial pressure of CO2 above the water; absent when the vessel is closed to gas. */
  readonly co2Atm?: number;
}

export interface BoiledDown {
  readonly water: Water;
  /** Water left, kg per kg of feed, with what the carbonate reaction sets free. */
  readonly waterKgPerKg: number;
  readonly calciteMgPerKgFeed: number;
  readonly anhydriteMgPerKgFeed: number;
}

const WATER_KG_PER_MOL = 0.018015;
const workspace = createWorkspace();
const solids: BothSolids = { status: SOLVED, calciteMolPerKg: 0, anhydriteMolPerKg: 0 };

function concentrated(feed: ConservedWater, { temperatureC, concentrationFactor }: Boiling): ConservedWater {
  const totals = { ...feed.totals };
  for (const id of CONSTITUENTS) totals[id] *= concentrationFactor;
  return {
    temperatureC,
    totals,
    alkalinityEqPerKg: feed.alkalinityEqPerKg * concentrationFactor,
    carbonMolPerKg: feed.carbonMolPerKg * concentrationFactor,
  };
}

/**
 * Boils a water down and lets calcite and anhydrite precipitate to saturation, closed or with CO2 held by a gas.
 *
 * Source: mass balance on the P82 basis; reference values in `reference/water-cases/evaporation_open.csv`.
 * Range: 0–160 °C, ionic strength below 2 mol/kg.
 * Error: scale differs by up to 4 mg/kg between databases; a real vessel lies between closed and open.
 */
export function boilDown(feed: ConservedWater, boiling: Boiling): Outcome<BoiledDown> {
  const { concentrationFactor, co2Atm } = boiling;
  if (!(concentrationFactor >= 1)) return refused("concentration-factor-below-1", { concentrationFactor });
  const before = speciateConserved(feed);
  if (before.kind !== "known") return before;
  const refusal =
    loadConserved(workspace, concentrated(feed, boiling)) ??
    (co2Atm === undefined ? undefined : openTo(workspace, co2Atm));
  if (refusal) return refusal;
  const mode = co2Atm === undefined ? BY_CARBON : BY_GAS;
  startFresh(workspace);
  const status = solveMode(workspace, mode);
  if (status !== SOLVED) return solveRefusal(status, workspace);
  equilibrateBoth(workspace, mode, solids);
  if (solids.status !== SOLVED) return solveRefusal(solids.status, workspace);
  return known(boiledDown(before.value, concentrationFactor));
}

function boiledDown(before: Water, factor: number): BoiledDown {
  const water = waterOf(workspace);
  const calcite = solids.calciteMolPerKg / factor;
  const carbonLost = before.carbonMolPerKg - calcite - water.carbonMolPerKg / factor;
  const co2Formed = water.molality.CO2 / factor - before.molality.CO2 + carbonLost;
  return {
    water,
    waterKgPerKg: 1 / factor + co2Formed * WATER_KG_PER_MOL,
    calciteMgPerKgFeed: calcite * CACO3_G_PER_MOL * 1000,
    anhydriteMgPerKgFeed: (solids.anhydriteMolPerKg / factor) * CASO4_G_PER_MOL * 1000,
  };
}
