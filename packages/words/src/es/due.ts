import type { PartRole } from "@tapside/records";
import type { Messages } from "../messages.ts";
import { roles } from "./names.ts";
import { openPoint } from "./points.ts";

const WHY: Readonly<Record<string, string>> = {
  visitOpen: "visita abierta",
  bypassEnds: "termina el permiso de desvío",
  loanEnds: "termina el préstamo",
  noVisit: "aún sin visita",
};

/** Why somebody has to come, in a few words. */
export const dueReason: Messages["dueReason"] = ({ why, role, code, detail }) => {
  const part = roles[role as PartRole] ?? role ?? "";
  if (why === "date") return `${part}, vence`;
  if (why === "litres") return `${part}, vence por litros`;
  if (why === "hours") return `${part}, vence por horas`;
  if (why === "openPoint") return openPoint({ ...(code && { code }), ...(detail && { detail }) });
  return WHY[why] ?? why;
};
