import type { Language } from "@tapside/words";
import type { causePackEn } from "./cause.en.ts";
import type { firstPackEn } from "./first.en.ts";
import type { visitPackEn } from "./visit.en.ts";

/** The words of the app by when they are needed. English gives the shape: a word missing in another language does not compile. */
export interface Packs {
  readonly first: typeof firstPackEn;
  readonly visit: typeof visitPackEn;
  readonly cause: typeof causePackEn;
}

const FILES: { readonly [P in keyof Packs]: Readonly<Record<Language, () => Promise<Packs[P]>>> } = {
  first: {
    en: async () => (await import("./first.en.ts")).firstPackEn,
    es: async () => (await import("./first.es.ts")).firstPackEs,
  },
  visit: {
    en: async () => (await import("./visit.en.ts")).visitPackEn,
    es: async () => (await import("./visit.es.ts")).visitPackEs,
  },
  cause: {
    en: async () => (await import("./cause.en.ts")).causePackEn,
    es: async () => (await import("./cause.es.ts")).causePackEs,
  },
};

const learned: { -readonly [P in keyof Packs]?: Packs[P] } = {};

/** Fetches a pack, before the first module that speaks its words is loaded. The language stays until the page is loaded anew. */
export async function learn<P extends keyof Packs>(pack: P, language: Language): Promise<void> {
  learned[pack] ??= await FILES[pack][language]();
}

/** The words of a pack in the language of the technician. */
export function spoken<P extends keyof Packs>(pack: P): Packs[P] {
  const words = learned[pack];
  if (!words) throw new Error(`The words of "${pack}" are spoken before they are learned.`);
  return words;
}
