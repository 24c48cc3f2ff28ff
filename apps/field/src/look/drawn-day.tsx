import { numeralSvg } from "@tapside/pictures";
import { dateWords as words } from "../words/dates.ts";
import { Picture } from "./picture.tsx";

/** A day as a drawn number with its month under it, the year where it is another than today's. Both are ISO dates. */
export function DrawnDay({ iso, today }: { iso: string; today: string }) {
  const [year, month, day] = iso.slice(0, 10).split("-").map(Number);
  const name = words.months[(month ?? 1) - 1]!;
  const svg = numeralSvg({
    text: String(day),
    heightPx: 28,
    style: "solid",
    theme: "light",
    ink: "var(--ink)",
    label: `${words.day(day ?? 1, name)} ${year}`,
  });
  return (
    <span>
      <Picture svg={svg} className="digits" />
      <span aria-hidden="true">{iso.slice(0, 4) === today.slice(0, 4) ? name : `${name} ${year}`}</span>
    </span>
  );
}
