import { type LabelText, lotAndSerial } from "@tapside/book";
import type { Work } from "@tapside/records";
import { type ReactNode, useState } from "react";
import { LabelReader } from "./label-reader.tsx";
import { TextEntry } from "./text-entry.tsx";
import { visitWords as words } from "./words.ts";

interface Lot {
  /** What is kept of the part fitted; blank is left out. */
  readonly fields: Readonly<Record<string, string>>;
  readonly entry: ReactNode;
}

/** Lot and serial number of a part fitted, typed or read from its label. */
export function useLot(given: Work | undefined): Lot {
  const [lot, setLot] = useState(given?.lot ?? "");
  const [serial, setSerial] = useState(given?.serial ?? "");
  const take = (label: LabelText) => {
    const read = lotAndSerial(label, { lot, serial });
    setLot(read.lot ?? "");
    setSerial(read.serial ?? "");
  };
  return {
    fields: { ...(lot.trim() && { lot: lot.trim() }), ...(serial && { serial }) },
    entry: (
      <>
        <TextEntry label={words.lot} value={lot} onChange={setLot} />
        <LabelReader onRead={take} serial={serial} />
      </>
    ),
  };
}
