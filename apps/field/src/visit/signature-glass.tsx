import { type PointerEvent, useRef } from "react";
import { visitWords as words } from "./words.ts";

const WIDTH = 358;
const HEIGHT = 120;

/** A signature drawn with the finger, kept as an SVG path in a box of 358 × 120. */
export function SignatureGlass({ path, onChange }: { path: string; onChange: (path: string) => void }) {
  const drawing = useRef(false);
  const at = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const x = Math.round(((event.clientX - box.left) / box.width) * WIDTH);
    const y = Math.round(((event.clientY - box.top) / box.height) * HEIGHT);
    return `${x} ${y}`;
  };
  const start = (event: PointerEvent<SVGSVGElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    drawing.current = true;
    onChange(`${path}M${at(event)}`);
  };
  const move = (event: PointerEvent<SVGSVGElement>) => drawing.current && onChange(`${path}L${at(event)}`);
  const stop = () => {
    drawing.current = false;
  };
  return (
    <div className="band">
      <p>{words.drawHere}</p>
      <svg
        className="glass"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={words.drawHere}
        onPointerDown={start}
        onPointerMove={move}
        onPointerUp={stop}
        onPointerCancel={stop}
      >
        <path d={`M0 ${HEIGHT - 20}H${WIDTH}`} stroke="currentColor" strokeWidth="2" strokeDasharray="5 4" />
        <path d={path} fill="none" stroke="currentColor" strokeWidth="3" strokeLinecap="round" />
      </svg>
      {path ? (
        <button type="button" className="choice plain" onClick={() => onChange("")}>
          {words.clear}
        </button>
      ) : null}
    </div>
  );
}
