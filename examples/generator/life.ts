import { dayAfter, daysBetween, workday, yearsBetween } from "./calendar.ts";
import { TECHNICIANS, type Technician } from "./instruments.ts";
import { supplyOn } from "./places.ts";
import { type Random, randomOf } from "./random.ts";
import type { UnitState } from "./state.ts";
import { NOTICED_AFTER, REPAIR, type Trouble } from "./troubles.ts";
import { LAST_DAY, mainOf, type UnitTruth } from "./unit-truth.ts";
import { type PortTruth, portTruth } from "./visit-truth.ts";

export type VisitKind = "commissioning" | "annual" | "callOut" | "filterOnly";

/** One visit as it really went. */
export interface VisitTruth {
  readonly number: number;
  readonly day: string;
  readonly kind: VisitKind;
  readonly technician: Technician;
  readonly found: UnitState;
  readonly foundPorts: PortTruth;
  readonly left: UnitState;
  readonly leftPorts: PortTruth;
  readonly done: readonly string[];
  /** Work that had to wait: the part was not in the van. */
  readonly waiting: readonly string[];
  /** Advice that was given and refused. */
  readonly refused: readonly string[];
}

interface Ongoing {
  elementSince: string;
  water: number;
  salt: number;
  filterAtM3: number;
  filtersSince: string;
  chargePsi: number;
  chargeSince: string;
  meterM3: number;
  meterOn: string;
  readonly gone: Set<Trouble>;
  readonly refused: Set<Trouble>;
}

/** Three years of a unit: wear, troubles, visits and what they changed. */
export function lifeOf(seed: string, unit: UnitTruth): readonly VisitTruth[] {
  const random = randomOf(seed, unit.key, "life");
  const now = beginning(unit, random);
  const visits: VisitTruth[] = [];
  const waitingList = yearlyVisits(unit, random);
  for (let next = waitingList.shift(); next; next = waitingList.shift()) {
    const call = earliestCall(unit, now, next.day, random);
    const planned = call ?? next;
    if (call) waitingList.unshift(next);
    if (planned.day > LAST_DAY) continue;
    const last = visits.at(-1);
    if (last && daysBetween(last.day, planned.day) < 7) continue;
    const visit = visitOn(seed, unit, now, { ...planned, number: visits.length + 1 }, random);
    visits.push(visit);
    if (visit.waiting.length > 0) {
      const day = workday(dayAfter(visit.day, random.whole(12, 30)));
      waitingList.unshift({ day, kind: "callOut" });
    }
    waitingList.sort((a, b) => (a.day < b.day ? -1 : 1));
  }
  return visits;
}

interface Planned {
  readonly day: string;
  readonly kind: VisitKind;
}

function beginning(unit: UnitTruth, random: Random): Ongoing {
  const age = unit.commissioned ? 0 : random.whole(200, 1200);
  const since = dayAfter(unit.begins, -age);
  const filters = unit.commissioned ? unit.begins : dayAfter(unit.begins, -random.whole(300, 380));
  return {
    elementSince: since,
    water: unit.water,
    salt: unit.salt,
    filterAtM3: unit.commissioned ? 0 : -random.between(30, 60),
    filtersSince: filters,
    chargePsi: unit.chargePsi,
    chargeSince: unit.commissioned ? unit.begins : filters,
    meterM3: unit.commissioned ? 0 : random.between(60, 300),
    meterOn: unit.begins,
    gone: new Set(),
    refused: new Set(),
  };
}

function yearlyVisits(unit: UnitTruth, random: Random): Planned[] {
  const out: Planned[] = [{ day: unit.begins, kind: unit.commissioned ? "commissioning" : "annual" }];
  const halfYearly = random.chance(0.2);
  for (let year = 1; year <= 3; year++) {
    const day = workday(dayAfter(unit.begins, 365 * year + random.whole(-14, 18)));
    if (halfYearly) out.push({ day: workday(dayAfter(day, -183)), kind: "filterOnly" });
    out.push({ day, kind: "annual" });
  }
  return out.sort((a, b) => (a.day < b.day ? -1 : 1));
}

/** The first trouble a kitchen calls about before a day; each draw of patience is made once, by the trouble's own words. */
function earliestCall(unit: UnitTruth, now: Ongoing, before: string, random: Random): Planned | undefined {
  void random;
  const calls = unit.troubles
    .filter((one) => !now.gone.has(one) && !now.refused.has(one) && NOTICED_AFTER[one.id])
    .map((one) => {
      const [low, high] = NOTICED_AFTER[one.id]!;
      return workday(dayAfter(one.onset, randomOf(unit.key, one.id, one.onset).whole(low, high)));
    })
    .filter((day) => day < before && day > now.meterOn)
    .sort();
  return calls[0] ? { day: calls[0], kind: "callOut" } : undefined;
}

function stateOn(unit: UnitTruth, now: Ongoing, day: string): UnitState {
  const years = yearsBetween(now.elementSince, day);
  const litres = now.meterM3 - now.filterAtM3;
  return {
    elementSince: now.elementSince,
    water: now.water * Math.exp(-unit.waterLost * years),
    salt: now.salt * Math.exp(unit.saltGained * years),
    filterFactor: 1 + Math.max(0, litres) / unit.filterLifeM3,
    chargePsi: Math.max(0, now.chargePsi - unit.chargeLostPsi * yearsBetween(now.chargeSince, day)),
    meterM3: now.meterM3,
    troubles: unit.troubles.filter((one) => one.onset <= day && !now.gone.has(one)),
  };
}

/** Water bought since the last visit: what the kitchen used and what ran at night while something leaked. */
function meterOnwards(unit: UnitTruth, now: Ongoing, day: string, temperatureC: number): void {
  const days = Math.max(0, daysBetween(now.meterOn, day));
  const state = stateOn(unit, now, day);
  const ports = portTruth(unit, state, day, temperatureC);
  const leaking = state.troubles.find(
    (one) => one.id === "checkValveFailed" || one.id === "shutOffStuckOpen",
  );
  const leakDays = leaking ? Math.min(days, Math.max(0, daysBetween(leaking.onset, day))) : 0;
  const used = (days * unit.permeateLPerDay) / Math.max(0.05, ports.efficiency);
  now.meterM3 += (used + leakDays * ports.drainAtNightLPerDay) / 1000;
  now.meterOn = day;
}

function visitOn(
  seed: string,
  unit: UnitTruth,
  now: Ongoing,
  planned: Planned & { readonly number: number },
  random: Random,
): VisitTruth {
  const { day, kind, number } = planned;
  const temperatureC = supplyOn(mainOf(unit), day).temperatureC + 0.8 * random.normal();
  meterOnwards(unit, now, day, temperatureC);
  const found = stateOn(unit, now, day);
  const { done, waiting, refused } = workOf(unit, now, found, kind, day, random);
  const left = stateOn(unit, now, day);
  const ports = (state: UnitState) => portTruth(unit, state, day, temperatureC);
  const technician = randomOf(seed, unit.key, number, "who").pick(TECHNICIANS);
  return {
    number,
    day,
    kind,
    technician,
    found,
    foundPorts: ports(found),
    left,
    leftPorts: ports(left),
    done,
    waiting,
    refused,
  };
}

const FILTER_MONTHS_DAYS = 300;
/** The trade renews an element after two years; a visit up to two months before does it too. */
const ELEMENT_DUE_DAYS = 670;

interface Work {
  readonly done: Set<string>;
  /** Not in the van. */
  readonly waiting: Set<string>;
  readonly refused: Set<string>;
}

function workOf(
  unit: UnitTruth,
  now: Ongoing,
  found: UnitState,
  kind: VisitKind,
  day: string,
  random: Random,
): Pick<VisitTruth, "done" | "waiting" | "refused"> {
  const work: Work = { done: new Set(), waiting: new Set(), refused: new Set() };
  const { done, waiting, refused } = work;
  if (kind !== "commissioning" && kind !== "callOut" && daysBetween(now.filtersSince, day) > 150)
    if (kind === "filterOnly" || daysBetween(now.filtersSince, day) > FILTER_MONTHS_DAYS)
      for (const one of ["replace:sediment", "replace:carbon"]) done.add(one);
  repair(now, found, kind, work, random);
  if (kind === "annual" && Math.abs(found.chargePsi - unit.chargePsi) > 2) done.add("setAirCharge");
  const made = renewWhenDue(unit, now, kind, day, work) ? randomOf(unit.key, "newElement", day) : random;
  if (kind === "commissioning") done.clear();
  for (const step of waiting) done.delete(step);
  apply(unit, now, found, work, day, made);
  return { done: [...done], waiting: [...waiting], refused: [...refused].filter((one) => !done.has(one)) };
}

function repair(now: Ongoing, found: UnitState, kind: VisitKind, work: Work, random: Random): void {
  for (const one of found.troubles) {
    if (now.refused.has(one) || (kind === "filterOnly" && one.id !== "preFilterClogged")) continue;
    const steps = REPAIR[one.id] ?? [];
    const dear = steps.some((step) => step === "replace:element" || step === "replace:tank");
    const luck = random.unit();
    if (steps.length > 0 && dear && luck > 0.9) {
      now.refused.add(one);
      for (const step of steps) work.refused.add(step);
    } else if (steps.length > 0 && luck > 0.72 && kind !== "callOut")
      for (const step of steps) work.waiting.add(step);
    else {
      now.gone.add(one);
      for (const step of steps) work.done.add(step);
    }
  }
}

/** An element of two years is renewed, mostly; nothing is decided twice about one that a trouble already spoke of. */
function renewWhenDue(unit: UnitTruth, now: Ongoing, kind: VisitKind, day: string, work: Work): boolean {
  const spoken = [work.done, work.waiting, work.refused].some((steps) => steps.has("replace:element"));
  const due = daysBetween(now.elementSince, day) >= ELEMENT_DUE_DAYS;
  if (kind === "filterOnly" || spoken || !due) return false;
  const luck = randomOf(unit.key, "element", day).unit();
  const steps = luck < 0.85 ? work.done : luck < 0.93 && kind === "annual" ? work.waiting : work.refused;
  steps.add("replace:element");
  return true;
}

function apply(
  unit: UnitTruth,
  now: Ongoing,
  found: UnitState,
  { done }: Work,
  day: string,
  random: Random,
): void {
  if (done.has("replace:sediment") || done.has("replace:carbon")) {
    now.filterAtM3 = now.meterM3;
    now.filtersSince = day;
  }
  if (done.has("replace:element")) {
    now.elementSince = day;
    now.water = Math.exp(0.06 * random.normal());
    now.salt = Math.exp(0.15 * random.normal());
    for (const one of found.troubles) if (REPAIR[one.id]?.includes("replace:element")) now.gone.add(one);
  }
  if (done.has("setAirCharge") || done.has("replace:tank")) {
    now.chargePsi = unit.chargePsi;
    now.chargeSince = day;
  }
}
