import type { Context } from "@tapside/assessment";
import { kitchenOfUnit } from "@tapside/book";
import { askedOf, type Band, leastRemedy, type Remedy, remedies } from "@tapside/kitchen";
import { converted } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import { inSign, type KitchenWords, type Messages } from "@tapside/words";
import type { Block } from "./block.ts";

interface Said {
  readonly words: Messages;
  readonly kitchen: KitchenWords;
}

/**
 * Whether a unit keeps up with its kitchen's busy day, in plain words; nothing where no litres were told or the unit
 * cannot be worked out.
 */
export function kitchenDay(file: UnitFile, context: Context, said: Said): readonly Block[] {
  const told = kitchenOfUnit(file, context);
  if (told.kind !== "known") return [];
  const { uses, situation, madeRelative } = told.value;
  const tried = remedies(told.value, { madeRelative });
  const now = tried[0]?.answer;
  if (now?.kind !== "known") return [];
  const { day } = said.kitchen;
  const asked = askedOf(uses);
  const serves = day.serves(...ends(now.value.serves, said), situation.conditions.temperatureC.toFixed(0));
  return [
    {
      kind: "list",
      title: day.title,
      items: [
        day.asked(asked.value.toFixed(0), (2 * asked.u).toFixed(0)),
        `${serves}: ${day.verdicts[now.value.verdict]}.`,
        ...(now.value.verdict === "keepsUp" ? [] : [help(leastRemedy(tried), said)]),
        day.estimate,
      ],
    },
  ];
}

const litres = (value: number, { words }: Said): string =>
  inSign(value.toFixed(value < 9.5 ? 1 : 0), words.decimalSign);

const ends = ({ low, high }: Band, said: Said) => [litres(low, said), litres(high, said)] as const;

function help(least: Remedy | undefined, said: Said): string {
  const { day } = said.kitchen;
  if (least?.answer.kind !== "known") return day.nothingTried;
  const { id, chargeKPaGauge: charge } = least;
  const air = charge === undefined ? [] : [day.air(converted(charge, "kPa", "psi").toFixed(0))];
  return day.enoughWith([day.remedies[id], ...air].join(", "), ...ends(least.answer.value.serves, said));
}
