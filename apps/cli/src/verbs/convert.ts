import { convert, parseReading, UNITS } from "@tapside/quantities";
import type { CommandVerb } from "../command-verb.ts";
import { sentence } from "../sentence.ts";

export const convertVerb: CommandVerb = {
  summary: "a value in another unit of the trade",
  ways: ["VALUE FROM TO [--json]"],
  examples: [
    { args: ["convert", "12", "gpg", "mg/L"], prints: "205.4 mg/L" },
    { args: ["convert", "60", "psi", "bar"], prints: "4.137 bar" },
  ],
  run({ plain, named }, io) {
    const [text, from, to] = plain;
    if (text === undefined || !from || !to) {
      io.complain("Say what to convert: tapside convert 12 gpg mg/L");
      return 2;
    }
    const value = parseReading(text);
    const result = value.kind === "known" ? convert(value.value.value, from, to) : value;
    if (named["--json"]) io.print(JSON.stringify(result));
    else if (result.kind === "known") io.print(`${Number(result.value.toPrecision(4))} ${to}`);
    if (result.kind === "known") return 0;
    io.complain(sentence(result));
    if (result.kind === "refused" && result.code === "unit-unknown")
      io.complain(`Known units: ${Object.keys(UNITS).join(", ")}.`);
    return 1;
  },
};
