import { type Assessment, lifeOnStrip } from "@tapside/assessment";
import { lifeStrip } from "@tapside/pictures";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";

/** The element's life in one strip; nothing when there is nothing to compare. */
export function UnitLife({ assessment, visitId }: { assessment: Assessment; visitId: string }) {
  const theme = useTheme();
  const points = lifeOnStrip(assessment.life, visitId);
  if (points.length === 0) return null;
  const description = messages.life(assessment.life);
  return (
    <Picture svg={lifeStrip({ theme, title: words.life, description, words: words.lifeStrip, points })} />
  );
}
