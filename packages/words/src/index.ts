export type { ClaimWords } from "./claim-words.ts";
export { writeDecimals } from "./decimal-signs.ts";
export { formatFigure } from "./format-figure.ts";
export { formatRange } from "./format-range.ts";
export { inSign } from "./in-sign.ts";
export type { KitchenWords } from "./kitchen-words.ts";
export { LANGUAGES, type Language, languageOf } from "./language.ts";
export type { DecimalSign, FindingWords, Messages } from "./messages.ts";
export { plainNumber } from "./plain-number.ts";
