import type { Said } from "./said.ts";

/** Why a table typed or read from a file cannot be taken. */
export const refusedTables: Readonly<Record<string, Said>> = {
  "empty-table": "The table is empty: a line of column names and a line a case are needed.",
  "column-twice": ({ column }) => `The column ${column} stands there twice: leave one.`,
  "unclosed-quote": ({ row }) => `A quotation mark in line ${row} is opened and never closed.`,
  "word-unknown": ({ name, text, words }) => `${name}: "${text}" is none of: ${words}.`,
  "not-a-count": ({ name, value }) => `${name}: ${value} is no whole number from 0.`,
  "no-number": ({ name }) => `${name}: no number comes out of such figures. Check their size and units.`,
  "not-a-share": ({ name, value }) => `${name}: ${value} is no share from 0 to below 1.`,
  "permeate-pump-lifts":
    "Read while the permeate pump lifts: drain and flow are not those of the parts. Read with the permeate to waste.",
  "below-zero": ({ name, value }) => `${name} cannot be below zero: ${value}.`,
};
