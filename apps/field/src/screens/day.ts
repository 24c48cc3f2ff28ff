import { dateWords as words } from "../words/dates.ts";

/** A day as people write it, from an ISO date or instant; empty when there is none. */
export function day(iso: string | null | undefined): string {
  const date = new Date(iso ?? "");
  return Number.isNaN(date.getTime()) ? "" : `${dayOfMonth(date)} ${date.getFullYear()}`;
}

/** "Thursday 26 Nov": a day of about now. */
export const weekdayOf = (date: Date): string => `${words.weekdays[date.getDay()]} ${dayOfMonth(date)}`;

const dayOfMonth = (date: Date): string => words.day(date.getDate(), words.months[date.getMonth()]!);

/** "08:05": the time of an instant on this phone's clock. */
export const clockOf = (iso: string): string => {
  const date = new Date(iso);
  return [date.getHours(), date.getMinutes()].map((part) => String(part).padStart(2, "0")).join(":");
};
