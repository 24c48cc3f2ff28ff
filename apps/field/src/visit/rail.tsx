import type { Expected } from "@tapside/assessment";
import { convert } from "@tapside/quantities";
import { formatNumber } from "./format-number.ts";
import { Numeral } from "./numeral.tsx";
import { visitWords as words } from "./words.ts";

interface RailProps {
  readonly expected: Expected | undefined;
  readonly value: number | null;
  readonly unit: string;
  readonly spread: number | null;
}

/** What it should read, hollow, and where the typed number lies beside it. Its place never changes. */
export function Rail({ expected, value, unit }: RailProps) {
  if (!expected) return <div className="rail" />;
  const low = inUnit(expected.low, expected.unit, unit);
  const high = inUnit(expected.high, expected.unit, unit);
  if (low === undefined || high === undefined) return <div className="rail" />;
  const text = `${formatNumber(low)}–${formatNumber(high)}`;
  const span = Math.max(high - low, Math.abs(high) * 0.01, 1e-6);
  const place = (x: number) => Math.min(352, Math.max(6, 250 + ((x - (low + high) / 2) / span) * 36));
  return (
    <div className="rail">
      <p className="should">
        <span>{words.shouldRead}</span>
        <Numeral text={text} height={40} hollow name={`${words.expected} ${text} ${unit}`} />
      </p>
      <svg viewBox="0 0 358 30" aria-hidden="true" className="rail-line">
        <path d="M0 15H358" stroke="currentColor" strokeWidth="2" />
        <rect x={250 - 18} y="3" width="36" height="24" className="rail-box" />
        {value === null ? null : <circle cx={place(value)} cy="15" r="8" fill="currentColor" />}
      </svg>
    </div>
  );
}

/** A value in another unit, or undefined when the two do not convert. Scales of dissolved solids stay as they are. */
function inUnit(value: number, from: string, to: string): number | undefined {
  if (from === to) return value;
  const outcome = convert(value, from, to);
  return outcome.kind === "known" ? outcome.value : undefined;
}
