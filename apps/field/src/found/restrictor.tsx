import type { RestrictorKind, Unit } from "@tapside/records";
import { unitFile, unitTitle } from "@tapside/records";
import {
  capillaryFlow,
  type Restrictor,
  restrictorAsFound,
  restrictorLPerH,
  usualRating,
} from "@tapside/reverse-osmosis";
import { shownIn } from "../look/read-number.ts";
import { Gone } from "../screens/gone.tsx";
import { useBook } from "../store/use-book.ts";
import { inDigits } from "../words/in-digits.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { FoundNumbers } from "./found-numbers.tsx";
import { kindOf } from "./kind-of.ts";
import { Kinds } from "./kinds.tsx";
import { restrictorSpecs } from "./specs.ts";
import { foundWords as words } from "./words.ts";

const KINDS: readonly RestrictorKind[] = ["rated", "capillary", "orifice", "measured"];
const LAWS = ["laminar", "orifice"] as const;

/** What hangs in the drain line: pressed, its numbers typed, and at once what it passes, warm and cold. */
export function RestrictorScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const { unit } = file;
  const kind = kindOf(unit);
  const write = (fields: Readonly<Record<string, string | null>>) => void live.write("unit", id, fields);
  return (
    <FoundNumbers
      key={`${kind} ${unit.restrictorLaw}`}
      unit={unit}
      title={words.restrictor}
      subtitle={unitTitle(file)}
      specs={
        kind && !(kind === "measured" && !unit.restrictorLaw)
          ? restrictorSpecs({ ...unit, restrictorKind: kind })
          : []
      }
      head={
        <>
          <Kinds
            name={words.restrictor}
            all={KINDS.map((one) => ({ id: one, label: words.kinds[one], hint: words.kindHints[one] }))}
            chosen={kind}
            onChoose={(one) => write({ restrictorKind: one === unit.restrictorKind ? null : one })}
          />
          {kind === "measured" ? (
            <Kinds
              name={words.lawAsk}
              all={LAWS.map((one) => ({ id: one, label: words.laws[one] }))}
              chosen={unit.restrictorLaw}
              onChoose={(one) => write({ restrictorLaw: one })}
            />
          ) : null}
        </>
      }
      said={(typed) => saidOf(typed, snapshot.book.settings.get("settings")?.pressureUnit ?? "psi")}
    />
  );
}

const { kPa: USUAL_KPA, temperatureC: WARM_C } = usualRating;
const COLD_C = 5;

function saidOf(unit: Partial<Unit>, pressureUnit: string): string {
  if (kindOf(unit) === undefined) return words.chooseKind;
  if (unit.restrictorKind === "measured" && !unit.restrictorLaw) return words.lawAsk;
  const found = restrictorAsFound(unit);
  if (found.kind !== "known") return `${sayWhyNot(found)} ${words.plateStands}`;
  return passes(found.value, pressureUnit);
}

function passes(restrictor: Restrictor, pressureUnit: string): string {
  const lPerH = (c: number) => restrictorLPerH(restrictor, USUAL_KPA, c);
  const less = Math.round(100 * (1 - lPerH(COLD_C) / lPerH(WARM_C)));
  const flow = `${inDigits((1000 * lPerH(WARM_C)) / 60, 2)}\u00a0mL/min`;
  const at = `${inDigits(Number(shownIn(USUAL_KPA, "kPa", pressureUnit)), 2)}\u00a0${pressureUnit}`;
  const says = `${words.passes(flow, at)}${words.colder(less)}`;
  if (restrictor.kind !== "capillary") return says;
  const { regime, reynolds } = capillaryFlow(restrictor, USUAL_KPA, WARM_C);
  return regime === "laminar" ? says : `${says} ${words.beyond(inDigits(reynolds, 2))}`;
}
