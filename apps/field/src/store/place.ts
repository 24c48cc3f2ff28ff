/** Where in the app the hands were, and when. */
export interface Place {
  readonly path: string;
  readonly ms: number;
}

/** A visit left longer ago than this is found through the book, not opened by itself. */
const SAME_DAY_MS = 12 * 3600 * 1000;

export const placeOf = (text: string | undefined): Place | undefined =>
  text === undefined ? undefined : (JSON.parse(text) as Place);

export const isInVisit = ({ path, ms }: Place, nowMs: number): boolean =>
  /^\/visit\/[^/]/.test(path) && nowMs - ms <= SAME_DAY_MS;
