import { type Assessment, lifeOnStrip } from "@tapside/assessment";
import { lifeStrip } from "@tapside/pictures";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** The life of the element, once there is more than one point of it. */
export function lifeFigure(assessment: Assessment, visitId: string, messages: Messages): Block[] {
  const points = lifeOnStrip(assessment.life, visitId);
  if (points.length === 0) return [];
  const title = messages.record.titles.life;
  const description = messages.life(assessment.life);
  const svg = lifeStrip({ theme: "paper", title, description, words: messages.record.life, points });
  return [{ kind: "figure", svg, alt: `${title}. ${description}`, heightPt: 110 }];
}
