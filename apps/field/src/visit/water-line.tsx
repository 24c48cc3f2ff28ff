import { useLayoutEffect, useRef, useState } from "react";
import { useTheme } from "../look/use-theme.ts";
import type { OpenVisit } from "./use-visit.ts";

/** The water along the left edge of the visit: as thick as its flow, as deep as its dissolved solids. */
export function WaterLine({ open }: { open: OpenVisit }) {
  const theme = useTheme();
  const ref = useRef<SVGSVGElement>(null);
  const [height, setHeight] = useState(0);
  useLayoutEffect(() => {
    const parent = ref.current?.parentElement;
    if (!parent) return;
    const watch = new ResizeObserver(() => setHeight(parent.clientHeight));
    watch.observe(parent);
    return () => watch.disconnect();
  }, []);
  const flowing = open.visit.answers.inUse !== "bypassed";
  const water = theme === "dark" ? "#9FC0C9" : "#3C6171";
  return (
    <svg ref={ref} className="water-line" viewBox={`0 0 72 ${Math.max(1, height)}`} aria-hidden="true">
      <path d="M24 2H56" stroke="currentColor" strokeWidth="5" />
      {flowing ? <rect x="29" y="4" width="22" height={Math.max(0, height - 8)} fill={water} /> : null}
      <path
        d={`M28 2V${height}M52 2V${height}`}
        stroke="currentColor"
        strokeWidth={flowing ? 1.5 : 2}
        strokeDasharray={flowing ? undefined : "5 4"}
      />
    </svg>
  );
}
