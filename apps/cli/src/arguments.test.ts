import { describe, expect, it } from "vitest";
import { argumentsOf } from "./arguments.ts";

const ways = [
  "FILE -o OUT.csv [--on 2026-11-25] [--language en|es] [--json]",
  "--simulate N --seed S [--altered]",
];

describe("what a verb's usage shows is what is taken", () => {
  it("plain words, options with and without a value, in any order", () => {
    const args = ["--json", "book.json", "--on", "2026-01-02", "-o", "out.csv"];
    expect(argumentsOf(args, ways)).toEqual({
      plain: ["book.json"],
      named: { "--json": "yes", "--on": "2026-01-02", "-o": "out.csv" },
    });
    expect(argumentsOf(["--simulate", "30", "--seed", "-7", "--altered"], ways)).toEqual({
      plain: [],
      named: { "--simulate": "30", "--seed": "-7", "--altered": "yes" },
    });
  });
  it("a negative number is a plain word", () => {
    expect(argumentsOf(["-5", "°C", "°F"], ["VALUE FROM TO [--json]"])).toEqual({
      plain: ["-5", "°C", "°F"],
      named: {},
    });
  });
  it.each([
    [["book.json", "--jsn"], /no --jsn here, only .*--json/],
    [["book.json", "-o"], /-o wants a value/],
    [["book.json", "-o", "--json"], /-o wants a value/],
    [["Unit", "3"], /"3" is one too many/],
  ])("%j is refused in a sentence", (args, says) => {
    expect(argumentsOf(args, ways)).toMatch(says);
  });
});
