import { applianceUse, decodeText, readSensor, sensorSummary } from "@tapside/book";
import { unitFile } from "@tapside/records";
import { inSign, type Messages } from "@tapside/words";
import type { CommandVerb } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { sentence } from "../sentence.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";

const shown = (value: number, { decimalSign }: Messages): string => inSign(String(value), decimalSign);

export const sensorVerb: CommandVerb = {
  summary:
    "a sensor's CSV (time, value, unit, alarm) as the phone would take it in: its span, refused rows with their reasons",
  ways: ["LOG.csv [--language en|es] [--json]"],
  examples: [{ args: ["sensor", "examples/larkmoor-sensor.csv"], prints: "ppm" }],
  run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    if (!words) return 2;
    const says = bookWordsIn(words.language);
    if (!plain[0]) {
      io.complain(says.nameALog);
      return 2;
    }
    const preview = readSensor(decodeText(io.readBytes(plain[0])));
    if (preview.kind !== "known") {
      io.complain(`${plain[0]}: ${sentence(preview, words)}`);
      return 2;
    }
    const { lines, refused, unknownColumns } = preview.value;
    const { from, until, count, alarms, spans } = sensorSummary({ lines });
    if (named["--json"]) io.print(JSON.stringify(preview.value));
    else
      io.print(
        [
          says.sensor(count, from, until),
          ...spans.map((one) => says.span(shown(one.low, words), shown(one.high, words), one.unit)),
          says.alarms(alarms),
        ].join("; "),
      );
    for (const name of unknownColumns) io.complain(says.columnNotTaken(name));
    for (const row of refused) io.complain(says.lineRefused(row.line, words.refusal(row)));
    return refused.length > 0 ? 1 : 0;
  },
};

export const useVerb: CommandVerb = {
  summary: "what every appliance with a counter of its own uses a day",
  ways: ["FILE [--language en|es] [--json]"],
  examples: [],
  run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    const book = words && bookIn(plain[0], io, words);
    if (!book) return 2;
    const says = bookWordsIn(words.language);
    const all = [...book.unit.keys()].sort().flatMap((id) => {
      const file = unitFile(book, id);
      return file ? applianceUse(file).map((one) => ({ site: file.site.name ?? "", ...one })) : [];
    });
    if (named["--json"]) io.print(JSON.stringify(all));
    else
      for (const { site, name, value, unit, on, perDay, since } of all)
        io.print(
          [
            says.counter(on, `${site}, ${name}`, shown(value, words), unit),
            perDay !== undefined &&
              says.perDay(shown(Number(perDay.toPrecision(2)), words), unit, since ?? ""),
          ]
            .filter(Boolean)
            .join(", "),
        );
    if (all.length === 0) io.complain(says.noCounters);
    return 0;
  },
};
