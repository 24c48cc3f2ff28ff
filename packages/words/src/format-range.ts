/** "7–12": both ends with the decimals the upper one bears: none from 10 up, one from 2, two below. */
export function formatRange({ low, high }: { readonly low: number; readonly high: number }): string {
  const size = Math.abs(high);
  const decimals = size >= 10 ? 0 : size >= 2 ? 1 : 2;
  return `${low.toFixed(decimals)}–${high.toFixed(decimals)}`;
}
