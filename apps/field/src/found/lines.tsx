import type { Unit } from "@tapside/records";
import { unitFile, unitTitle } from "@tapside/records";
import { LINES, type Line, lineAsFound, lineLossKPa } from "@tapside/reverse-osmosis";
import { useState } from "react";
import { shownIn } from "../look/read-number.ts";
import { Gone } from "../screens/gone.tsx";
import { useBook } from "../store/use-book.ts";
import { inDigits } from "../words/in-digits.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { FoundNumbers } from "./found-numbers.tsx";
import { Kinds } from "./kinds.tsx";
import { lineSpecs } from "./specs.ts";
import { foundWords as words } from "./words.ts";

/** Bores and lengths of the lines that take a pressure worth counting, for those who care. */
export function LinesScreen({ id }: { id: string }) {
  const { snapshot } = useBook();
  const [line, setLine] = useState<Line>("drain");
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const { unit } = file;
  return (
    <FoundNumbers
      key={line}
      unit={unit}
      title={words.lines}
      subtitle={unitTitle(file)}
      specs={lineSpecs(line)}
      head={
        <Kinds
          name={words.lines}
          all={LINES.map((one) => ({ id: one, label: words.lineNames[one], hint: words.lineHints[one] }))}
          chosen={line}
          onChoose={setLine}
        />
      }
      said={(typed) => saidOf(line, typed, snapshot.book.settings.get("settings")?.pressureUnit ?? "psi")}
    />
  );
}

function saidOf(line: Line, unit: Partial<Unit>, pressureUnit: string): string {
  const found = lineAsFound(line, unit);
  if (found.kind === "missing") return words.notCounted;
  if (found.kind === "refused") return sayWhyNot(found);
  const loss = Number(shownIn(lineLossKPa(found.value), "kPa", pressureUnit));
  const takes = words.takes(`${inDigits(loss, 2)}\u00a0${pressureUnit}`);
  return unit[`${line}TubeBoreMm`] === undefined ? `${takes} ${words.boreUsual}` : takes;
}
