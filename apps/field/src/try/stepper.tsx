import { tryWords as words } from "./words.ts";

interface StepperProps {
  readonly label: string;
  readonly said: string;
  readonly onStep: (way: 1 | -1) => void;
}

/** One number of a question, a step at a time. */
export function Stepper({ label, said, onStep }: StepperProps) {
  return (
    <div className="stepper">
      <span>{label}</span>
      <button type="button" aria-label={words.less(label)} onClick={() => onStep(-1)}>
        −
      </button>
      <strong aria-live="polite">{said}</strong>
      <button type="button" aria-label={words.more(label)} onClick={() => onStep(1)}>
        +
      </button>
    </div>
  );
}
