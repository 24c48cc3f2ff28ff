import fc from "fast-check";
import { expect, test } from "vitest";
import { CALL_ITEMS, callLink, complaintItems, type KitchenCall, readCall } from "./kitchen-call.ts";
import { codeOfUnit } from "./sticker-code.ts";

const code = codeOfUnit("u1");
const call: KitchenCall = {
  code,
  at: "2026-03-02T06:10:00.000Z",
  items: ["noWater", "ice"],
  drain: "runs",
  tank: "light",
  full: true,
  alarm: "E4 & 50 %",
  words: "¿Otra vez? #3/2",
  name: "K. Finch",
};

test("what is said arrives as it was said, from the link or from a message around it", () => {
  const link = callLink("https://field.example/app#/s/x", call);
  expect(link).toMatch(/^https:\/\/field\.example\/app\/#\/called\//);
  expect(readCall(link)).toMatchObject({ kind: "known", value: call });
  expect(readCall(`Water unit: no water.\n${link}\nThanks`)).toMatchObject({ value: call });
});

test("any words survive the link, cut to 200 signs", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "grapheme", maxLength: 150 }),
      fc.subarray([...CALL_ITEMS]),
      (words, items) => {
        const read = readCall(callLink("https://field.example/", { code, at: call.at, items, words }));
        const clean = new URLSearchParams({ words: words.trim() }).get("words")!.slice(0, 200).trim();
        expect(read).toMatchObject({ kind: "known", value: { items, ...(clean && { words: clean }) } });
      },
    ),
  );
});

test("what is no call is refused by name, and unknown words in it are left out", () => {
  expect(readCall("hello")).toMatchObject({ kind: "refused", code: "call-unreadable" });
  expect(readCall(`#/called/${code}/at%3Dsoon`)).toMatchObject({ kind: "refused", code: "call-unreadable" });
  expect(readCall(`#/called/${code}/%E0%A4%A`)).toMatchObject({ kind: "refused", code: "call-unreadable" });
  const turned = `${code.slice(0, -1)}${code.endsWith("A") ? "B" : "A"}`;
  expect(readCall(callLink("https://field.example/", { ...call, code: turned }))).toMatchObject({
    kind: "refused",
    code: "sticker-mistyped",
  });
  const tail = encodeURIComponent(`at=${call.at}&items=fire-ice&drain=loud&tank=`);
  expect(readCall(`#/called/${code}/${tail}`)).toEqual(
    expect.objectContaining({ value: { code, at: call.at, items: ["ice"] } }),
  );
});

test("a drain that runs and an alarm are items of the visit's complaint", () => {
  expect(complaintItems(call)).toEqual(["noWater", "ice", "drainRuns", "alarm"]);
  expect(complaintItems({ code, at: call.at, items: [], drain: "silent" })).toEqual([]);
});
