import { type ReactNode, useEffect, useRef, useState } from "react";

interface FoldProps {
  readonly title: string;
  readonly hint: string;
  readonly children: () => ReactNode;
}

/** A further question of the page: asked by a press, worked out only then. */
export function Fold({ title, hint, children }: FoldProps) {
  const [open, setOpen] = useState(false);
  const head = useRef<HTMLButtonElement>(null);
  // The answer would lie under the thumb zone.
  useEffect(() => {
    if (open) head.current?.scrollIntoView({ block: "start" });
  }, [open]);
  return (
    <>
      <button
        ref={head}
        type="button"
        className="band fold"
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      >
        <span className="row">
          <strong>{title}</strong>
          <span aria-hidden="true">{open ? "−" : "+"}</span>
        </span>
        <span className="note">{hint}</span>
      </button>
      {open ? children() : null}
    </>
  );
}
