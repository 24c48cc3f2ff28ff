import { freeze } from "@tapside/records";
import { messagesIn } from "@tapside/words/every-language";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import type { RecordContent } from "./block.ts";
import { recordPdf } from "./pdf.ts";
import { DEMO_UNITS, demoClaim, demoRecord, FONTS, withLastVisit } from "./test-support/demo-record.ts";

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

async function readBack(content: RecordContent) {
  const { mark } = freeze(content);
  const pdf = await getDocument({ data: await recordPdf(content, mark, FONTS), verbosity: 0 }).promise;
  const text: string[] = [];
  const roles: string[] = [];
  const alts: string[] = [];
  const walk = (node: Node) => {
    if (node.role) roles.push(node.role);
    if (node.alt) alts.push(node.alt);
    for (const child of node.children ?? []) walk(child);
  };
  for (let i = 1; i <= pdf.numPages; i++) {
    const page = await pdf.getPage(i);
    const { items } = await page.getTextContent();
    text.push(items.map((item) => ("str" in item ? item.str : "")).join(" "));
    walk((await page.getStructTree()) as Node);
  }
  const { Title, Language } = (await pdf.getMetadata()).info as { Title: string; Language: string };
  const marked = await pdf.getMarkInfo();
  const all = text.join(" ").replace(/\s+/g, " ");
  return {
    pages: pdf.numPages,
    text: all,
    roles,
    alts,
    title: Title,
    language: Language,
    marked: marked?.Marked,
    mark,
  };
}

const count = (roles: readonly string[], role: string) => roles.filter((one) => one === role).length;

describe("the printed record", () => {
  it.each(DEMO_UNITS)("of unit %i has the structure a reader is led by", async (n) => {
    const { roles, marked, text, alts } = await readBack(demoRecord(n));
    expect(marked).toBe(true);
    expect(count(roles, "H1")).toBe(1);
    expect(count(roles, "H2")).toBeGreaterThanOrEqual(8);
    expect(count(roles, "Table")).toBe(1);
    expect(count(roles, "TR")).toBe(14);
    expect(count(roles, "TH")).toBe(4 + 13);
    expect(count(roles, "TD")).toBe(3 * 13);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
    expect(alts.some((alt) => /^\d/.test(alt))).toBe(true);
  });

  it("says on its pages what the frozen text says, and by which mark it is known", async () => {
    const content = demoRecord(2);
    const { text, title, mark, pages } = await readBack(content);
    expect(title).toBe(`Service record, ${content.subtitle}`);
    for (const block of content.blocks) {
      const told =
        "text" in block ? [block.text] : block.kind === "list" && !block.valves ? [...block.items] : [];
      for (const line of told) expect(text.replace(/\s/g, "")).toContain(line.replace(/\s/g, ""));
    }
    expect(text.replace(/\s/g, "")).toContain(mark);
    expect(text).toContain(`page ${pages} of ${pages}`);
  });

  it("reads a number's sign aloud", async () => {
    const { alts } = await readBack(demoRecord(2));
    expect(alts).toContain("3.9, outside");
    expect(alts.some((alt) => alt.endsWith("not as expected"))).toBe(true);
  });

  it("holds long names, many findings and a signature on as many pages as it takes", async () => {
    const content = demoRecord(1, (file) => ({
      ...withLastVisit(file, (visit) => ({
        ...visit,
        work: Object.fromEntries(
          Array.from({ length: 80 }, (_, i) => [
            `task ${i}`,
            { state: "left" as const, reason: "no time ".repeat(20) },
          ]),
        ),
        answers: {
          ...visit.answers,
          signature: { kind: "signed", name: "A. Person", role: "cook", path: "M10 60C60 10 90 110 200 40" },
        },
      })),
      site: { ...file.site, name: "A school of a very long name ".repeat(6) },
    }));
    const { pages, alts } = await readBack(content);
    expect(pages).toBeGreaterThan(4);
    expect(alts).toContain("Signature");
  });

  it("still prints a record frozen before inputs and the line of water were kept", async () => {
    const { inputs: _, settings: __, sources: ___, ...old } = demoRecord(3);
    const blocks = old.blocks.map((block) =>
      block.kind === "readings" ? { kind: block.kind, head: block.head, rows: block.rows } : block,
    );
    expect((await readBack({ ...old, blocks })).text).toContain("Service record");
  });
});

describe("the record of an owner who reads Spanish", () => {
  const es = messagesIn("es");
  const spanish = demoRecord(2, undefined, es);
  it("is Spanish in text, title and language of the document, with the same structure", async () => {
    const read = await readBack(spanish);
    const english = await readBack(demoRecord(2));
    expect(read.language).toBe("es");
    expect(english.language).toBe("en");
    expect(read.title).toMatch(/^Registro de servicio, /);
    expect(count(read.roles, "TH")).toBe(count(english.roles, "TH"));
    expect(read.text).toContain("No analiza microbios, plomo ni nitrato.");
    expect(read.text).toMatch(/página 1 de \d/);
    expect(read.text).not.toMatch(/ (?:the|was|with|limit|not|of) /);
  });
  it.each(DEMO_UNITS)("of unit %i has no number with a point, on the page or read aloud", async (n) => {
    const { text, alts } = await readBack(demoRecord(n, undefined, es));
    expect(text).toMatch(/\d,\d/);
    expect([text, ...alts].join(" ").match(/.{12}\d\.\d.{8}/g)).toBeNull();
  });
  it("is read with its own letters in the bundled face", async () => {
    const letters = "áéíóúñü¿¡ÁÉÍÓÚÑÜ";
    const read = await readBack({ ...spanish, subtitle: letters });
    expect(read.text).toContain(letters);
  });
});

it.each([
  ["en", /Written otherwise here: Lódz, Ellada, Sukin, \?\?\. The exported file/],
  ["es", /Escrito aquí de otro modo: Lódz, Ellada, Sukin, \?\?\. El archivo exportado/],
] as const)(
  "in %s names in signs the font lacks stand in others, and the last page says so",
  async (language, said) => {
    const site = "Łódź Ελλάδα Щукин 東京";
    const named = demoRecord(1, (file) => ({ ...file, site: { ...file.site, name: site } }));
    const { text, title } = await readBack({ ...named, language });
    expect(text).toContain("Lódz Ellada Sukin ??,");
    expect(text).toMatch(said);
    expect(text).not.toMatch(/[łźА-я\u4e00-\u9fff]/);
    expect(title).toContain(site);
  },
);

it("says nothing of signs where the font has them all", async () => {
  expect((await readBack(demoRecord(1))).text).not.toContain("Written otherwise");
});

describe.each([
  ["en", "Claim file, ", "History", /Written otherwise here: Lódz/],
  ["es", "Expediente de reclamo, ", "Historial", /Escrito aquí de otro modo: Lódz/],
] as const)("the claim file in %s", (language, title, history, otherwise) => {
  const words = messagesIn(language);
  const claim = demoClaim(1, (file) => ({ ...file, site: { ...file.site, name: "Łódź" } }), words);
  it("is in the language asked for, tagged, and says every line of its data", async () => {
    const read = await readBack(claim);
    expect(read.language).toBe(language);
    expect(read.title.startsWith(title)).toBe(true);
    expect(read.marked).toBe(true);
    expect(count(read.roles, "H1")).toBe(1);
    expect(count(read.roles, "H2")).toBe(Object.keys(words.claim.titles).length);
    expect(count(read.roles, "LI")).toBeGreaterThan(10);
    expect(read.text).toContain(history);
    const pageText = read.text.replace(/\s/g, "");
    for (const block of claim.blocks)
      for (const line of block.kind === "list" ? block.items : [])
        expect(pageText).toContain(line.replace("Łódź", "Lódz").replace(/\s/g, ""));
    expect(read.text).toContain(words.claim.notListed);
  });
  it("names what its letters lack", async () => {
    expect((await readBack(claim)).text).toMatch(otherwise);
  });
  it("writes its numbers in one sign", async () => {
    const { text } = await readBack(claim);
    expect(text).toMatch(language === "es" ? /cloro[^;]* 0,9 mg\/L/i : /chlorine[^;]* 0\.9 mg\/L/i);
    expect(text.match(language === "es" ? /\d\.\d/g : /\d,\d/g)).toBeNull();
  });
});
