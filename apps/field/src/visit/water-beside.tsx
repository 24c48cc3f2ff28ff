import type { Assessment } from "@tapside/assessment";
import { type BandPart, lineOfWater, type WaterBand } from "@tapside/pictures";
import type { KeptVisit, UnitFile } from "@tapside/records";
import { useLayoutEffect, useRef, useState } from "react";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";

interface WaterBesideProps {
  readonly file: UnitFile;
  readonly visit: KeptVisit;
  readonly assessment: Assessment;
}

/** Measures the bands that name a part and draws today's water through them, as it is expected to flow. */
export function WaterBeside({ file, visit, assessment }: WaterBesideProps) {
  const theme = useTheme();
  const ref = useRef<HTMLDivElement>(null);
  const [bands, setBands] = useState<readonly WaterBand[]>([]);
  useLayoutEffect(() => {
    const parent = ref.current?.parentElement;
    if (!parent) return;
    const measure = () => setBands([...parent.querySelectorAll<HTMLElement>(".band.water")].map(bandOf));
    const watch = new ResizeObserver(measure);
    for (const one of [parent, ...parent.children]) watch.observe(one);
    return () => watch.disconnect();
  });
  const expected = assessment.expected.kind === "known" ? assessment.expected.value : {};
  const permeate = expected.permeateFlow?.value ?? 0.35;
  const svg = lineOfWater({
    bands,
    theme,
    width: 240,
    feedLPerMin: permeate + (expected.drainFlow?.value ?? 1),
    permeateLPerMin: permeate,
    feedMgPerL: visit.readings.asFound.feedTds?.value ?? 200,
    permeateMgPerL: expected.permeateTds?.value ?? 15,
    flowing: true,
    bypass: file.point.bypassFitted ? "shut" : "none",
  });
  return (
    <div ref={ref} className="unit-water">
      {bands.length > 0 ? <Picture svg={svg} /> : null}
    </div>
  );
}

function bandOf(band: HTMLElement): WaterBand {
  const part = band.dataset.part ?? "plain";
  return {
    part: (part === "permeate" ? "plain" : part) as BandPart,
    y: band.offsetTop,
    height: band.offsetHeight,
    ...(band.dataset.mark && { mark: band.dataset.mark as "read" | "expected" }),
    ...(part === "permeate" && { side: "permeate" }),
  };
}
