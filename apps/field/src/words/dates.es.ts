import type { Packs } from "./packs.ts";

export const dateEs: Packs["first"]["dates"] = {
  weekdays: ["Domingo", "Lunes", "Martes", "Miércoles", "Jueves", "Viernes", "Sábado"],
  months: ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sept", "oct", "nov", "dic"],
  day: (day, month) => `${day} ${month}`,
};
