import { propagate as propagateList, type Uncertain } from "@tapside/quantities";

/** First-order propagation (quantities' own) with the inputs called by name. */
export function propagate<K extends string>(
  f: (inputs: Readonly<Record<K, number>>) => number,
  inputs: Readonly<Record<K, Uncertain>>,
): Uncertain {
  const names = Object.keys(inputs) as K[];
  const named = (values: readonly number[]) =>
    Object.fromEntries(names.map((name, i) => [name, values[i]!])) as Record<K, number>;
  return propagateList(
    (values) => f(named(values)),
    names.map((name) => inputs[name]),
  );
}
