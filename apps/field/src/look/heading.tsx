import { Band } from "./band.tsx";

/** What the bands below are, and how many or how much at the right. */
export const Heading = ({ text, count }: { text: string; count?: number | string }) => (
  <Band tint>
    <span className="row">
      <strong>{text}</strong>
      {count === undefined ? null : <span className="count">{count}</span>}
    </span>
  </Band>
);
