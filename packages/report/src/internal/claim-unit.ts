import type { Book, UnitFile } from "@tapside/records";
import type { Messages } from "@tapside/words";
import { plateSaid } from "../plate-said.ts";
import type { ClaimShown } from "./claim-shown.ts";

/** Its nameplate, where it hung and whose it was. */
export function unitLines(
  book: Book,
  { unit }: UnitFile,
  shown: ClaimShown,
  words: Messages,
): readonly string[] {
  const { claim: says } = words;
  const places = shown.places.map((span) => {
    const point = book.point.get(span.point);
    const site = book.site.get(point?.site ?? "")?.name ?? "";
    return says.place(point?.name ?? says.store, site, span.from ?? "", span.until ?? "", span.why ?? "");
  });
  const owners = shown.owners.map((one) => says.owner(one.owner, one.since));
  return [says.nameplate(plateSaid(unit, words) || says.notWritten), ...places, ...owners];
}

/** What each appliance takes, by whose word. */
export const limitLines = (file: UnitFile, words: Messages): readonly string[] =>
  file.appliances.flatMap((appliance) =>
    appliance.limits.map((limit) =>
      [
        `${appliance.name}: ${words.quantity(limit.quantity ?? "tds")}`,
        limit.low !== undefined ? words.claim.atLeast(limit.low) : "",
        limit.high !== undefined ? words.claim.atMost(limit.high) : "",
        words.unit(limit.unit ?? ""),
        limit.scale ? words.claim.scale(limit.scale) : "",
        limit.source ? `(${[limit.source, limit.sourceDate].filter(Boolean).join(", ")})` : "",
      ]
        .filter(Boolean)
        .join(" "),
    ),
  );

/** A part: when it was fitted and taken out, its lot and serial number. */
export const partLine = (part: UnitFile["parts"][number], words: Messages): string =>
  [
    part.role ? words.roles[part.role] : words.claim.part,
    words.claim.fitted(part.fittedOn ?? words.claim.dayNotKnown),
    part.removedOn ? words.claim.takenOut(part.removedOn) : words.claim.inService,
    part.lot ? words.claim.lot(part.lot) : words.claim.noLot,
    part.serial ? words.claim.serial(part.serial) : "",
  ]
    .filter(Boolean)
    .join(", ");
