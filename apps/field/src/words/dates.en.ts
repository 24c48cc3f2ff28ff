import { MONTHS } from "@tapside/words";

/** Names of days and months. Ours, because the browser's own take a phone longer to load than the rest of the first screen. */
export const dateEn = {
  weekdays: ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"],
  months: MONTHS.en,
  day: (day: number, month: string) => `${day} ${month}`,
};
