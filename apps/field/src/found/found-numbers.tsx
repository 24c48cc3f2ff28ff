import type { Unit } from "@tapside/records";
import { type ReactNode, useState } from "react";
import { useLocation } from "wouter";
import { draftStore } from "../look/draft-store.ts";
import { firstUnit, rememberUnit } from "../look/first-unit.ts";
import { readNumber, shownIn } from "../look/read-number.ts";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { type Key, Keypad } from "../visit/keypad.tsx";
import { Numeral } from "../visit/numeral.tsx";
import { withKey } from "../visit/with-key.ts";
import { decimalSignOf } from "../words/decimal-sign.ts";
import "./found.css";
import type { FoundSpec } from "./specs.ts";
import { foundWords as words } from "./words.ts";

interface FoundNumbersProps {
  readonly unit: Partial<Unit> & { readonly id: string };
  readonly title: string;
  readonly subtitle: string;
  /** The few kinds to press first. */
  readonly head: ReactNode;
  readonly specs: readonly FoundSpec[];
  /** What the numbers say together, what is being typed included. */
  readonly said: (unit: Partial<Unit>) => string;
}

/** What hangs there, pressed once, then its numbers one at a time on our own keypad. Each is kept when the next is taken up. */
export function FoundNumbers({ unit, title, subtitle, head, specs, said }: FoundNumbersProps) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const settings = snapshot.book.settings.get("settings");
  const sign = decimalSignOf(settings);
  const kept = (field: string) => {
    const value = live.field(unit.id, field);
    return typeof value === "number" ? value : undefined;
  };
  const [typing, setTyping] = useState(() => specs.find((spec) => kept(spec.field) === undefined)?.field);
  const [raw, setRaw] = useState(() => (typing && draftStore(live, unit.id, typing).load()) || "");
  const unitOf = (spec: FoundSpec) => firstUnit(live, spec, kept(spec.field), settings?.pressureUnit);
  const spec = specs.find((one) => one.field === typing);
  const taken = spec && raw !== "" ? readNumber(raw, unitOf(spec), spec) : undefined;
  const asTyped = spec && taken?.kind === "value" ? { ...unit, [spec.field]: taken.value } : unit;
  const refusal = taken?.kind === "refusal" ? taken.text : "";

  const type = (text: string) => {
    if (!spec) return;
    setRaw(text);
    draftStore(live, unit.id, spec.field).keep(text === "" ? null : text);
  };
  /** Keeps what was typed; false when it cannot be. */
  const keep = (): boolean => {
    if (!spec || !taken) return true;
    if (taken.kind === "refusal") return false;
    rememberUnit(live, spec.field, unitOf(spec));
    void live.write("unit", unit.id, { [spec.field]: taken.value ?? null });
    type("");
    return true;
  };
  const takeUp = (field: string | undefined) => {
    if (!keep()) return;
    setTyping(field);
    setRaw((field && draftStore(live, unit.id, field).load()) || "");
  };
  const takeKey = (key: Key) => {
    // The first rubbing out of a kept number takes it back; it stands there to be changed.
    if (spec && raw === "" && key === "rubOut" && kept(spec.field) !== undefined)
      void live.write("unit", unit.id, { [spec.field]: null });
    else type(withKey(raw, key));
  };
  const turn = () => {
    if (!spec) return;
    rememberUnit(live, spec.field, spec.units[(spec.units.indexOf(unitOf(spec)) + 1) % spec.units.length]!);
  };
  const after = specs.find((one) => one.field !== typing && kept(one.field) === undefined);
  const leave = `/unit/${unit.id}/edit`;
  const goOn = () => {
    if (!keep()) return;
    if (spec && after && !(after.otherwise && kept(spec.field) === undefined && raw === ""))
      takeUp(after.field);
    else navigate(leave);
  };
  return (
    <div className={spec ? "entry-screen typing" : "entry-screen"}>
      <Screen
        title={title}
        subtitle={subtitle}
        back={{ label: words.setUp, onPress: () => keep() && navigate(leave) }}
        next={
          spec && after
            ? { label: words.next, hint: after.label, onPress: goOn, quiet: refusal !== "" }
            : { label: words.done, onPress: goOn, quiet: refusal !== "" }
        }
      >
        {head}
        {specs.length > 0 ? (
          <div className="found-numbers">
            {specs.map((one) => {
              const own = one.field === typing && raw !== "";
              const value = kept(one.field);
              const text = own ? raw : asKept(value, one, unitOf(one));
              return (
                <button
                  type="button"
                  key={one.field}
                  className="given"
                  aria-pressed={one.field === typing}
                  onClick={() => takeUp(one.field)}
                >
                  <span>{one.label}</span>
                  {text ? (
                    <Numeral
                      text={short(text).replace(".", sign)}
                      height={46}
                      unit={unitOf(one)}
                      hollow={!own && value === undefined}
                    />
                  ) : (
                    <span className="note">{words.notSaid}</span>
                  )}
                </button>
              );
            })}
          </div>
        ) : null}
        <div className="found-unit">
          <p role="status">{refusal || said(asTyped)}</p>
          {spec && spec.units.length > 1 ? (
            <button type="button" className="unit-switch" onClick={turn}>
              {unitOf(spec)}
            </button>
          ) : null}
        </div>
        {spec ? <Keypad onKey={takeKey} onEnter={goOn} decimalSign={sign} /> : null}
      </Screen>
    </div>
  );
}

/** What is kept, or the default that counts until then, in the two digits a default has. */
function asKept(value: number | undefined, spec: FoundSpec, unit: string): string {
  if (value !== undefined) return shownIn(value, spec.baseUnit, unit);
  const usual = shownIn(spec.otherwise, spec.baseUnit, unit);
  return usual && String(Number(Number(usual).toPrecision(2)));
}

/** As many digits as a numeral of this height has room for. */
const short = (text: string): string =>
  text.length > 5 ? String(Number(Number(text).toPrecision(4))) : text;
