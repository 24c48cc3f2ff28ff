import type { LabelText } from "@tapside/book";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { visitWords as words } from "./words.ts";

interface LabelReaderProps {
  readonly onRead: (label: LabelText) => void;
  /** Serial number read before, shown. */
  readonly serial?: string;
}

/** The code of a part's label read by the camera instead of typed; the reader itself is fetched when first wanted. */
export function LabelReader({ onRead, serial = "" }: LabelReaderProps) {
  const [unread, setUnread] = useState(false);
  const read = async () => {
    const { readLabel } = await import("../screens/scan/read-label.ts");
    const label = await readLabel();
    setUnread(label === "unread");
    if (label && label !== "unread") onRead(label);
  };
  return (
    <>
      <Band press={{ onPress: () => void read() }}>
        {words.fromLabel}
        {serial ? <p className="note">{words.serialRead(serial)}</p> : null}
      </Band>
      {unread ? (
        <p className="band" role="status">
          {words.labelUnread}
        </p>
      ) : null}
    </>
  );
}
