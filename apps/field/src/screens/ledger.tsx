import { type LedgerLine, meterLedger } from "@tapside/book";
import { inSign } from "@tapside/words";
import { useMemo } from "react";
import { Band } from "../look/band.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";

/** A meter's ledger: every check in a standard, and every reading beside other meters on the same water. */
export function LedgerScreen({ id }: { id: string }) {
  const { book } = useBook().snapshot;
  const ledger = useMemo(() => meterLedger(book, id), [book, id]);
  const instrument = book.instrument.get(id);
  if (!instrument) return <Gone />;
  const { said, off } = ledger;
  const lines = [...ledger.lines].reverse();
  return (
    <Screen
      title={officeWords.ledger}
      subtitle={instrument.name}
      back={{ label: words.back, to: `/instrument/${id}` }}
      next={{ label: words.instruments, to: "/instruments" }}
    >
      <Band heavy={said === "high" || said === "low"}>
        <strong>{officeWords.ledgerSaid[said]}</strong>
        {off ? (
          <p>{officeWords.ledgerOff(signed(off.percent), inSign(off.U.toFixed(1), messages.decimalSign))}</p>
        ) : null}
      </Band>
      {lines.length === 0 ? <p className="band">{officeWords.ledgerEmpty}</p> : null}
      <GrowingList items={lines} more={officeWords.moreUnits}>
        {(line) => (
          <Line
            key={`${line.kind} ${line.on} ${line.kind === "beside" ? line.unitId : line.standard}`}
            line={line}
          />
        )}
      </GrowingList>
    </Screen>
  );
}

const signed = (percent: number): string =>
  inSign(`${percent > 0 ? "+" : ""}${percent.toFixed(1)}`, messages.decimalSign);

function Line({ line }: { line: LedgerLine }) {
  const row = (
    <span className="row">
      <span>{day(line.on)}</span>
      <strong>{signed(line.offPercent)} %</strong>
    </span>
  );
  return line.kind === "check" ? (
    <Band>
      {row}
      <p className="note">{officeWords.ledgerCheck(`${line.standard} ${line.unit}`)}</p>
    </Band>
  ) : (
    <Band press={{ to: `/unit/${line.unitId}/at/tap` }}>
      {row}
      <p className="note">
        {line.title}, {officeWords.ledgerBeside(line.others)}
      </p>
    </Band>
  );
}
