import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { kindWords as words } from "./kind-words.ts";
import { photoPress } from "./photo.tsx";
import type { CheckId } from "./plans.ts";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords } from "./words.ts";

/** Lists where everything listed should be so, and only what is not so is tapped. A complaint is told the other way round. */
const BY_EXCEPTION: ReadonlySet<CheckId> = new Set(["premises", "shown"]);

/** A list that is ticked off by thumb. */
export function Check({ open, check }: { open: OpenVisit; check: CheckId }) {
  const { go, hint, steps } = useGoOn(open, check);
  const { title, items } = messages.visit.checks[check];
  const all = Object.keys(items);
  const given = open.visit.answers[check];
  const byException = BY_EXCEPTION.has(check);
  const [tapped, setTapped] = useState<readonly string[]>((byException ? given?.not : given?.items) ?? []);
  const [note, setNote] = useState(given?.note ?? "");
  const turn = (item: string) =>
    setTapped((now) => (now.includes(item) ? now.filter((one) => one !== item) : [...now, item]));
  const keep = () => {
    const rest = all.filter((item) => !tapped.includes(item));
    open.write({
      [`answer:${check}`]: {
        items: byException ? rest : all.filter((item) => tapped.includes(item)),
        ...(byException && tapped.length > 0 && { not: [...tapped] }),
        ...(note.trim() && { note: note.trim() }),
      },
    });
    go();
  };
  return (
    <Screen
      title={title}
      subtitle={byException ? words.tapWhatIsNot : words.tapWhatIs}
      ticks={<VisitTicks steps={steps} here={check} />}
      back={undoPress(open)}
      middle={photoPress(open, check)}
      next={{
        label: byException && tapped.length === 0 ? words.asListed : visitWords.next,
        hint,
        onPress: keep,
      }}
    >
      {all.map((item) => (
        <button
          type="button"
          key={item}
          className={byException ? "choice not-so" : "choice"}
          aria-pressed={tapped.includes(item)}
          onClick={() => turn(item)}
        >
          {items[item]}
        </button>
      ))}
      <TextEntry
        label={check === "complaint" ? words.theirWords : words.note}
        value={note}
        onChange={setNote}
      />
      <Band tint>
        <p>{messages.localCode}</p>
      </Band>
    </Screen>
  );
}
