import { type LedgerLine, ledgerU, meterLedger } from "@tapside/book";
import { findingMark } from "@tapside/pictures";
import { inSign } from "@tapside/words";
import { useMemo } from "react";
import { Band } from "../look/band.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { Picture } from "../look/picture.tsx";
import { Screen } from "../look/screen.tsx";
import { useTheme } from "../look/use-theme.ts";
import { useBook } from "../store/use-book.ts";
import { Numeral } from "../visit/numeral.tsx";
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
        {off ? <p>{officeWords.ledgerOff(...offText(off))}</p> : null}
      </Band>
      {lines.length > 0 ? (
        <div className="limit-head">
          <span>{officeWords.readsLow}</span>
          <span>{officeWords.readsHigh}</span>
        </div>
      ) : null}
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

function signed(percent: number, digits = 0): string {
  const size = Math.abs(percent).toFixed(digits);
  const sign = Number(size) === 0 ? "" : percent > 0 ? "+" : "−";
  return inSign(`${sign}${size}`, messages.decimalSign);
}

/** A difference with no more digits than its uncertainty has. */
function offText({ percent, U }: { readonly percent: number; readonly U: number }): [string, string] {
  const digits = U < 2 ? 1 : 0;
  return [signed(percent, digits), inSign(U.toFixed(digits), messages.decimalSign)];
}

/** How far off the meter read, beside the one upright line of agreement: left of it low, right of it high. */
function Line({ line }: { line: LedgerLine }) {
  const theme = useTheme();
  const d = line.offPercent / ledgerU(line);
  const text = signed(line.offPercent);
  return (
    <Band {...(line.kind === "beside" && { press: { to: `/unit/${line.unitId}/at/tap` } })}>
      <span className="ledger-line">
        <Picture className="finding-mark" svg={findingMark({ kind: "distance", d, theme, heightPx: 92 })} />
        <span className="note">{day(line.on)}</span>
        <Numeral text={text} height={32} unit="%" />
        <span className="note">
          {line.kind === "check"
            ? officeWords.ledgerCheck(`${line.standard} ${line.unit}`)
            : `${line.title}, ${officeWords.ledgerBeside(line.others)}`}
        </span>
      </span>
    </Band>
  );
}
