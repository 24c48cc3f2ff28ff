import { type Counted, type DueRow, type MonthlySummary, monthlyCsv, monthlySummary } from "@tapside/book";
import type { PartRole, UnitFile } from "@tapside/records";
import { type ReactNode, useEffect, useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { handOver } from "../store/hand-over.ts";
import { inStretches } from "../store/pause.ts";
import { useBook } from "../store/use-book.ts";
import { Numeral } from "../visit/numeral.tsx";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";
import { DrawnDay } from "./drawn-day.tsx";
import { titleOf } from "./unit-line.ts";
import { useUnitLines } from "./use-unit-lines.ts";

interface MonthScreenProps {
  /** "2026-11". */
  readonly month: string;
  readonly chain: string | undefined;
}

const monthName = (month: string): string =>
  new Date(`${month}-15T12:00:00`).toLocaleDateString(messages.record.locale, {
    month: "long",
    year: "numeric",
  });

function shifted(month: string, by: number): string {
  const [year = 0, index = 1] = month.split("-").map(Number);
  return new Date(Date.UTC(year, index - 1 + by, 1)).toISOString().slice(0, 7);
}

/** A month over all sites, or those of a chain: what was done, found and fitted, and what stands open. */
export function MonthScreen({ month, chain }: MonthScreenProps) {
  const { snapshot } = useBook();
  const summary = useSummary(month, chain);
  const chains = [...new Set([...snapshot.book.site.values()].flatMap((site) => site.chain ?? []))].sort();
  const to = (when: string, of = chain) => `/month/${when}${of ? `/${encodeURIComponent(of)}` : ""}`;
  const save = () =>
    summary && void handOver(new Blob([monthlyCsv(summary)], { type: "text/csv" }), `month-${month}.csv`);
  return (
    <Screen
      title={monthName(month)}
      subtitle={[
        chain ?? officeWords.allChains,
        summary ? officeWords.monthOf(summary.visits.length, summary.sites) : officeWords.counting,
      ].join(" · ")}
      back={{ label: words.back, to: chain ? `/chain/${encodeURIComponent(chain)}` : "/more" }}
      next={
        summary
          ? { label: officeWords.monthCsv, onPress: save }
          : { label: officeWords.counting, to: "/more", quiet: true }
      }
    >
      <div className="turn">
        {[-1, 1].map((by) => (
          <Band key={by} press={{ to: to(shifted(month, by)) }}>
            {monthName(shifted(month, by))}
          </Band>
        ))}
      </div>
      {chains.length > 0 && chain ? (
        <Band press={{ to: to(month, "") }}>{officeWords.allChains}</Band>
      ) : (
        chains.map((one) => (
          <Band key={one} press={{ to: to(month, one) }}>
            {one}
          </Band>
        ))
      )}
      {summary ? <SummaryOf summary={summary} /> : null}
    </Screen>
  );
}

/** Each visit is judged anew: a few at a time, so that the screen goes on following the finger. */
function useSummary(month: string, chain: string | undefined): MonthlySummary | undefined {
  const { snapshot } = useBook();
  const lines = useUnitLines();
  const [summary, setSummary] = useState<MonthlySummary>();
  const { settings } = snapshot.book;
  useEffect(() => {
    let wanted = true;
    const rows = lines.map((line) => line.row);
    const steps = monthlySummary({ month, chain, rows, today: todayIso(), settings });
    void inStretches(steps).then((made) => wanted && setSummary(made));
    return () => {
      wanted = false;
      steps.return(undefined as never);
    };
  }, [lines, settings, month, chain]);
  return summary;
}

const findingTitle = (id: string) =>
  messages.finding({ id, phase: "asFound", verdict: "outside", consequence: 0 }).title;

function SummaryOf({ summary }: { summary: MonthlySummary }) {
  const kinds: Readonly<Record<string, string>> = messages.visitKinds;
  return (
    <>
      <Counts title={officeWords.visitsBy} counts={summary.byKind} name={(id) => kinds[id] ?? id} />
      <Counts title={officeWords.outsideFound} counts={summary.findings} name={findingTitle} />
      <Counts
        title={officeWords.partsUsed}
        counts={summary.partsUsed}
        name={(id) => messages.roles[id as PartRole] ?? id}
      />
      <Units title={officeWords.overdueUnits} items={summary.overdue.map(dueAt)} />
      <Units title={officeWords.dueSoonUnits} items={summary.dueSoon.map(dueAt)} />
      <Units
        title={officeWords.openPointsAll}
        items={summary.openPoints.map(({ file, point }) => ({ file, note: messages.openPoint(point) }))}
      />
      <Units
        title={officeWords.bypassedUnits}
        items={summary.bypassed.map(({ file, until }) => ({
          file,
          note: officeWords.until(until && day(until)),
        }))}
      />
    </>
  );
}

function Section({ title, count, children }: { title: string; count: number; children: ReactNode }) {
  return (
    <section aria-label={title}>
      <Heading text={title} count={count === 0 ? officeWords.none : count} />
      {children}
    </section>
  );
}

interface CountsProps {
  readonly title: string;
  readonly counts: readonly Counted[];
  readonly name: (id: string) => string;
}

const Counts = ({ title, counts, name }: CountsProps) => (
  <Section title={title} count={counts.reduce((sum, one) => sum + one.count, 0)}>
    {counts.map(({ id, count }) => (
      <Band key={id}>
        <span className="with-count">
          <span className="name">{name(id)}</span>
          <Numeral text={String(count)} height={28} />
        </span>
      </Band>
    ))}
  </Section>
);

interface Item {
  readonly file: UnitFile;
  readonly note: string;
  readonly on?: string | undefined;
}

const dueAt = ({ file, reasons: [first] }: DueRow): Item => ({
  file,
  note: first ? messages.dueReason(first) : "",
  on: first?.on,
});

interface UnitsProps {
  readonly title: string;
  readonly items: readonly Item[];
}

const Units = ({ title, items }: UnitsProps) => (
  <Section title={title} count={items.length}>
    <GrowingList items={items} more={officeWords.moreUnits}>
      {({ file, note, on }) => (
        <Band key={`${file.unit.id} ${note}`} press={{ to: `/unit/${file.unit.id}` }}>
          <span className={on === undefined ? undefined : "on-day"}>
            <span>
              <strong className="name">{titleOf(file)}</strong>
              <span className="note below">{note}</span>
            </span>
            {on === undefined ? null : <DrawnDay iso={on} today={todayIso()} />}
          </span>
        </Band>
      )}
    </GrowingList>
  </Section>
);
