import type { Assessment, Figure, Finding } from "@tapside/assessment";
import { freeze, type KeptVisit, staysBypassed, type UnitFile } from "@tapside/records";
import { formatFigure, inSign, type KitchenWords, type Messages } from "@tapside/words";
import type { Block, RecordContent } from "./block.ts";

export interface KitchenPageRequest {
  readonly file: UnitFile;
  /** The visit it tells of, judged. */
  readonly visitId: string;
  readonly assessment: Assessment;
  readonly words: Messages;
  readonly kitchen: KitchenWords;
  /** ISO instant. */
  readonly issuedAt: string;
  readonly timeZone: string;
  /** Whether the unit keeps up with its kitchen, by `kitchenDay`. */
  readonly kitchenDay?: readonly Block[];
}

/** One page for the chef: what the water is, what it does to each appliance, what the kitchen looks after itself, what is due. */
export function buildKitchenPage(request: KitchenPageRequest): RecordContent {
  const { file, visitId, assessment, words, kitchen, issuedAt } = request;
  const visit = file.visits.find((one) => one.id === visitId);
  if (!visit) throw new Error(`visit ${visitId} is not in the unit's file`);
  const blocks = [
    ...waterBlock(request, visit),
    ...file.appliances.map((appliance) => applianceBlock(appliance, !staysBypassed(visit), request)),
    ...(request.kitchenDay ?? []),
    { kind: "list", title: kitchen.page.titles.checks, items: kitchen.page.checks } as const,
    dueBlock(request),
    ...openBlock(request),
    { kind: "paragraph", text: kitchen.page.manualRules } as const,
    { kind: "paragraph", text: words.doesNotTestFor } as const,
    { kind: "paragraph", quiet: true, text: words.caution("productUse") } as const,
  ];
  return {
    version: 1,
    language: words.language,
    title: kitchen.page.title,
    subtitle: [file.site.name, file.point.name, file.unit.name].filter(Boolean).join(", "),
    aside: [dayOf(visit.startedAt ?? issuedAt, request), words.visitKinds[visit.kind ?? "annual"]],
    revision: 1,
    unit: file.unit.id,
    visit: visitId,
    issuedAt,
    inputsMark: freeze(JSON.parse(JSON.stringify(blocks)) as never).mark,
    temperatureForm: assessment.temperatureForm,
    assessment: null,
    blocks,
  };
}

const dayOf = (iso: string, { words, timeZone }: KitchenPageRequest): string =>
  new Date(iso).toLocaleDateString(words.record.locale, { dateStyle: "long", timeZone });

function waterBlock({ assessment, words, kitchen: { page } }: KitchenPageRequest, visit: KeptVisit): Block[] {
  const { asFound, asLeft } = assessment.figures;
  const { readings } = visit;
  const newest = asLeft.deliveredTds.kind === "known" ? asLeft.deliveredTds : asFound.deliveredTds;
  const feed = readings.asFound.feedTds;
  const hard = readings.asFound.hardness;
  const bypassed = staysBypassed(visit);
  const taken = asLeft.percentReduction.kind === "known" ? asLeft.percentReduction : asFound.percentReduction;
  const raw = (one: { readonly raw: string; readonly unit: string }) =>
    `${inSign(one.raw, words.decimalSign)} ${words.unit(one.unit)}`;
  const items = [
    bypassed ? page.bypassed(visit.answers.bypass?.until ?? "") : "",
    feed && feed.value !== null ? page.feed(raw(feed)) : "",
    newest.kind === "known" && !bypassed ? page.delivered(said(newest.value, words)) : "",
    taken.kind === "known" && !bypassed ? page.takenOut(Math.round(taken.value.value)) : "",
    hard && hard.value !== null ? page.hardness(raw(hard)) : "",
  ].filter(Boolean);
  return [{ kind: "list", title: page.titles.water, items: items.length > 0 ? items : [page.notRead] }];
}

function said(figure: Figure, words: Messages): string {
  const { text, uText } = formatFigure(figure, words.decimalSign);
  return `${text}${uText && ` ± ${uText}`} ${words.unit(figure.unit)}`;
}

type Appliance = UnitFile["appliances"][number];

/** Past a bypass nothing is said of what the unit makes: it does not get there. */
function applianceBlock(appliance: Appliance, fromUnit: boolean, request: KitchenPageRequest): Block {
  const { kitchen, words } = request;
  const type = appliance.type ?? "other";
  return {
    kind: "list",
    title: appliance.name || words.appliances[type],
    items: [
      ...(fromUnit ? judged(appliance, request) : []),
      kitchen.page.does[type],
      kitchen.page.care[type],
    ],
  };
}

/** What was judged of the water for one appliance, by its label and by published needs: names only, as left where that was judged. */
function judged(
  appliance: Appliance,
  { assessment, words, kitchen: { page } }: KitchenPageRequest,
): string[] {
  const mine = assessment.findings.filter((one) => one.detail?.appliance === appliance.name);
  const asLeft = mine.filter((one) => one.phase === "asLeft");
  const names = (verdicts: readonly string[]) => {
    const all = (asLeft.length > 0 ? asLeft : mine)
      .filter((one) => verdicts.includes(one.verdict))
      .flatMap(quantitiesOf);
    return [...new Set(all.map((id) => words.quantity(id)))];
  };
  const [outside, unsure] = [names(["outside"]), names(["cannotTell", "tooClose"])];
  const kept = names(["within"]).filter((name) => !outside.includes(name));
  const open = unsure.filter((name) => !outside.includes(name) && !kept.includes(name));
  return [
    outside.length > 0 ? page.outside(outside.join(", ")) : "",
    kept.length > 0 ? page.kept(kept.join(", ")) : "",
    open.length > 0 ? page.notTold(open.join(", ")) : "",
    appliance.limits.length === 0 ? page.noLimits : "",
  ].filter(Boolean);
}

function quantitiesOf({ id, detail = {} }: Finding): readonly string[] {
  if (id === "delivered" || id.startsWith("delivered:")) return [String(detail.quantity ?? "tds")];
  if (id.startsWith("need:")) return [id.slice("need:".length)];
  return String(detail.kept ?? detail.open ?? "")
    .split(" ")
    .filter(Boolean);
}

function dueBlock({ assessment, words, kitchen: { page } }: KitchenPageRequest): Block {
  const items = assessment.due.map((item) => {
    const role = words.roles[item.role as keyof Messages["roles"]] ?? item.role;
    return `${page.dueBy(role, item.byDate ?? "")}${item.overdue ? page.dueNow : ""}`;
  });
  return { kind: "list", title: page.titles.next, items: items.length > 0 ? items : [page.nothingDue] };
}

const openBlock = ({ file, words, kitchen: { page } }: KitchenPageRequest): Block[] =>
  file.openPoints.length === 0
    ? []
    : [
        {
          kind: "list",
          title: page.titles.open,
          items: file.openPoints.map((point) => words.openPoint(point)),
        },
      ];
