import type { Assessment } from "@tapside/assessment";
import { lineOfWater, type WaterBand } from "@tapside/pictures";
import { type KeptVisit, staysBypassed, type UnitFile } from "@tapside/records";
import { useLayoutEffect, useRef, useState } from "react";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";

const PARTS = ["tap", "cartridge", "shutOff", "element", "tank", "postFilter", "outlet"] as const;

interface UnitWaterProps {
  readonly file: UnitFile;
  readonly visit: KeptVisit;
  readonly assessment: Assessment;
}

/** Measures the bands beside it and draws the water through them. */
export function UnitWater({ file, visit, assessment }: UnitWaterProps) {
  const theme = useTheme();
  const ref = useRef<HTMLDivElement>(null);
  const [bands, setBands] = useState<readonly WaterBand[]>([]);
  useLayoutEffect(() => {
    const parent = ref.current?.parentElement;
    if (!parent) return;
    const measure = () =>
      setBands(
        [...parent.querySelectorAll<HTMLElement>(":scope > .band.water")].map((band, i) => ({
          part: PARTS[i] ?? "plain",
          y: band.offsetTop,
          height: band.offsetHeight,
        })),
      );
    const watch = new ResizeObserver(measure);
    watch.observe(parent);
    return () => watch.disconnect();
  }, []);
  const { permeateFlow, drainFlow } = assessment.figures.asFound;
  const perMinute = (outcome: typeof permeateFlow, otherwise: number) =>
    outcome.kind === "known"
      ? outcome.value.value / (outcome.value.unit === "mL/min" ? 1000 : outcome.value.unit === "L/h" ? 60 : 1)
      : otherwise;
  const permeate = perMinute(permeateFlow, 0.35);
  const bypassed = staysBypassed(visit);
  const svg = lineOfWater({
    bands,
    theme,
    width: 240,
    feedLPerMin: permeate + perMinute(drainFlow, 1),
    permeateLPerMin: permeate,
    feedMgPerL: visit.readings.asFound.feedTds?.value ?? 200,
    permeateMgPerL: visit.readings.asFound.permeateTds?.value ?? 15,
    flowing: !bypassed,
    bypass: file.point.bypassFitted ? (bypassed ? "open" : "shut") : "none",
  });
  return (
    <div ref={ref} className="unit-water">
      {bands.length > 0 ? <Picture svg={svg} /> : null}
    </div>
  );
}
