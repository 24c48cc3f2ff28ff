import { fileURLToPath } from "node:url";
import type { Plugin, Rolldown } from "vite";

const SOURCES = fileURLToPath(new URL("./src/", import.meta.url));
const MAIN = `${SOURCES}main.tsx`;
const START = `${SOURCES}start.tsx`;
const WORDS = { "first.en": `${SOURCES}words/first.en.ts`, "first.es": `${SOURCES}words/first.es.ts` };

/** File of each module a start needs, known when all modules are read. */
const fileOf = new Map<string, string>();

/** A file takes with it what its modules need and no file before it has. */
export const filesAtStart = ["language", "base", ...Object.keys(WORDS), "screens"].map((name) => ({
  name,
  test: (id: string) => fileOf.get(id) === name,
}));

/**
 * What the first screen needs comes in few files: each of many small ones costs a slow phone a turn. First "language", which chooses the
 * words; the words, one file a language; "base", what speaks none; "screens", which speak as they are loaded, so only after their words.
 */
export const fewFilesAtStart: Plugin = {
  name: "few-files-at-start",
  buildEnd() {
    const loadedWith = (first: string) => {
      const loaded = new Set([first]);
      for (const id of loaded) for (const next of this.getModuleInfo(id)?.importedIds ?? []) loaded.add(next);
      return loaded;
    };
    for (const id of loadedWith(START))
      if (id.startsWith(SOURCES) || id.includes("/node_modules/"))
        fileOf.set(id, isBase(id) ? "base" : "screens");
    for (const [file, module] of Object.entries(WORDS))
      for (const id of loadedWith(module))
        if (PHRASES.test(id)) fileOf.set(id, IN_ONE_LANGUAGE.test(id) ? file : "base");
    for (const id of loadedWith(MAIN)) if (id !== MAIN) fileOf.set(id, "language");
  },
  generateBundle(_options, bundle) {
    const [screens] = filesWith(bundle, START);
    for (const module of [MAIN, ...Object.values(WORDS)])
      if (filesWith(bundle, module).includes(screens!))
        this.error(`The screens are loaded with ${module}, before their words are learned.`);
  },
};

const PHRASES = /\/packages\/(?:words|quantities)\/|\/field\/src\//;
const IN_ONE_LANGUAGE = /\/words\/src\/(?:en|es)\/|\.(?:en|es)\.ts$/;

const isBase = (id: string) =>
  /\/node_modules\/|\/packages\/(?:quantities|records)\/|\/field\/src\/store\//.test(id);

/** The page fetches its screens while the words of its language are still on their way. */
export const fetchScreensEarly: Plugin = {
  name: "fetch-screens-early",
  transformIndexHtml: {
    order: "post",
    handler: (_page, { bundle = {} }) =>
      filesWith(bundle, START).map((name) => ({
        tag: "link",
        attrs: { rel: "modulepreload", crossorigin: true, href: `./${name}` },
        injectTo: "head",
      })),
  },
};

/** The files that come with the one made of a module, itself among them. */
function filesWith(bundle: Rolldown.OutputBundle, module: string): string[] {
  const files = Object.values(bundle).flatMap((one) =>
    one.type === "chunk" && one.moduleIds.includes(module) ? [one.fileName] : [],
  );
  for (const name of files) {
    const one = bundle[name];
    if (one?.type === "chunk") files.push(...one.imports.filter((next) => !files.includes(next)));
  }
  return files;
}
