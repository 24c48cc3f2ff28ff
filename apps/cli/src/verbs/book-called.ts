import { type CallItem, codeOfUnit, complaintItems, readCall, unitOfSticker } from "@tapside/book";
import { beforeDriving, countsInBook, worthSaying } from "@tapside/diagnosis";
import { unitFile, unitTitle } from "@tapside/records";
import { causesInLanguage } from "@tapside/words/causes";
import type { CommandVerb } from "../command-verb.ts";
import { wordsAsked } from "../language-option.ts";
import { bookWordsIn } from "../words/book-words.ts";
import { bookIn } from "./book-file.ts";

const EXAMPLE = "examples/larkmoor.tapside.json";
const SAID: readonly CallItem[] = ["noWater"];
const EXAMPLE_CALL = `#/called/${codeOfUnit("demo:1:unit")}/${encodeURIComponent(`at=2026-11-25T06:10:00.000Z&items=${SAID.join("-")}`)}`;

export const calledVerb: CommandVerb = {
  summary: "a message from a kitchen, sent through its sticker: what was said, what is likely, what to load",
  ways: ["FILE MESSAGE [--language en|es] [--json]"],
  examples: [{ args: ["called", EXAMPLE, EXAMPLE_CALL], prints: "%" }],
  async run({ plain, named }, io) {
    const words = wordsAsked(named["--language"], undefined, io);
    const book = words && bookIn(plain[0], io, words);
    if (!words || !book) return 2;
    const says = bookWordsIn(words.language);
    const call = readCall(plain[1] ?? "");
    if (call.kind !== "known") {
      io.complain(call.kind === "refused" ? words.refusal(call) : `${words.missing(call)}.`);
      return 2;
    }
    const id = unitOfSticker(book, call.value.code);
    const file = id && unitFile(book, id);
    if (!file) {
      io.complain(says.noUnitOfSticker(call.value.code));
      return 2;
    }
    const items = complaintItems(call.value);
    const found = await beforeDriving(file, { at: call.value.at, items }, countsInBook(book.causeCounts));
    if (named["--json"]) {
      io.print(JSON.stringify({ unit: id, call: call.value, found }));
      return 0;
    }
    const { causes, parts, percent } = causesInLanguage(words.language);
    const title = unitTitle(file);
    io.print(`${title}: ${items.map((item) => words.visit.checks.complaint.items[item] ?? item).join("; ")}`);
    if (found.kind !== "known") {
      io.complain(found.kind === "missing" ? `${words.missing(found)}.` : words.refusal(found));
      return 1;
    }
    for (const one of worthSaying(found.value.causes))
      io.print(`${percent(one.probability)} ${causes[one.cause]}`);
    for (const one of found.value.parts) io.print(says.likely(percent(one.probability), parts[one.part], 1));
    if (found.value.parts.length === 0) io.complain(says.noneLikely);
    return 0;
  },
};
