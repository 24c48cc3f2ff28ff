import type { Uncertain } from "@tapside/quantities";

/**
 * First-order propagation of uncorrelated inputs by central differences of one standard uncertainty.
 * Source: JCGM 100 clause 5.1.2, note to 5.1.3 (numerical sensitivity).
 */
export function propagate<K extends string>(
  f: (inputs: Readonly<Record<K, number>>) => number,
  inputs: Readonly<Record<K, Uncertain>>,
): Uncertain {
  const names = Object.keys(inputs) as K[];
  const at = Object.fromEntries(names.map((name) => [name, inputs[name].value])) as Record<K, number>;
  let variance = 0;
  for (const name of names) {
    const { value, u } = inputs[name];
    if (u === 0) continue;
    const change = f({ ...at, [name]: value + u }) - f({ ...at, [name]: value - u });
    if (Number.isFinite(change)) variance += (change / 2) ** 2;
  }
  return { value: f(at), u: Math.sqrt(variance) };
}
