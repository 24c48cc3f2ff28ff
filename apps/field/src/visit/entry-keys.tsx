import { SLOTS, type SlotId } from "@tapside/records";
import { Link } from "wouter";
import { visitWords as words } from "./words.ts";

interface SideKeysProps {
  readonly slot: SlotId;
  readonly onNotDetected: () => void;
  readonly onNotThere: () => void;
  /** Litres of the bucket test, and where they are changed. */
  readonly drawn?: { readonly text: string; readonly to: string };
}

/** Answers that are no number; they stand where the number would, so that nothing moves while typing. */
export function SideKeys({ slot, onNotDetected, onNotThere, drawn }: SideKeysProps) {
  return (
    <div className="side-keys">
      {SLOTS[slot].quantity === "chlorine" ? (
        <button type="button" onClick={onNotDetected}>
          {words.notDetected}
        </button>
      ) : null}
      {drawn ? <Link href={drawn.to}>{words.drawnChange(drawn.text)}</Link> : null}
      {slot === "drawnVolume" || slot === "standardSolution" ? null : (
        <button type="button" onClick={onNotThere}>
          {words.notThere}
        </button>
      )}
    </div>
  );
}

interface UnitKeyProps {
  readonly slot: SlotId;
  readonly unit: string;
  readonly scale?: string | undefined;
  readonly onChange: (unit: string) => void;
}

/** The unit, turned on by a tap. */
export function UnitKey({ slot, unit, scale, onChange }: UnitKeyProps) {
  const { units } = SLOTS[slot];
  const following = units[(units.indexOf(unit) + 1) % units.length] ?? unit;
  const text = scale && unit === "ppm" ? `${unit}, ${scale}` : unit;
  if (units.length < 2) return <strong className="unit-key">{text}</strong>;
  return (
    <button type="button" className="unit-key" onClick={() => onChange(following)}>
      <strong>{text}</strong>
    </button>
  );
}

/** The technician does not trust what was read: kept, not used. */
export function DoubtfulKey({ doubtful, onTurn }: { doubtful: boolean; onTurn: () => void }) {
  return (
    <button type="button" className="doubtful" aria-pressed={doubtful} onClick={onTurn}>
      {words.doubtful}
    </button>
  );
}
