import type { PortId, Unit } from "./kinds.ts";

/** Places of the unit where nothing can be read: those marked so, and the air side of a tank that has none. */
export const absentPorts = ({ portsAbsent = [], ventedTank }: Partial<Unit>): readonly PortId[] =>
  ventedTank && !portsAbsent.includes("tank") ? [...portsAbsent, "tank"] : portsAbsent;
