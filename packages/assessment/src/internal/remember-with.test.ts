import { expect, it } from "vitest";
import { rememberWith } from "./remember-with.ts";

it("works an answer out once for the same objects, again for other ones, and keeps only the last few", () => {
  let runs = 0;
  const sum = rememberWith((first: { readonly n: number }, more: number) => {
    runs++;
    return first.n + more;
  });
  const one = { n: 1 };
  expect([sum(one, 2), sum(one, 2), sum(one, 3), sum({ n: 1 }, 2)]).toEqual([3, 3, 4, 3]);
  expect(runs).toBe(3);
  for (let more = 10; more < 20; more++) sum(one, more);
  expect(sum(one, 2)).toBe(3);
  expect(runs).toBe(14);
});
