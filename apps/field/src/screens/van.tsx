import { type CarryInVan, carryInVan, carryList, type VanLine, vanStock } from "@tapside/book";
import type { PartRole, VanWhy } from "@tapside/records";
import { useMemo } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Rows, Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { Numeral } from "../visit/numeral.tsx";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { weekdayOf } from "./day.ts";
import { Gone } from "./gone.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { useUnitLines } from "./use-unit-lines.ts";

/** The van against what is due within a month: by kind of part. */
function useVan() {
  const { book } = useBook().snapshot;
  const lines = useUnitLines();
  return useMemo(() => {
    const stock = vanStock(book);
    const rows = lines.map((line) => line.row);
    return { stock, carry: carryInVan(carryList(rows, todayIso()), stock) };
  }, [book, lines]);
}

const roleName = (role: string): string => messages.roles[role as PartRole] ?? role;

/** What a line of the van says beside its number. */
function noteOf(line: VanLine | undefined, due: CarryInVan | undefined): string {
  return [
    line && line.used > 0 ? officeWords.vanUsed(line.used) : "",
    line && line.ordered > 0 ? officeWords.vanOrdered(line.ordered) : "",
    due ? officeWords.dueMonth(due.count) : "",
    due?.toOrder ? officeWords.toOrder(due.toOrder) : "",
  ]
    .filter(Boolean)
    .join(" · ");
}

/** Every kind of part: how many are in the van, what is due within a month, what is short. */
export function VanScreen() {
  const { live } = useBook();
  const { stock, carry } = useVan();
  const roles = Object.keys(messages.roles);
  const rank = (role: string) =>
    carry.some((one) => one.role === role) ? 0 : stock.some((one) => one.role === role) ? 1 : 2;
  const sorted = [...roles].sort((a, b) => rank(a) - rank(b) || roles.indexOf(a) - roles.indexOf(b));
  return (
    <Screen
      title={officeWords.van}
      subtitle={officeWords.vanHint}
      back={undoOrBack(live, "/more")}
      middle={{ label: words.book, to: "/", picture: <Rows /> }}
      next={{ label: officeWords.dayTitle, hint: weekdayOf(new Date()), to: `/day/${todayIso()}` }}
    >
      {sorted.map((role) => {
        const line = stock.find((one) => one.role === role);
        const due = carry.find((one) => one.role === role);
        return (
          <Band key={role} press={{ to: `/van/${role}` }} fixed={(due?.short ?? 0) > 0}>
            <span className="with-count">
              <span>
                <span className="name">{roleName(role)}</span>
                <span className="note">
                  {due?.short ? <strong>{officeWords.vanShort(due.short)} · </strong> : null}
                  {noteOf(line, due)}
                </span>
              </span>
              <Numeral
                text={line ? String(line.inVan) : "–"}
                height={32}
                name={line ? officeWords.vanCount(line.inVan) : officeWords.notCounted}
              />
            </span>
          </Band>
        );
      })}
    </Screen>
  );
}

/** One kind of part: loaded, taken back, ordered, counted, one a press. */
export function VanPartScreen({ role }: { role: PartRole }) {
  const { live } = useBook();
  const { stock, carry } = useVan();
  if (!Object.hasOwn(messages.roles, role)) return <Gone />;
  const line = stock.find((one) => one.role === role);
  const due = carry.find((one) => one.role === role);
  const write = (why: VanWhy, count: number) =>
    void live.write("vanEntry", live.newId(), { role, why, count, at: new Date().toISOString() });
  const here = line?.inVan ?? 0;
  const actions: readonly (readonly [string, VanWhy, number])[] = [
    [officeWords.returnOne, "returned", 1],
    [officeWords.orderOne, "ordered", 1],
    [
      here === 0 ? officeWords.countedNone : officeWords.countedAs(here - 1),
      "counted",
      Math.max(0, here - 1),
    ],
  ];
  return (
    <Screen
      title={roleName(role)}
      subtitle={officeWords.van}
      back={undoOrBack(live, "/van")}
      middle={{ label: officeWords.van, to: "/van", picture: <Rows /> }}
      next={{ label: officeWords.load, hint: officeWords.vanCount(here), onPress: () => write("loaded", 1) }}
    >
      <Band heavy={line?.countAgain === true}>
        {line ? (
          <span className="with-u">
            <Numeral text={String(here)} height={58} name={officeWords.vanCount(here)} />
            <span aria-hidden="true">{officeWords.inVan}</span>
          </span>
        ) : (
          <strong className="name">{officeWords.notCounted}</strong>
        )}
        <p role="status" className="note">
          {[line?.countAgain ? officeWords.countAgain : "", noteOf(line, due)].filter(Boolean).join(" · ")}
        </p>
      </Band>
      {actions.map(([label, why, count]) => (
        <Band key={why} press={{ onPress: () => write(why, count) }}>
          <span className="name">{label}</span>
        </Band>
      ))}
      <Band tint>
        <p className="note">{officeWords.vanKeep}</p>
      </Band>
    </Screen>
  );
}
