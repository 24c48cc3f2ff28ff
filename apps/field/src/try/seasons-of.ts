import type { UnitFile } from "@tapside/records";
import type { Season } from "@tapside/reverse-osmosis";

/** Cold and warm tap water where nobody read either. Common practice, no source. */
const USUAL: Readonly<Record<Season, number>> = { winter: 6, summer: 20 };
/** Readings nearer to each other than this are one season. */
const APART_C = 5;

/** Coldest and warmest feed that was read here; readings of one season only say nothing of the other, which then is at least as usual. */
export function seasonsOf({ visits }: Pick<UnitFile, "visits">): Readonly<Record<Season, number>> {
  const read = visits.flatMap(({ readings }) => {
    const reading = readings.asFound.feedTemperature;
    if (!reading || reading.doubtful || typeof reading.value !== "number") return [];
    return [reading.unit === "°F" ? (reading.value - 32) / 1.8 : reading.value];
  });
  if (read.length === 0) return USUAL;
  const [cold, warm] = [Math.round(Math.min(...read)), Math.round(Math.max(...read))];
  if (warm - cold >= APART_C) return { winter: cold, summer: warm };
  return { winter: Math.min(USUAL.winter, cold), summer: Math.max(USUAL.summer, warm) };
}
