import { numeralSvg } from "@tapside/pictures";
import { Picture } from "../look/picture.tsx";
import { dateWords as words } from "../words/dates.ts";
import { dateOf, day } from "./day.ts";

/** A day as a drawn number with its month under it, the year where it is another than today's. `iso` is a date or an instant, `today` a date. */
export function DrawnDay({ iso, today }: { iso: string; today: string }) {
  const date = dateOf(iso);
  const month = words.months[date.getMonth()]!;
  const year = date.getFullYear();
  const svg = numeralSvg({
    text: String(date.getDate()),
    heightPx: 28,
    style: "solid",
    theme: "light",
    ink: "var(--ink)",
    label: day(iso),
  });
  return (
    <span>
      <Picture svg={svg} className="digits" />
      <span aria-hidden="true">{today.startsWith(String(year)) ? month : `${month} ${year}`}</span>
    </span>
  );
}
