import { applianceUse, decodeText, readSensor, sensorSummary } from "@tapside/book";
import { unitFile } from "@tapside/records";
import { en } from "@tapside/words/en";
import type { CommandVerb } from "../command-verb.ts";
import { sentence } from "../sentence.ts";
import { bookIn } from "./book-file.ts";

export const sensorVerb: CommandVerb = {
  summary:
    "a sensor's CSV (time, value, unit, alarm) as the phone would take it in: its span, refused rows with their reasons",
  ways: ["LOG.csv [--json]"],
  examples: [{ args: ["sensor", "examples/larkmoor-sensor.csv"], prints: "ppm" }],
  run({ plain, named }, io) {
    if (!plain[0]) {
      io.complain("Name a file: tapside sensor LOG.csv");
      return 2;
    }
    const preview = readSensor(decodeText(io.readBytes(plain[0])));
    if (preview.kind !== "known") {
      io.complain(`${plain[0]}: ${sentence(preview)}`);
      return 2;
    }
    const { lines, refused, unknownColumns } = preview.value;
    const { from, until, count, alarms, spans } = sensorSummary({ lines });
    if (named["--json"]) io.print(JSON.stringify(preview.value));
    else
      io.print(
        [
          `${count} lines, ${from} to ${until}`,
          ...spans.map((one) => `${one.low} to ${one.high} ${one.unit}`),
          `${alarms} alarms`,
        ].join("; "),
      );
    for (const name of unknownColumns) io.complain(`column ${name} is not taken in`);
    for (const row of refused) io.complain(`line ${row.line} refused: ${en.refusal(row)}`);
    return refused.length > 0 ? 1 : 0;
  },
};

export const useVerb: CommandVerb = {
  summary: "what every appliance with a counter of its own uses a day",
  ways: ["FILE [--json]"],
  examples: [],
  run({ plain, named }, io) {
    const book = bookIn(plain[0], io);
    if (!book) return 2;
    const all = [...book.unit.keys()].sort().flatMap((id) => {
      const file = unitFile(book, id);
      return file ? applianceUse(file).map((one) => ({ site: file.site.name ?? "", ...one })) : [];
    });
    if (named["--json"]) io.print(JSON.stringify(all));
    else
      for (const { site, name, value, unit, on, perDay, since } of all)
        io.print(
          `${on} ${site}, ${name}: ${value} ${unit}${perDay === undefined ? "" : `, ${Number(perDay.toPrecision(2))} ${unit} a day since ${since}`}`,
        );
    if (all.length === 0) io.complain("No counter of an appliance was read in this file.");
    return 0;
  },
};
