import { noteAnswers, phaseNow, SIGNS, type SignId } from "@tapside/diagnosis";
import { useCallback, useState } from "react";
import { Screen } from "../look/screen.tsx";
import { type Key, Keypad } from "../visit/keypad.tsx";
import { Numeral } from "../visit/numeral.tsx";
import type { OpenVisit } from "../visit/use-visit.ts";
import { withKey } from "../visit/with-key.ts";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { asAnswers } from "./as-answers.ts";
import { causeWords as words } from "./words.ts";

interface NoteEntryProps {
  readonly open: OpenVisit;
  readonly sign: SignId;
  readonly onDone: () => void;
}

/** A number only the search for the cause asks for: kept with the visit's answers, in the sign's own unit. */
export function NoteEntry({ open, sign, onDone }: NoteEntryProps) {
  const units = words.units[SIGNS[sign].kind];
  const [at, setAt] = useState(0);
  const [raw, setRaw] = useState("");
  const [unit, factor] = units[at % units.length] ?? units[0];
  const decimalSign = decimalSignOf(open.live.snapshot().book.settings.get("settings"));
  const take = useCallback(() => {
    const value = raw === "" ? null : Number(raw) * factor;
    open.write(asAnswers(noteAnswers(sign, phaseNow(open), value, new Date().toISOString())));
    onDone();
  }, [raw, factor, open, sign, onDone]);
  const type = useCallback((key: Key) => setRaw((before) => withKey(before, key)), []);
  const shown = raw.replace(".", decimalSign);
  return (
    <div className="entry-screen">
      <Screen
        title={words.enterSign(words.signs[sign])}
        back={
          raw ? { label: words.takeBack, onPress: () => setRaw("") } : { label: words.back, onPress: onDone }
        }
        next={{ label: raw ? words.enter : words.notLooked, onPress: take, quiet: raw === "" }}
      >
        <section className="number-room" aria-live="polite">
          <div className="meter">
            <span />
            {units.length > 1 ? (
              <button type="button" className="unit-switch" onClick={() => setAt(at + 1)}>
                {unit}
              </button>
            ) : (
              <span>{unit}</span>
            )}
          </div>
          <div className="huge">
            {shown ? (
              <Numeral text={shown} height={shown.length > 4 ? 98 : 126} name={`${shown} ${unit}`} />
            ) : null}
          </div>
        </section>
        <Keypad onKey={type} onEnter={take} decimalSign={decimalSign} />
      </Screen>
    </div>
  );
}
