import type { Assessment } from "@tapside/assessment";
import { codeOfUnit, stickerLink } from "@tapside/book";
import { absentPorts, freeze, leavesFilling, staysBypassed, type UnitFile } from "@tapside/records";
import type { KitchenWords, Messages } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";
import { signSvg } from "./internal/sign-svg.ts";
import { leftAtOf, tankFullBy } from "./tank-full-by.ts";

export interface KitchenCardRequest {
  readonly file: UnitFile;
  /** The last visit's judgement, where there is one: it knows how long the tank fills. */
  readonly assessment?: Assessment | undefined;
  readonly words: Messages;
  readonly kitchen: KitchenWords;
  /** Whom to ring. */
  readonly name: string;
  readonly phone: string;
  /** Where the app is reached by the kitchen's phones, if it is: the sign then opens the questions it is asked. */
  readonly appUrl?: string | undefined;
  /** ISO instant. */
  readonly issuedAt: string;
  readonly timeZone: string;
}

/**
 * One page that hangs at the unit: what it is, from when its water may be used, what to read out to the technician when the
 * tank is full, when to ring, what to leave alone. Its sign is the sticker's: it opens what a kitchen is asked, or holds the code as plain text
 * where the app is not reached from the kitchen.
 */
export function buildKitchenCard(request: KitchenCardRequest): RecordContent {
  const { file, kitchen, words, issuedAt, timeZone } = request;
  const code = file.unit.sticker ?? codeOfUnit(file.unit.id);
  const blocks = blocksOf(request, code);
  const day = new Date(issuedAt).toLocaleDateString(words.record.locale, { dateStyle: "long", timeZone });
  return {
    version: 1,
    language: words.language,
    title: kitchen.card.title,
    subtitle: [file.site.name, file.point.name, file.unit.name].filter(Boolean).join(", "),
    aside: ["", "", day, code],
    revision: 1,
    unit: file.unit.id,
    visit: file.visits.at(-1)?.id ?? "",
    issuedAt,
    inputsMark: freeze(JSON.parse(JSON.stringify(blocks)) as never).mark,
    temperatureForm: "",
    assessment: null,
    blocks,
  };
}

function blocksOf(request: KitchenCardRequest, code: string): readonly Block[] {
  const { file, kitchen, words, appUrl } = request;
  const { card } = kitchen;
  const appliances = file.appliances.map((one) => one.name).filter(Boolean);
  const list = (title: string, items: readonly string[]): Block => ({
    kind: "list",
    title,
    items,
    large: true,
  });
  return [
    ...whenFull(request),
    list(card.titles.full, [
      card.ring(request.name, request.phone),
      card.readOut.time,
      ...(absentPorts(file.unit).includes("tank") ? [] : [card.readOut.gauge]),
      card.readOut.silent,
    ]),
    list(
      card.titles.ring,
      card.ringWhen.map((item) => `– ${item}`),
    ),
    list(card.titles.leak, [card.shutValve(file.point.isolationValve ?? "")]),
    list(card.titles.never, card.never),
    list(card.titles.unit, [card.unit(appliances.join(", ")), card.tankHolds]),
    { kind: "figure", svg: signSvg(appUrl ? stickerLink(appUrl, code) : code), alt: code, heightPt: 72 },
    { kind: "paragraph", text: `${code}. ${appUrl ? card.signAsks : card.sign}` },
    { kind: "paragraph", quiet: true, text: `${words.caution("productUse")} ${words.localCode}` },
  ];
}

/** From when the water may be used, in the largest type of the page. */
function whenFull({ file, assessment, kitchen, words, issuedAt, timeZone }: KitchenCardRequest): Block[] {
  const { card } = kitchen;
  const visit = file.visits.at(-1);
  const strong = (text: string): Block => ({ kind: "paragraph", text, strong: true, large: true });
  if (visit && staysBypassed(visit)) return [strong(card.bypassed)];
  if (!visit || !leavesFilling(visit) || visit.answers.filling?.state === "seen") return [];
  const full = assessment && tankFullBy(assessment, leftAtOf(visit, issuedAt), issuedAt);
  if (!full) return visit.closed ? [] : [strong(card.fullNotKnown)];
  const time = (iso: string) => clockTime(iso, issuedAt, words.record.locale, timeZone);
  return [
    strong(card.notBefore(time(full.latest))),
    { kind: "paragraph", text: card.fullAbout(time(full.about)), large: true },
  ];
}

/** The time on the wall, with its weekday when it is not today's. */
function clockTime(iso: string, today: string, locale: string, timeZone: string): string {
  const weekday = (text: string) => new Date(text).toLocaleDateString(locale, { weekday: "long", timeZone });
  const time = new Date(iso).toLocaleTimeString(locale, { hour: "2-digit", minute: "2-digit", timeZone });
  return weekday(iso) === weekday(today) ? time : `${time}, ${weekday(iso)}`;
}
