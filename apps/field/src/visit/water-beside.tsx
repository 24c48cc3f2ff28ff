import type { Assessment } from "@tapside/assessment";
import { type BandPart, lineOfWater, type WaterBand } from "@tapside/pictures";
import type { KeptVisit, UnitFile } from "@tapside/records";
import { memo, useCallback, useEffect, useRef, useState } from "react";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";

interface WaterBesideProps {
  readonly file: UnitFile;
  readonly visit: KeptVisit;
  readonly expected: Assessment["expected"];
  /** Other bands in sight are other places to draw through. */
  readonly typing: boolean;
}

/** Measures the bands that name a part and draws today's water through them, as it is expected to flow. */
export const WaterBeside = memo(({ file, visit, expected }: WaterBesideProps) => {
  const theme = useTheme();
  const ref = useRef<HTMLDivElement>(null);
  const [bands, setBands] = useState<readonly WaterBand[]>([]);
  const measure = useCallback(() => {
    const bands = ref.current?.parentElement?.querySelectorAll<HTMLElement>(".band.water") ?? [];
    const now = [...bands].map(bandOf).filter(({ height }) => height > 0);
    setBands((was) => (JSON.stringify(was) === JSON.stringify(now) ? was : now));
  }, []);
  // Bands come and go with every drawing of the screen; their sizes change with fonts and the turning of the phone. The numbers come
  // first: the line is drawn through them a frame later.
  useEffect(() => {
    const frame = requestAnimationFrame(measure);
    return () => cancelAnimationFrame(frame);
  });
  useEffect(() => {
    const parent = ref.current?.parentElement;
    if (!parent) return;
    const watch = new ResizeObserver(measure);
    watch.observe(parent);
    return () => watch.disconnect();
  }, [measure]);
  const ports = expected.kind === "known" ? expected.value : {};
  const permeate = ports.permeateFlow?.value ?? 0.35;
  const svg = lineOfWater({
    bands,
    theme,
    width: 240,
    feedLPerMin: permeate + (ports.drainFlow?.value ?? 1),
    permeateLPerMin: permeate,
    feedMgPerL: visit.readings.asFound.feedTds?.value ?? 200,
    permeateMgPerL: ports.permeateTds?.value ?? 15,
    flowing: true,
    bypass: file.point.bypassFitted ? "shut" : "none",
  });
  return (
    <div ref={ref} className="unit-water">
      {bands.length > 0 ? <Picture svg={svg} /> : null}
    </div>
  );
});

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
