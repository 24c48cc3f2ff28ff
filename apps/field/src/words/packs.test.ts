import { expect, it } from "vitest";
import { causePackEn } from "./cause.en.ts";
import { causePackEs } from "./cause.es.ts";
import { firstPackEn } from "./first.en.ts";
import { firstPackEs } from "./first.es.ts";
import { visitPackEn } from "./visit.en.ts";
import { visitPackEs } from "./visit.es.ts";

/** Paths of everything said, each with its text; tables whose keys are free to the types included. */
const said = (words: object, path = ""): Map<string, unknown> =>
  new Map(
    Object.entries(words).flatMap(([key, value]): [string, unknown][] =>
      typeof value === "object" && value !== null
        ? [...said(value, `${path}/${key}`)]
        : [[`${path}/${key}`, value]],
    ),
  );

/** The same in both languages: names, units, and the word "restrictor". */
const ALIKE =
  /^(?:Tapside|Apache-2\.0\.|English|Español|Restrictor|psi|bar|kPa|ppm|mg\/L.*|NaCl|KCl|L\/min|L\/h|Arrhenius, 2700 K)$/;

it.each([
  ["first", firstPackEn, firstPackEs],
  ["visit", visitPackEn, visitPackEs],
  ["cause", causePackEn, causePackEs],
] as const)("every entry of the pack %s is in Spanish too, and no more", (_name, en, es) => {
  const { messages: _en, ...english } = { messages: {}, ...en };
  const { messages: _es, ...spanish } = { messages: {}, ...es };
  const [one, other] = [said(english), said(spanish)];
  expect([...other.keys()].sort()).toEqual([...one.keys()].sort());
  const stayed = [...one].filter(
    ([path, text]) =>
      typeof text === "string" && /[a-z]{3}/i.test(text) && other.get(path) === text && !ALIKE.test(text),
  );
  expect(stayed).toEqual([]);
});
