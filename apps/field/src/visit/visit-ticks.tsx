import type { Step } from "./steps.ts";

/** One tick per number of the visit: solid = read, outlined = not yet, tall = here. */
export function VisitTicks({ steps, here }: { steps: readonly Step[]; here: string }) {
  const numbers = steps.filter((step) => step.reading);
  const width = 358 / Math.max(1, numbers.length);
  const done = numbers.filter((step) => step.done).length;
  return (
    <svg
      viewBox="0 0 358 16"
      preserveAspectRatio="none"
      role="img"
      aria-label={`${done} / ${numbers.length}`}
    >
      {numbers.map((step, i) => {
        const current = step.id === here;
        return (
          <rect
            key={step.id}
            x={i * width + 2}
            y={current ? 1 : 4}
            width={width - 5}
            height={current ? 14 : 8}
            fill={step.done || current ? "currentColor" : "none"}
            stroke="currentColor"
            strokeWidth="2"
          />
        );
      })}
    </svg>
  );
}
