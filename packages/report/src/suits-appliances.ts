import type { Assessment, Finding } from "@tapside/assessment";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";

const isNeed = ({ id }: Finding): boolean => id === "needs" || id === "needsOpen" || id.startsWith("need:");

/** Delivered water against the published needs of each appliance, as left where that was judged; what is kept is said too. */
export function suitsAppliances({ findings }: Assessment, words: Messages): Block[] {
  const needs = findings.filter(isNeed);
  const asLeft = needs.filter(({ phase }) => phase === "asLeft");
  const items = (asLeft.length > 0 ? asLeft : needs).map((one) => {
    const { title, verdict, reason, limit } = words.finding(one);
    return [`${title}: ${verdict}`, limit && words.record.limit(limit), reason].filter(Boolean).join("; ");
  });
  return items.length === 0 ? [] : [{ kind: "list", title: words.water.suits, items }];
}
