import type { Assessment } from "@tapside/assessment";
import type { KeptVisit } from "@tapside/records";

/** When a tank left filling should be full: about, and with the expected hours at the upper end of their interval (k = 2). */
export interface TankFullBy {
  readonly about: string;
  readonly latest: string;
}

const HOUR_MS = 3600 * 1000;
const FIVE_MS = 5 * 60 * 1000;

/** ISO instants, to five minutes, the latest rounded up; nothing where the filling time is not known or long past. */
export function tankFullBy(
  { figures: { asFound, asLeft } }: Pick<Assessment, "figures">,
  leftAt: string,
  asOf: string,
): TankFullBy | undefined {
  const hours = asLeft.fillingHours.kind === "known" ? asLeft.fillingHours : asFound.fillingHours;
  const left = Date.parse(leftAt);
  if (hours.kind !== "known" || Number.isNaN(left)) return undefined;
  const { value, u } = hours.value;
  const about = Math.round((left + value * HOUR_MS) / FIVE_MS) * FIVE_MS;
  const latest = Math.ceil((left + (value + 2 * u) * HOUR_MS) / FIVE_MS) * FIVE_MS;
  if (latest < Date.parse(asOf)) return undefined;
  return { about: new Date(about).toISOString(), latest: new Date(latest).toISOString() };
}

/** When the hands left: as written, else the end of the visit, else now. */
export const leftAtOf = (visit: KeptVisit, asOf: string): string =>
  visit.answers.times?.leftAt ?? visit.endedAt ?? asOf;
