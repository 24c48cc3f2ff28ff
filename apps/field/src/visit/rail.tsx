import type { Expected } from "@tapside/assessment";
import { readingRail } from "@tapside/pictures";
import { convert } from "@tapside/quantities";
import { formatRange } from "@tapside/words";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { messages } from "../words/messages.ts";
import { Numeral } from "./numeral.tsx";
import { visitWords as words } from "./words.ts";

interface RailProps {
  readonly expected: Expected | undefined;
  readonly value: number | null;
  readonly unit: string;
  /** Expanded uncertainty of the reading. */
  readonly spread: number;
}

/** What it should read, hollow, and where the typed number lies beside it. Its place never changes. */
export function Rail({ expected, value, unit, spread }: RailProps) {
  const theme = useTheme();
  if (!expected) return <div className="rail" />;
  const low = inUnit(expected.low, expected.unit, unit);
  const high = inUnit(expected.high, expected.unit, unit);
  if (low === undefined || high === undefined) return <div className="rail" />;
  const text = formatRange({ low, high }, messages.decimalSign);
  const middle = (low + high) / 2;
  const half = Math.max((high - low) / 2, Math.abs(high) * 0.01, 1e-6);
  const svg = readingRail({
    theme,
    low: middle - 14 * half,
    high: middle + 6 * half,
    expected: { from: middle - half, to: middle + half },
    ...(value !== null && { read: { value, u: spread } }),
  });
  return (
    <div className="rail">
      <p className="should">
        <span>{words.shouldRead}</span>
        <Numeral text={text} height={40} hollow name={`${words.expected} ${text} ${unit}`} />
      </p>
      <Picture svg={svg} />
    </div>
  );
}

/** A value in another unit, or undefined when the two do not convert. Scales of dissolved solids stay as they are. */
function inUnit(value: number, from: string, to: string): number | undefined {
  if (from === to) return value;
  const outcome = convert(value, from, to);
  return outcome.kind === "known" ? outcome.value : undefined;
}
