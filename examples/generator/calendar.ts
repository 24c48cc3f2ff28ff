const DAY_MS = 24 * 3600 * 1000;

export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(day) + Math.round(days) * DAY_MS).toISOString().slice(0, 10);

/** The same day, or the Monday after a weekend. */
export function workday(day: string): string {
  const weekday = new Date(`${day}T12:00:00Z`).getUTCDay();
  return weekday === 6 ? dayAfter(day, 2) : weekday === 0 ? dayAfter(day, 1) : day;
}

export const yearsBetween = (from: string, to: string): number => daysBetween(from, to) / 365.25;
