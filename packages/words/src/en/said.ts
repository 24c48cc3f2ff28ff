/** A sentence, or how it is made from the details of a refusal. */
export type Said = string | ((detail: Readonly<Record<string, string | number>>) => string);
