import { known, type Outcome, refused } from "@tapside/quantities";
import { readSticker } from "./sticker-code.ts";

/** What can be wrong as a kitchen sees it: the items of a visit's complaint that it is asked to tick. */
export const CALL_ITEMS = [
  "noWater",
  "weak",
  "leak",
  "taste",
  "smellChlorine",
  "smellOther",
  "cloudy",
  "ice",
  "scale",
  "noise",
] as const;
export type CallItem = (typeof CALL_ITEMS)[number];

/** What the people of a kitchen say of their unit before anybody drives. */
export interface KitchenCall {
  /** Code of the sticker on the unit. */
  readonly code: string;
  /** When it was said, ISO instant. */
  readonly at: string;
  readonly items: readonly CallItem[];
  /** The drain line, while nobody draws water. */
  readonly drain?: "runs" | "silent";
  /** The tank, pushed gently at its top. */
  readonly tank?: "heavy" | "light";
  /** The drain line has gone silent: the tank is full. */
  readonly full?: boolean;
  /** What an appliance shows. */
  readonly alarm?: string;
  readonly words?: string;
  readonly name?: string;
}

/** Longer words are cut: a link that a messenger breaks tells nothing. */
const LONGEST = 200;

/** The call as the tail of a link; every sign in it survives a messenger. */
export function writeCall(call: KitchenCall): string {
  const fields = {
    at: call.at,
    items: call.items.join("-"),
    drain: call.drain,
    tank: call.tank,
    full: call.full ? "yes" : undefined,
    alarm: call.alarm?.trim().slice(0, LONGEST),
    words: call.words?.trim().slice(0, LONGEST),
    name: call.name?.trim().slice(0, LONGEST),
  };
  const told = Object.entries(fields).filter((pair): pair is [string, string] => Boolean(pair[1]));
  return `${call.code}/${encodeURIComponent(new URLSearchParams(told).toString())}`;
}

/** The link that carries a call to the technician's phone. */
export const callLink = (appUrl: string, call: KitchenCall): string =>
  `${appUrl.replace(/#.*$/, "").replace(/\/?$/, "/")}#/called/${writeCall(call)}`;

/** A call from a link, or from a message that holds one. Refused: "call-unreadable", and what `readSticker` refuses. */
export function readCall(text: string): Outcome<KitchenCall> {
  const [, sticker, tail] = /#\/called\/([^/\s]+)\/(\S+)/.exec(text) ?? [];
  if (!sticker || !tail) return refused("call-unreadable");
  const code = readSticker(sticker);
  if (code.kind !== "known") return code;
  const said = new URLSearchParams(decoded(tail));
  const at = said.get("at") ?? "";
  if (!/^\d{4}-\d\d-\d\dT[\d:.]+Z$/.test(at) || Number.isNaN(Date.parse(at)))
    return refused("call-unreadable");
  const ticked = new Set(said.get("items")?.split("-"));
  return known({
    code: code.value,
    at,
    items: CALL_ITEMS.filter((item) => ticked.has(item)),
    ...oneOf("drain", said.get("drain"), ["runs", "silent"]),
    ...oneOf("tank", said.get("tank"), ["heavy", "light"]),
    ...(said.get("full") === "yes" && { full: true }),
    ...inWords("alarm", said.get("alarm")),
    ...inWords("words", said.get("words")),
    ...inWords("name", said.get("name")),
  });
}

function decoded(tail: string): string {
  try {
    return decodeURIComponent(tail);
  } catch {
    return "";
  }
}

const oneOf = <const K extends string, const V extends string>(
  field: K,
  said: string | null,
  values: readonly V[],
): { readonly [P in K]?: V } => {
  const value = values.find((one) => one === said);
  return (value ? { [field]: value } : {}) as { readonly [P in K]?: V };
};

const inWords = <K extends string>(field: K, said: string | null): { readonly [P in K]?: string } =>
  (said?.trim() ? { [field]: said.trim().slice(0, LONGEST) } : {}) as { readonly [P in K]?: string };

/** The items of the visit's complaint a call comes down to. */
export const complaintItems = (call: KitchenCall): readonly string[] => [
  ...call.items,
  ...(call.drain === "runs" ? ["drainRuns"] : []),
  ...(call.alarm ? ["alarm"] : []),
];
