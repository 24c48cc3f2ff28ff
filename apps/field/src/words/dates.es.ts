import { MONTHS } from "@tapside/words";
import type { Packs } from "./packs.ts";

export const dateEs: Packs["first"]["dates"] = {
  weekdays: ["Domingo", "Lunes", "Martes", "Miércoles", "Jueves", "Viernes", "Sábado"],
  months: MONTHS.es,
  day: (day, month) => `${day} ${month}`,
};
