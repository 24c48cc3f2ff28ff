import { languageChosen } from "./language-chosen.ts";
import { learn, type Packs } from "./packs.ts";

/** Loads a module after the words its screens speak. */
export const withWords =
  <M>(packs: readonly (keyof Packs)[], load: () => Promise<M>) =>
  async (): Promise<M> => {
    await Promise.all(packs.map((pack) => learn(pack, languageChosen())));
    return load();
  };
