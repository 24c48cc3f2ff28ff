import type { Said } from "./said.ts";

/** Why a row of a list, or a sticker, is not taken. */
export const refusedLists: Readonly<Record<string, Said>> = {
  "list-empty": "The file has no head line with the names of columns.",
  "list-column-missing": ({ column }) => `The file has no column "${column}". Nothing was taken in.`,
  "list-column-twice": ({ column }) => `The column "${column}" stands there twice. Nothing was taken in.`,
  "list-too-long": ({ lines, most }) => `The file has ${lines} lines; ${most} can be taken in at once.`,
  "row-no-such-time": ({ column, text }) => `${column}: "${text}" is no time written as 2026-11-25 08:00.`,
  "row-says-nothing": "There is neither a value nor an alarm.",
  "row-unclosed-quote": "A quote is opened and never closed; what follows it is not read.",
  "row-too-long": ({ cells, columns, row }) =>
    row === undefined
      ? `${cells} cells for ${columns} columns: is a comma not in quotes?`
      : `Line ${row} has more values than there are columns.`,
  "row-without-site": "There is no site.",
  "row-unkeepable-text": ({ column }) => `${column} holds a sign that cannot be kept.`,
  "row-not-yes-or-no": ({ column, text }) => `${column}: "${text}" is neither yes nor no.`,
  "row-not-a-type": ({ column, text, types }) => `${column}: "${text}" is none of ${types}.`,
  "row-no-such-day": ({ column, text }) => `${column}: "${text}" is no day written as 2026-11-25.`,
  "row-not-a-number": ({ column, text }) => `${column}: "${text}" is not a number.`,
  "row-out-of-range": ({ column, text, low, high }) =>
    `${column}: ${text} is hardly possible; ${low} to ${high} can be.`,
  "row-code-taken": ({ text }) => `The site code ${text} belongs to another site of the list.`,
  "row-twice": ({ column, text, line }) => `${column} ${text} stands in line ${line} already.`,
  "sticker-unreadable": "This is no code of a sticker: eight letters and digits.",
  "call-unreadable": "This is no message from a kitchen, or it broke on its way. Ask for it once more.",
  "sticker-mistyped": "One sign of this code is wrong. Look again.",
};
