import { applianceUse } from "@tapside/book";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { AmountEntry } from "./amount-entry.tsx";
import { counterSaid } from "./counter-said.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

type Counted = Readonly<Record<string, { readonly value: number; readonly unit: string }>>;

/** The appliances' own counters, one number each; blank is passed over. */
export function Counters({ open }: { open: OpenVisit }) {
  const { go, hint, steps } = useGoOn(open, "counters");
  const given = open.visit.answers.counters;
  const [typed, setTyped] = useState<Counted>(given ?? {});
  const counted = open.file.appliances.filter((one) => one.counter || given?.[one.id]);
  const use = applianceUse(open.file);
  const type = (id: string, unit: string, value: number | undefined) => {
    const { [id]: _, ...others } = typed;
    setTyped(value === undefined ? others : { ...others, [id]: { value, unit } });
  };
  const keep = () => {
    open.write({ "answer:counters": { ...typed } });
    go();
  };
  return (
    <Screen
      title={words.titles.counters!}
      ticks={<VisitTicks steps={steps} here="counters" />}
      back={undoPress(open)}
      middle={photoPress(open, "counters")}
      next={{ label: Object.keys(typed).length > 0 ? words.next : words.pass, hint, onPress: keep }}
    >
      {counted.length === 0 ? <p className="band">{words.noCounters}</p> : null}
      {counted.map((one) => {
        const unit = given?.[one.id]?.unit ?? one.counter ?? "h";
        const last = use.find((line) => line.appliance === one.id);
        return (
          <div key={one.id}>
            <AmountEntry
              label={one.name ?? ""}
              unit={unit}
              value={typed[one.id]?.value}
              decimalSign={decimalSignOf(open.live.snapshot().book.settings.get("settings"))}
              onChange={(value) => type(one.id, unit, value)}
            />
            {last ? (
              <Band tint>
                <p className="note">{counterSaid(last)}</p>
              </Band>
            ) : null}
          </div>
        );
      })}
    </Screen>
  );
}
