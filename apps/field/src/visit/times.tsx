import { useState } from "react";
import { Screen } from "../look/screen.tsx";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { AmountEntry } from "./amount-entry.tsx";
import { undoPress, useGoOn } from "./go-on.ts";
import { kindWords as words } from "./kind-words.ts";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords } from "./words.ts";

/** Arrival, departure, minutes worked, who else was there. Filled in by the clock; corrected here. */
export function Times({ open }: { open: OpenVisit }) {
  const { hint, go } = useGoOn(open, "times");
  const { visit } = open;
  const given = visit.answers.times;
  const [arrived, setArrived] = useState(localTime(given?.arrivedAt ?? visit.startedAt));
  const [left, setLeft] = useState(localTime(given?.leftAt));
  const [minutes, setMinutes] = useState(given?.minutes);
  const [others, setOthers] = useState(visit.answers.others?.names ?? "");
  const [orderNumber, setOrderNumber] = useState(visit.orderNumber ?? "");
  const [quoteWanted, setQuoteWanted] = useState(visit.quoteWanted ?? "");
  const keep = () => {
    const leftAt = instantOf(left, visit.startedAt);
    open.write({
      "answer:times": {
        arrivedAt: instantOf(arrived, visit.startedAt) ?? visit.startedAt ?? null,
        ...(leftAt && { leftAt }),
        ...(minutes !== undefined && { minutes }),
      },
      orderNumber: orderNumber.trim() || null,
      quoteWanted: quoteWanted.trim() || null,
      "answer:others": others.trim() ? { names: others.trim() } : null,
    });
    go();
  };
  return (
    <Screen
      title={words.timesTitle}
      back={undoPress(open)}
      next={{ label: visitWords.next, hint, onPress: keep }}
    >
      <TextEntry label={words.arrived} value={arrived} onChange={setArrived} type="time" />
      <TextEntry label={words.leftAt} value={left} onChange={setLeft} type="time" />
      <AmountEntry
        label={words.minutesWorked}
        unit="min"
        value={minutes}
        decimalSign={decimalSignOf(open.live.snapshot().book.settings.get("settings"))}
        onChange={setMinutes}
      />
      <TextEntry label={words.others} value={others} onChange={setOthers} />
      <TextEntry label={words.orderNumber} value={orderNumber} onChange={setOrderNumber} />
      <TextEntry label={words.quoteWanted} value={quoteWanted} onChange={setQuoteWanted} />
    </Screen>
  );
}

const two = (n: number) => String(n).padStart(2, "0");

function localTime(iso: string | undefined): string {
  if (!iso) return "";
  const at = new Date(iso);
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** A time of day on the day of the visit. */
function instantOf(time: string, startedAt: string | undefined): string | undefined {
  const parts = /^(\d{2}):(\d{2})/.exec(time);
  if (!parts) return undefined;
  const at = new Date(startedAt ?? Date.now());
  at.setHours(Number(parts[1]), Number(parts[2]), 0, 0);
  return at.toISOString();
}
