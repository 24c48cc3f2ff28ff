import { numeralSvg } from "@tapside/pictures";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import "./visit.css";

interface NumeralProps {
  readonly text: string;
  readonly height: number;
  /** Expected or estimated instead of read. */
  readonly hollow?: boolean;
  readonly unit?: string;
  /** What a screen reader says; the text and unit when not given. */
  readonly name?: string;
  /** Lies across light and dark, blended by difference: white shows as the opposite of what is below, black as what is below. */
  readonly across?: boolean;
  /** Stands on a block of ink. */
  readonly onInk?: boolean;
}

const OTHER = { light: "dark", dark: "light" } as const;

/** A drawn number with its unit beside it. Solid = somebody read it; hollow = we expect it. */
export function Numeral({ text, height, hollow, unit, name, across, onInk }: NumeralProps) {
  const theme = useTheme();
  const label = name ?? [text, unit].filter(Boolean).join(" ");
  const svg = numeralSvg({
    text,
    heightPx: height,
    style: hollow ? "hollow" : "solid",
    theme: onInk ? OTHER[theme] : theme,
    label,
    ...(across && { ink: "#ffffff", ground: "#000000" }),
  });
  return (
    <span className="numeral">
      <Picture svg={svg} className="digits" />
      {unit ? <span aria-hidden="true">{unit}</span> : null}
    </span>
  );
}
