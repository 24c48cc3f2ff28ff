import { dateWords as words } from "../words/dates.ts";

/** A day as people write it, from an ISO date or instant; empty when there is none. */
export function day(iso: string | null | undefined): string {
  const date = dateOf(iso ?? "");
  return Number.isNaN(date.getTime()) ? "" : `${dayOfMonth(date)} ${date.getFullYear()}`;
}

/** An instant, or noon of a day: a day alone is the same day wherever the phone is. */
export const dateOf = (iso: string): Date => new Date(iso.length === 10 ? `${iso}T12:00:00` : iso);

/** A sentence made for paper, its ISO dates as people write them. */
export const withDays = (text: string): string => text.replace(/\b\d{4}-\d{2}-\d{2}\b/g, (iso) => day(iso));

/** "Thursday 26 Nov": a day of about now. */
export const weekdayOf = (date: Date): string => `${words.weekdays[date.getDay()]} ${dayOfMonth(date)}`;

const dayOfMonth = (date: Date): string => words.day(date.getDate(), words.months[date.getMonth()]!);

/** "08:05": the time of an instant on this phone's clock. */
export const clockOf = (iso: string): string => {
  const date = new Date(iso);
  return [date.getHours(), date.getMinutes()].map((part) => String(part).padStart(2, "0")).join(":");
};
