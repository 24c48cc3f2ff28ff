export const DAY_MS = 24 * 3600 * 1000;

/** The ISO date so many days after another. */
export const daysAfter = (day: string, days: number): string =>
  new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);

/** Days from one ISO date to another. */
export const daysBetween = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / DAY_MS;
