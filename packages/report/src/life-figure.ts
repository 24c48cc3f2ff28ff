import type { Assessment } from "@tapside/assessment";
import { lifeStrip } from "@tapside/pictures";
import type { Block } from "./block.ts";

/** The life of the element, once there is more than one point of it. */
export function lifeFigure(assessment: Assessment, visitId: string): Block[] {
  const points = assessment.life.filter((point) => point.flowRatio || point.saltRatio);
  if (points.length < 2) return [];
  const times = points.map((point) => Date.parse(point.at));
  const first = Math.min(...times);
  const span = Math.max(...times) - first || 1;
  const description = points.map(inWords).join("; ");
  const svg = lifeStrip({
    theme: "paper",
    title: "Life of this element",
    description,
    words: { salt: "salt", flow: "flow", fresh: "new", today: "this visit" },
    points: points.map((point, i) => ({
      place: (times[i]! - first) / span,
      ...(point.flowRatio && { flowRatio: point.flowRatio.value, flowU: 2 * point.flowRatio.u }),
      ...(point.saltRatio && { saltRatio: point.saltRatio.value, saltU: 2 * point.saltRatio.u }),
      filters: point.marks.includes("filters"),
      bypass: point.marks.includes("bypass"),
      today: point.visit === visitId,
    })),
  });
  return [{ kind: "figure", svg, alt: `Life of this element. ${description}`, heightPt: 110 }];
}

const inWords = (point: Assessment["life"][number]): string =>
  `${point.at.slice(0, 10)}: flow ${point.flowRatio?.value.toFixed(2) ?? "not known"}, salt passage ${point.saltRatio?.value.toFixed(2) ?? "not known"} of new`;
