import type { Kept, Unit } from "@tapside/records";
import { LINES, lineAsFound } from "@tapside/reverse-osmosis";
import { Band } from "../look/band.tsx";
import { firstUnit } from "../look/first-unit.ts";
import { shownIn } from "../look/read-number.ts";
import { useBook } from "../store/use-book.ts";
import { inDigits } from "../words/in-digits.ts";
import { kindOf } from "./kind-of.ts";
import { type FoundSpec, lineSpecs, restrictorSpecs } from "./specs.ts";
import { foundWords as words } from "./words.ts";

/** Restrictor and tubing in the set-up of a unit: what is said of them, and the way to say it. */
export function FoundBands({ unit }: { unit: Kept<Unit> }) {
  const { live, snapshot } = useBook();
  const pressure = snapshot.book.settings.get("settings")?.pressureUnit;
  const number = (spec: FoundSpec): readonly string[] => {
    const value = live.field(unit.id, spec.field);
    if (typeof value !== "number") return [];
    const shown = firstUnit(live, spec, value, pressure);
    return [`${inDigits(Number(shownIn(value, spec.baseUnit, shown)), 4)}\u00a0${shown}`];
  };
  const kind = kindOf(unit);
  const restrictor = kind && [
    words.kinds[kind],
    ...restrictorSpecs({ ...unit, restrictorKind: kind }).flatMap(number),
  ];
  const lines = LINES.filter((line) => lineAsFound(line, unit).kind === "known").map((line) =>
    [words.lineNames[line], ...lineSpecs(line).flatMap(number)].join(" "),
  );
  return (
    <>
      <Band press={{ to: `/unit/${unit.id}/restrictor` }}>
        <strong>{words.restrictor}</strong>
        <p className="note">{restrictor ? restrictor.join(", ") : words.restrictorHint}</p>
      </Band>
      <Band press={{ to: `/unit/${unit.id}/lines` }}>
        <strong>{words.lines}</strong>
        <p className="note">
          {lines.length > 0 ? lines.join(", ") : `${words.linesHint}, ${words.allDefault}`}
        </p>
      </Band>
    </>
  );
}
