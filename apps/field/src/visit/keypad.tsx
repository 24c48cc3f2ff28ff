import { memo, useEffect } from "react";
import { Numeral } from "./numeral.tsx";
import { visitWords as words } from "./words.ts";

export type Key = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "." | "rubOut";

const ROWS: readonly Key[] = ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0", "rubOut"];

interface KeypadProps {
  readonly onKey: (key: Key) => void;
  readonly onEnter: () => void;
  readonly decimalSign: "." | ",";
  /** A temperature may lie below zero. */
  readonly onMinus?: () => void;
}

/** Our own big keypad, never the system one. A keyboard does the same; both decimal signs are taken. */
export function Keypad({ onKey, onEnter, decimalSign }: KeypadProps) {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey) return;
      if (/^\d$/.test(event.key)) onKey(event.key as Key);
      else if (event.key === "." || event.key === ",") onKey(".");
      else if (event.key === "Backspace") onKey("rubOut");
      else if (event.key === "Enter" && event.target === document.body) onEnter();
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, [onKey, onEnter]);
  return (
    <div className="keypad">
      {ROWS.map((key) => (
        <button
          type="button"
          key={key}
          data-key={key}
          className={key === "rubOut" ? "key rub" : "key"}
          onClick={() => onKey(key)}
        >
          <KeyFace sign={key} decimalSign={decimalSign} />
        </button>
      ))}
    </div>
  );
}

interface KeyFaceProps {
  readonly sign: Key;
  readonly decimalSign: "." | ",";
}

/** Drawn once: a key pressed changes no face. */
const KeyFace = memo(function KeyFace({ sign, decimalSign }: KeyFaceProps) {
  if (sign === "rubOut") return <span>{words.rubOut}</span>;
  if (sign === ".")
    return (
      <span className="decimal" role="img" aria-label={decimalSign}>
        {decimalSign}
      </span>
    );
  return <Numeral text={sign} height={46} />;
});
