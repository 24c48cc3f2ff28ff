import type { Assessment } from "@tapside/assessment";
import { lifeStrip } from "@tapside/pictures";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";

/** The element's life in one strip; nothing when there is nothing to compare. */
export function UnitLife({ assessment, visitId }: { assessment: Assessment; visitId: string }) {
  const theme = useTheme();
  const points = assessment.life.filter((point) => point.flowRatio || point.saltRatio);
  if (points.length < 2) return null;
  const times = points.map((point) => Date.parse(point.at));
  const [first, span] = [Math.min(...times), Math.max(...times) - Math.min(...times) || 1];
  const svg = lifeStrip({
    theme,
    title: "Life of this element",
    description: points
      .map(
        (point) =>
          `${point.at.slice(0, 10)}: flow ${point.flowRatio?.value.toFixed(2) ?? "unknown"}, salt passage ${point.saltRatio?.value.toFixed(2) ?? "unknown"}`,
      )
      .join("; "),
    words: { salt: "salt", flow: "flow", fresh: "new", today: "latest" },
    points: points.map((point, i) => ({
      place: (times[i]! - first) / span,
      ...(point.flowRatio && { flowRatio: point.flowRatio.value, flowU: 2 * point.flowRatio.u }),
      ...(point.saltRatio && { saltRatio: point.saltRatio.value, saltU: 2 * point.saltRatio.u }),
      filters: point.marks.includes("filters"),
      bypass: point.marks.includes("bypass"),
      today: point.visit === visitId,
    })),
  });
  return <Picture svg={svg} />;
}
