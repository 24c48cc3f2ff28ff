import type { ReactNode } from "react";
import { type Press, Pressable } from "./screen.tsx";

interface BandProps {
  readonly press?: Omit<Press, "label">;
  readonly tint?: boolean;
  /** What follows is of another kind. */
  readonly heavy?: boolean;
  /** Cannot be moved: a block stands at its left edge. */
  readonly fixed?: boolean;
  /** Leaves the gutter for the line of water. */
  readonly water?: boolean;
  readonly id?: string;
  readonly children: ReactNode;
}

/** A full-width row; the whole of it is the target when it can be pressed. */
export function Band({ press, tint, heavy, fixed, water, id, children }: BandProps) {
  const className = ["band", tint && "tint", heavy && "heavy", fixed && "cannot-move", water && "water"]
    .filter(Boolean)
    .join(" ");
  if (press) {
    return (
      <Pressable press={{ label: "", ...press }} className={className} id={id}>
        {children}
      </Pressable>
    );
  }
  return (
    <div className={className} id={id}>
      {children}
    </div>
  );
}
