import {
  type CarryInVan,
  carryInVan,
  carryList,
  type DueRow,
  daysAfter,
  plannedFor,
  type VanLine,
  vanStock,
} from "@tapside/book";
import { GONE, type PartRole } from "@tapside/records";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Form } from "../look/form.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { Numeral } from "../visit/numeral.tsx";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { weekdayOf } from "./day.ts";
import { DueLine } from "./due-line.tsx";
import { Gone } from "./gone.tsx";
import { LikelyParts } from "./likely-parts.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { useUnitLines } from "./use-unit-lines.ts";

const longDay = (day: string) => weekdayOf(new Date(`${day}T12:00:00`));

/** One day: its visits in order, the parts to carry for them, and what else is due by then. */
export function DayScreen({ date }: { date: string }) {
  const { live, snapshot } = useBook();
  const lines = useUnitLines();
  const plans = plannedFor(snapshot.book, date);
  const byId = new Map(lines.map((line) => [line.id, line]));
  const rows = plans.flatMap((plan) => byId.get(plan.unit ?? "")?.row ?? []);
  const stock = vanStock(snapshot.book);
  const carry = carryInVan(carryList(rows, date), stock);
  const missing = carry.filter((line) => live.field(`van:${date}`, line.role) !== true);
  const near = lines
    .filter((line) => (line.row.reasons[0]?.on ?? "9999") <= date)
    .filter((line) => !plans.some((plan) => plan.unit === line.id))
    .slice(0, 30);
  const [next] = plans;
  const add = (unit: string) => void live.write("plan", live.newId(), { unit, on: date });
  return (
    <Screen
      title={longDay(date)}
      aside={officeWords.visits(plans.length)}
      back={undoOrBack(live, "/")}
      middle={{ label: officeWords.scan, to: "/scan" }}
      next={
        next
          ? {
              label: byId.get(next.unit ?? "")?.title ?? words.unit,
              hint:
                missing.length > 0
                  ? officeWords.notLoaded(missing.reduce((sum, line) => sum + line.count, 0))
                  : officeWords.allLoaded,
              to: `/unit/${next.unit}`,
            }
          : { label: words.book, to: "/" }
      }
    >
      <div className="turn">
        <Band press={{ to: `/day/${daysAfter(date, -1)}` }}>{longDay(daysAfter(date, -1))}</Band>
        <Band press={{ to: `/day/${daysAfter(date, 1)}` }}>{longDay(daysAfter(date, 1))}</Band>
      </div>
      {plans.length === 0 ? <p className="band">{officeWords.nothingPlanned}</p> : null}
      {plans.map((plan, i) => {
        const line = byId.get(plan.unit ?? "");
        return (
          <Band
            key={plan.id}
            press={{ to: `/unit/${plan.unit}/plan` }}
            fixed={line?.fixed ?? false}
            heavy={i === plans.length - 1}
          >
            <span className="at-time">
              {plan.at ? <Numeral text={plan.at.replace(/^0/, "")} height={32} /> : <span />}
              <span>
                <strong className="name">{line?.title}</strong>
                <span className="note">{plan.reason ?? line?.line}</span>
              </span>
            </span>
          </Band>
        );
      })}
      <Carry date={date} carry={carry} />
      {rows.length > 0 ? <LikelyParts files={rows.map((row) => row.file)} /> : null}
      {near.length > 0 ? <Heading text={officeWords.dueNear} count={officeWords.addToDay} /> : null}
      {near.map((line) => (
        <Band key={line.id} press={{ onPress: () => add(line.id) }}>
          <DueLine line={line} today={todayIso()} also={lackFor(line.row, date, stock)} />
        </Band>
      ))}
    </Screen>
  );
}

/** What a visit would lack of what is in the van; empty where nothing, or nothing was counted. */
function lackFor(row: DueRow, date: string, stock: readonly VanLine[]): string {
  const lacking = carryInVan(carryList([row], date), stock).filter((line) => (line.short ?? 0) > 0);
  return lacking
    .map(
      (line) =>
        `${messages.roles[line.role as PartRole] ?? line.role}: ${officeWords.vanShort(line.short ?? 0)}`,
    )
    .join(", ");
}

/** The parts for the day; a solid square is in the van. */
function Carry({ date, carry }: { date: string; carry: readonly CarryInVan[] }) {
  const { live } = useBook();
  if (carry.length === 0) return null;
  const short = carry.some((line) => (line.short ?? 0) > 0);
  const loaded = (role: string) => live.field(`van:${date}`, role) === true;
  const turn = (role: string) =>
    void live.write("draft", `van:${date}`, { [role]: !loaded(role) }, { undoable: false });
  return (
    <>
      <Band tint>
        <span className="row">
          <strong>{officeWords.carry}</strong>
          <span className="note">{officeWords.inVan}</span>
        </span>
      </Band>
      <Band press={{ to: "/van" }} fixed={short}>
        <span className="name">{officeWords.van}</span>
      </Band>
      {carry.map((line) => (
        <button
          type="button"
          key={line.role}
          className="choice right tint"
          aria-pressed={loaded(line.role)}
          onClick={() => turn(line.role)}
        >
          <Numeral text={String(line.count)} height={32} />
          <span>
            {messages.roles[line.role as PartRole] ?? line.role}
            {line.inVan === undefined ? null : (
              <span className="note">
                {[officeWords.vanCount(line.inVan), line.short ? officeWords.vanShort(line.short) : ""]
                  .filter(Boolean)
                  .join(" · ")}
              </span>
            )}
          </span>
        </button>
      ))}
    </>
  );
}

/** The plan of one unit's next visit: day, time, reason. */
export function PlanScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const unit = snapshot.book.unit.get(id);
  if (!unit) return <Gone />;
  const today = todayIso();
  const plan = [...snapshot.book.plan.values()]
    .filter((one) => one.unit === id && (one.on ?? "9999") >= today)
    .sort((a, b) => ((a.on ?? "9") < (b.on ?? "9") ? -1 : 1))[0];
  const recordId = plan?.id ?? `plan:${id}`;
  const takeOff = () => {
    void live.write("plan", recordId, { [GONE]: true });
    navigate(`/unit/${id}`);
  };
  return (
    <Screen
      title={officeWords.plan}
      subtitle={unit.name}
      back={undoOrBack(live, `/unit/${id}`)}
      next={
        plan?.on
          ? { label: officeWords.dayTitle, hint: longDay(plan.on), to: `/day/${plan.on}` }
          : { label: words.unit, to: `/unit/${id}` }
      }
    >
      {plan ? (
        <>
          <Form
            kind="plan"
            id={recordId}
            specs={[
              { kind: "date", field: "on", label: officeWords.planDay, toCome: true },
              { kind: "time", field: "at", label: officeWords.planTime },
              { kind: "text", field: "reason", label: officeWords.planReason },
            ]}
          />
          <Band tint press={{ onPress: takeOff }}>
            {officeWords.takeOff}
          </Band>
        </>
      ) : (
        [0, 1, 7].map((ahead) => (
          <Band
            key={ahead}
            press={{
              onPress: () => void live.write("plan", live.newId(), { unit: id, on: daysAfter(today, ahead) }),
            }}
          >
            <span className="name">{longDay(daysAfter(today, ahead))}</span>
          </Band>
        ))
      )}
    </Screen>
  );
}
