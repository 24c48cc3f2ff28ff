import { type Outcome, refused } from "@tapside/quantities";
import { PLACES } from "./layout.ts";
import type { Workspace } from "./workspace.ts";

const at = PLACES;

/** Sets the CO2 activity a gas of the given partial pressure holds. */
export function openTo(ws: Workspace, co2Atm: number): Outcome<never> | undefined {
  if (!(co2Atm > 0 && co2Atm <= 1)) return refused("gas-pressure-out-of-range", { co2Atm, highAtm: 1 });
  ws.gasCo2Activity = ws.k[at.K_GAS]! * co2Atm;
  return undefined;
}
