/** A number with three digits at most, none behind the point from 10 up (two below 10, one below 100 when small steps matter). */
export function formatNumber(value: number): string {
  const size = Math.abs(value);
  return value.toFixed(size >= 10 ? 0 : size >= 2 ? 1 : 2);
}
