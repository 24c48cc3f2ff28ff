export type Theme = "light" | "dark" | "paper";

export interface Colours {
  readonly ground: string;
  readonly tint: string;
  readonly ink: string;
  readonly ink2: string;
  readonly rule: string;
  /** The line of water from hardly anything dissolved to much. */
  readonly water: readonly [string, string];
}

const light: Colours = {
  ground: "#F4F5F0",
  tint: "#E2E6E0",
  ink: "#0D1518",
  ink2: "#39454A",
  rule: "#0D1518",
  water: ["#D3E4E5", "#0A3446"],
};

/** The slate's colours. The water's depth is the only hue. */
export const COLOURS: Readonly<Record<Theme, Colours>> = {
  light,
  dark: {
    ground: "#0B1113",
    tint: "#1B2528",
    ink: "#F0F3EE",
    ink2: "#B7C2C1",
    rule: "#7F8E8D",
    water: ["#20373D", "#C4E8EF"],
  },
  paper: { ...light, ground: "#FFFFFF" },
};

const channels = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

/**
 * The colour of water by its dissolved solids (mg/L as NaCl): logarithmic from 5 to 1000. More dissolved lies further
 * from the ground in both themes.
 */
export function waterColour(mgPerL: number, theme: Theme): string {
  const [clear, deep] = COLOURS[theme].water;
  const t = Math.min(1, Math.max(0, Math.log10(Math.max(mgPerL, 1e-9) / 5) / Math.log10(1000 / 5)));
  const from = channels(clear);
  const to = channels(deep);
  return `#${from
    .map((c, i) =>
      Math.round(c + t * (to[i]! - c))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}

/** Contrast ratio of two colours. Source: WCAG 2.2, relative luminance and contrast ratio definitions. */
export function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

function luminance(hex: string): number {
  const [r, g, b] = channels(hex).map((c) =>
    c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
