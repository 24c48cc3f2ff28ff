import { freeze, type UnitFile } from "@tapside/records";
import type { RecordContent } from "@tapside/report";
import { buildKitchenCard } from "@tapside/report/kitchen-card";
import { kitchenDay } from "@tapside/report/kitchen-day";
import { buildKitchenPage } from "@tapside/report/kitchen-page";
import { recordPdf } from "@tapside/report/pdf";
import type { Messages } from "@tapside/words";
import { kitchenInLanguage } from "@tapside/words/kitchen";
import type { CommandVerb } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn, judged } from "./book-file.ts";
import { fonts } from "./book-report.ts";
import { unitNamed } from "./unit-named.ts";

interface Asked {
  readonly file: UnitFile;
  readonly words: Messages;
  readonly kitchen: ReturnType<typeof kitchenInLanguage>;
  readonly last: ReturnType<typeof judged>;
  readonly visitId: string;
  readonly name: string;
  readonly phone: string;
  readonly appUrl: string | undefined;
  readonly issuedAt: string;
  readonly timeZone: string;
}

const kitchenVerb = (
  verb: string,
  summary: string,
  more: string,
  build: (asked: Asked) => RecordContent | string,
): CommandVerb => ({
  summary,
  ways: [`FILE [--unit ID|SERIAL|NAME] -o OUT.pdf${more} [--on 2026-11-25T08:00Z] [--language en|es]`],
  notes: [
    "the unit may stay unsaid where the file holds one; a name may be site and unit, as due prints them",
    "without a language: the one of the site's owner, else English",
  ],
  examples: [],
  async run({ plain, named }, io) {
    const asked = wordsAsked(named["--language"], undefined, io);
    const book = asked && bookIn(plain[0], io, asked);
    const file = book && unitNamed(book, named["--unit"], io, asked);
    const words = file && wordsAsked(named["--language"], file.site.language, io);
    if (!words) return 2;
    const now = named["--on"] ? new Date(named["--on"]) : new Date();
    if (!named["-o"] || Number.isNaN(now.getTime())) {
      io.complain(bookWordsIn(words.language).kitchenWants(verb));
      return 2;
    }
    const visit = file.visits.at(-1);
    const { technician = "", phone = "" } = book.settings.get("settings") ?? {};
    const content = build({
      file,
      words,
      kitchen: kitchenInLanguage(words.language),
      last: visit && judged(book, visit),
      visitId: visit?.id ?? "",
      name: technician,
      phone,
      appUrl: named["--url"],
      issuedAt: now.toISOString(),
      timeZone: file.site.timeZone ?? "UTC",
    });
    if (typeof content === "string") {
      io.complain(content);
      return 2;
    }
    io.writeBytes(named["-o"], await recordPdf(content, freeze(content).mark, fonts(io)));
    return 0;
  },
});

export const kitchenCardVerb = kitchenVerb(
  "kitchen card",
  "a card to hang at the unit as PDF: from when to use its water, whom to ring, what to leave alone",
  " [--url https://where.the/app/is/]",
  ({ last, visitId: _, ...asked }) => buildKitchenCard({ ...asked, assessment: last?.assessment }),
);

export const kitchenPageVerb = kitchenVerb(
  "kitchen page",
  "one page for the chef as PDF: the water in plain words, what it does to each appliance, what the kitchen checks",
  "",
  ({ last, name: _, phone: __, appUrl: ___, ...asked }) =>
    last
      ? buildKitchenPage({
          ...asked,
          assessment: last.assessment,
          kitchenDay: kitchenDay(asked.file, last, asked),
        })
      : bookWordsIn(asked.words.language).kitchenNoVisit,
);
