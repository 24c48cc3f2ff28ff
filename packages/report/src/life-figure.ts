import { type Assessment, lifeOnStrip } from "@tapside/assessment";
import { lifeStrip } from "@tapside/pictures";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** The life of the element, once there is more than one point of it. */
export function lifeFigure(assessment: Assessment, visitId: string, messages: Messages): Block[] {
  const points = lifeOnStrip(assessment.life, visitId);
  if (points.length === 0) return [];
  const title = "Life of this element";
  const description = messages.life(assessment.life);
  const words = { salt: "salt", flow: "flow", fresh: "new", today: "this visit" };
  const svg = lifeStrip({ theme: "paper", title, description, words, points });
  return [{ kind: "figure", svg, alt: `${title}. ${description}`, heightPt: 110 }];
}
