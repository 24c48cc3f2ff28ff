import type { BookWords } from "./book-words.ts";

export const bookWordsEn: BookWords = {
  nothingDue: "nothing due",
  carry: (count, part) => `carry ${count} × ${part}`,
  inVan: (count, short) => `in the van ${count}${short > 0 ? `, short ${short}` : ""}`,
  noMonth: (typed) => `"${typed}" is no month written as 2026-11.`,
  monthOf: (month, sites, visits) => `${month}: ${sites} sites, ${visits} visits`,
  month: { visits: "visits", outside: "outside", parts: "parts", due: "due", open: "open" },
  dueCount: (overdue, soon) => `${overdue} overdue, ${soon} within 31 days`,
  openCount: (points, bypassed) => `${points} ${points === 1 ? "point" : "points"}, ${bypassed} bypassed`,
  vanLine: (part, inVan, used, ordered, countAgain) =>
    `${part}: ${inVan} in the van, ${used} used, ${ordered} ordered${countAgain ? "; count again" : ""}`,
  dueSoon: (count, part, short, toOrder) =>
    `due within 31 days: ${count} × ${part}${short === undefined ? ", not counted" : `, short ${short}, to order ${toOrder}`}`,
  vanNotCounted: "Nothing in this van was ever counted: nothing can be said to be short.",
  likely: (odds, part, stops) => `${odds} ${part}, over ${stops} ${stops === 1 ? "stop" : "stops"}`,
  score: {
    told: (inside, told) =>
      `${inside} of ${told} ${told === 1 ? "reading" : "readings"} of sound units lay where they were told to lie`,
    elements: (kept, changed, good) =>
      `elements: ${kept} kept past their day as good, ${changed} changed, ${good} changed although good`,
    callBacks: (back, visits) =>
      `${back} of ${visits} ${visits === 1 ? "visit" : "visits"} called back within 30 days`,
    cause: (found, place, first) =>
      place === 1 ? `found ${found}: named first` : `found ${found}: named ${place}., first ${first}`,
    noCause: "No cause was put right and confirmed yet.",
    person: (name, visits, back) =>
      `${name}: ${visits} ${visits === 1 ? "visit" : "visits"}, ${back} called back`,
  },
  someOf: (names, count) =>
    `${names.join("; ")}${count > names.length ? `; and ${count - names.length} more` : ""}`,
  whichUnit: (units) => `Several units: name one with --unit: ${units}.`,
  noSuchUnit: (wanted, units) => `There is no unit "${wanted}" in this file. There are: ${units}.`,
  noUnitOfSticker: (code) => `No unit of this book carries the sticker ${code}.`,
  noneLikely: "No part is wanted with one in ten or more.",
  noDay: (typed) => `"${typed}" is no day written as 2026-11-25.`,
  nameAFile: "Name an exported file.",
  nameAList: "Name a list: tapside import LIST.csv -o OUT.tapside.json",
  counted: (newSites, newUnits, known) =>
    `${newSites} new sites, ${newUnits} new units, ${known} already there`,
  columnNotTaken: (name) => `column ${name} is not taken in`,
  lineRefused: (line, why) => `line ${line} refused: ${why}`,
  record: (sound, mark, visit, revision, again) =>
    `${sound ? "sound " : "BROKEN"} ${mark} visit ${visit}, revision ${revision}${sound ? `; ${again}` : ""}`,
  records: (count, broken, otherwise) =>
    `${count} ${count === 1 ? "record" : "records"}, ${broken} broken${otherwise > 0 ? `, ${otherwise} JUDGED OTHERWISE` : ""}`,
  noInputs: "cannot be judged again: it keeps no inputs",
  judgedTheSame: "judged again: the same",
  judgedOtherwise: (rulesNow, rulesThen, differs) =>
    rulesThen === rulesNow
      ? `judged again by the same rules OTHERWISE: ${differs}`
      : `judged again by rules ${rulesNow}, it was by ${rulesThen === undefined ? "older rules without a number" : `rules ${rulesThen}`}, otherwise: ${differs}`,
  missing: (names, count) => `Cannot tell: ${names} ${count > 1 ? "are" : "is"} missing.`,
  noSuchVisit: "There is no such visit with its unit in this file.",
  noCounts: "The file of counts has no version and counts in it.",
  mostLikely: (unit) => `${unit}: most likely (from the model, not from field counts)`,
  speaksFor: "for",
  speaksAgainst: "against",
  howLarge: (sizes) => `how large: ${sizes}`,
  unexplained: "Nothing I know explains these readings: read them again.",
  nextTest: (test, minutes) => `Next test: ${test}, ${minutes}`,
  nextRepair: (cause, sure) =>
    `Next: put right: ${cause}${sure ? "" : " (the quickest way to know)"}, then measure again`,
  nextNothing: "Next: nothing. No cause I know is at work",
  notSeparable: (causes) => `Next: no reading here separates ${causes}`,
  near: (value, odds, cause) => `near ${value} (${odds}): ${cause}`,
  repair: (cause, parts, minutes, first) =>
    `${cause}: ${parts}, ${minutes}${first ? `; first put right or rule out: ${first}` : ""}`,
  noPart: "no part",
  measureAgain: (tests) => `measure again: ${tests}`,
  neighbours: {
    same: "reads what its neighbours read",
    waterMoved: "reads what its neighbours read: the water has changed",
    thisOne: "its neighbours agree with each other, not with it: meter or tap",
    cannotTell: "one neighbour reads otherwise: water or meter",
  },
  neighbour: (on, title, own, others, said) => `${on} ${title}: ${own} µS/cm; others ${others}: ${said}`,
  noNeighbours: "No unit has neighbours on the same water that were read within 14 days.",
  meters: {
    agrees: "agrees with other meters",
    high: "reads high against other meters",
    low: "reads low against other meters",
    cannotTell: "too few comparisons to say",
  },
  meter: (name, lines, said, off) => `${name}: ${lines} lines, ${said}${off ? ` (${off} %)` : ""}`,
  noMeters: "No meter of dissolved solids is in this file.",
  nameALog: "Name a file: tapside sensor LOG.csv",
  sensor: (count, from, until) => `${count} lines, ${from} to ${until}`,
  span: (low, high, unit) => `${low} to ${high} ${unit}`,
  alarms: (count) => `${count} alarms`,
  counter: (on, title, value, unit) => `${on} ${title}: ${value} ${unit}`,
  perDay: (value, unit, since) => `${value} ${unit} a day since ${since}`,
  noCounters: "No counter of an appliance was read in this file.",
  kitchenWants: (verb) =>
    `Say where to, and a time as 2026-11-25T08:00Z: tapside ${verb} FILE --unit ID -o OUT.pdf`,
  kitchenNoVisit: "The unit has no visit yet: there is nothing to say of its water.",
};
