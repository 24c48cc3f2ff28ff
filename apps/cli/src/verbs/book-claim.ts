import { codeOfUnit, newStickerCode, stickerLink } from "@tapside/book";
import { canonicalJson, freeze, unitFile } from "@tapside/records";
import { buildClaim } from "@tapside/report";
import { recordPdf } from "@tapside/report/pdf";
import { type Sticker, stickersPdf } from "@tapside/report/stickers";
import { type CliIo, type CommandVerb, complain } from "../command-verb.ts";
import { dayAsked } from "../day-option.ts";
import { wordsAsked } from "../language-option.ts";
import { bookIn } from "./book-file.ts";
import { fonts } from "./book-report.ts";
import { unitNamed } from "./unit-named.ts";

export const claimVerb: CommandVerb = {
  summary: "the claim file of one unit: PDF, and its data beside it as JSON",
  ways: ["FILE [--unit ID|SERIAL|NAME] -o OUT.pdf [--on 2026-11-25] [--language en|es]"],
  notes: [
    "writes OUT.json too",
    "the unit may stay unsaid where the file holds one; a name may be site and unit, as due prints them",
    "without a language: the one of the site's owner, else English",
  ],
  examples: [],
  async run({ plain, named }, io) {
    const asked = wordsAsked(named["--language"], undefined, io);
    const book = asked && bookIn(plain[0], io, asked);
    const file = book && unitNamed(book, named["--unit"], io, asked);
    if (!file) return 2;
    const out = named["-o"];
    if (!out) return complain(io, "Say where to: tapside claim FILE --unit ID -o OUT.pdf");
    const words = wordsAsked(named["--language"], file.site.language, io);
    const day = words && dayAsked(named["--on"], words, io);
    if (!words || !day) return 2;
    const issuedAt = named["--on"] ? `${day}T00:00:00Z` : new Date().toISOString();
    const content = buildClaim({ book, file, words, issuedAt });
    const { mark } = freeze(content);
    io.writeText(out.replace(/(\.pdf)?$/, ".json"), canonicalJson({ mark, content } as never));
    io.writeBytes(out, await recordPdf(content, mark, fonts(io)));
    io.complain(`${out}, mark ${mark}`);
    return 0;
  },
};

export const stickersVerb: CommandVerb = {
  summary: "QR stickers for a label roll as PDF, one a page: of the units of an exported file, or new ones",
  ways: ["[FILE] [--new 50] --url https://where.the/app/is/ -o OUT.pdf"],
  examples: [],
  async run({ plain, named }, io) {
    const [url, out] = [named["--url"], named["-o"]];
    if (!url || !out) return complain(io, "Say where the app is (--url) and where to print (-o OUT.pdf).");
    const stickers = named["--new"] ? fresh(Number(named["--new"]), url) : ofBook(plain[0], url, io);
    if (!stickers || stickers.length === 0) return complain(io, "There is no sticker to print.");
    io.writeBytes(out, await stickersPdf(stickers, fonts(io)));
    for (const sticker of stickers) io.print([sticker.code, ...sticker.lines].join("\t"));
    return 0;
  },
};

function ofBook(path: string | undefined, url: string, io: CliIo): readonly Sticker[] | undefined {
  const book = bookIn(path, io);
  return (
    book &&
    [...book.unit.keys()].sort().flatMap((id) => {
      const file = unitFile(book, id);
      if (!file) return [];
      const code = file.unit.sticker ?? codeOfUnit(id);
      const lines = [file.site.name, file.unit.name, file.point.name, file.site.code].filter(
        (text): text is string => Boolean(text),
      );
      return [{ link: stickerLink(url, code), code, lines }];
    })
  );
}

const MOST = 5000;

function fresh(count: number, url: string): readonly Sticker[] {
  if (!(count >= 1 && count <= MOST)) return [];
  return Array.from({ length: Math.floor(count) }, () => {
    const random = crypto.getRandomValues(new Uint8Array(7));
    const code = newStickerCode(random);
    return { link: stickerLink(url, code), code, lines: [] };
  });
}
