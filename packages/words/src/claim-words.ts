/** What the claim file of one unit says beside the sentences of its records. */
export interface ClaimWords {
  readonly title: string;
  visits(count: number): string;
  readonly titles: Readonly<
    Record<"unit" | "water" | "limits" | "history" | "bypassed" | "parts" | "advice" | "records", string>
  >;
  readonly nothing: string;
  readonly notListed: string;
  nameplate(plate: string): string;
  readonly notWritten: string;
  permeate(litresPerHour: string): string;
  rejection(percent: number): string;
  atPressure(kPa: string): string;
  twoElements(arrangement: "parallel" | "series" | undefined): string;
  blended(percent: string): string;
  booster(kPa: string, litresPerHour: string): string;
  restrictor: {
    rated(litresPerHour: string, kPa: string): string;
    capillary(boreMm: string, lengthM: string): string;
    orifice(boreMm: string): string;
    measured(litresPerHour: string, kPa: string, law: "orifice" | "laminar"): string;
  };
  readonly lines: Readonly<Record<"feed" | "permeate" | "drain" | "outlet", string>>;
  line(name: string, lengthM: string, boreMm: string, usual: boolean): string;
  readonly permeatePump: string;
  tank(litres: string, two: boolean, vented: boolean): string;
  readonly store: string;
  place(place: string, site: string, from: string, until: string, why: string): string;
  owner(name: string, since: string): string;
  notDetectedAt(value: string): string;
  inVolume(litres: number): string;
  atLeast(value: number): string;
  atMost(value: number): string;
  scale(scale: string): string;
  done(tasks: string): string;
  foundBypassed(day: string): string;
  readonly nobodyAsked: string;
  readonly staysBypassed: string;
  readonly putInUse: string;
  readonly putInUseThatDay: string;
  seenAgain(day: string): string;
  readonly noLaterVisit: string;
  allowedUntil(day: string): string;
  seal(number: string): string;
  readonly part: string;
  fitted(day: string): string;
  readonly dayNotKnown: string;
  takenOut(day: string): string;
  readonly inService: string;
  lot(lot: string): string;
  readonly noLot: string;
  serial(serial: string): string;
  readonly stillOpen: string;
  record(day: string, revision: number, mark: string): string;
}
