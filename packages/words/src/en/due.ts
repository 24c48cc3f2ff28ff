import type { PartRole } from "@tapside/records";
import type { Messages } from "../messages.ts";
import { roles } from "./names.ts";
import { openPoint } from "./points.ts";

const WHY: Readonly<Record<string, string>> = {
  visitOpen: "visit open",
  bypassEnds: "bypass permission ends",
  loanEnds: "loan ends",
  noVisit: "no visit yet",
};

/** Why somebody has to come, in a few words. */
export const dueReason: Messages["dueReason"] = ({ why, role, code, detail }) => {
  const part = roles[role as PartRole] ?? role ?? "";
  if (why === "date") return `${part}, due`;
  if (why === "litres") return `${part}, due by litres`;
  if (why === "hours") return `${part}, due by hours`;
  if (why === "openPoint") return openPoint({ ...(code && { code }), ...(detail && { detail }) });
  return WHY[why] ?? why;
};
