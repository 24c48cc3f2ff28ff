import { scoreTotals, techniciansIn, type VisitScore } from "@tapside/book";
import { CAUSE_IDS, type SaidAndFound, shareOf } from "@tapside/diagnosis";
import { causeWords } from "../cause/words.ts";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { day } from "../screens/day.ts";
import { titleOf } from "../screens/unit-line.ts";
import { Numeral } from "../visit/numeral.tsx";
import { bookWords } from "../words/book.ts";
import { useScore } from "./use-score.ts";
import { scoreWords as words } from "./words.ts";

/** The same day a year ago. */
function yearAgo(today: string): string {
  return `${Number(today.slice(0, 4)) - 1}${today.slice(4)}`;
}

/** What was told and what came of it, openly: bands and readings, causes said and found, elements kept and changed, visits called back. */
export default function ScoreScreen() {
  const since = yearAgo(todayIso());
  const { visits, done, causes } = useScore(since);
  return (
    <Screen
      title={words.title}
      subtitle={visits ? words.since(day(since)) : words.counting(done)}
      back={{ label: bookWords.back, to: "/more" }}
      next={{ label: bookWords.book, to: "/" }}
    >
      {visits ? (
        <>
          <Told visits={visits} />
          <Causes causes={causes} />
          <Elements visits={visits} />
          <CallBacks visits={visits} />
          <People visits={visits} causes={causes} />
          <Band tint>{words.small}</Band>
        </>
      ) : null}
    </Screen>
  );
}

interface OfVisits {
  readonly visits: readonly VisitScore[];
}

function Told({ visits }: OfVisits) {
  const { told, inside } = scoreTotals(visits);
  const { value, low, high } = shareOf(inside, told);
  const [percent, from, to] = [value, low, high].map((part) => String(Math.round(100 * part)));
  const share = `${percent} %`;
  return (
    <>
      <Heading text={words.readings} />
      <Band>
        {told === 0 ? (
          <p>{words.noneTold}</p>
        ) : (
          <>
            <span className="with-u">
              <Numeral text={percent!} height={58} name={share} />
              <span aria-hidden="true">%</span>
            </span>
            <p>{words.inside(share)}</p>
            <p className="note">{words.insideOf(inside, told, `${from}–${to} %`)}</p>
          </>
        )}
      </Band>
    </>
  );
}

interface OfCauses {
  readonly causes: readonly SaidAndFound[];
}

function Causes({ causes }: OfCauses) {
  const first = causes.filter(({ place }) => place === 1).length;
  return (
    <>
      <Heading
        text={words.causes}
        count={causes.length > 0 ? words.firstOf(first, causes.length) : undefined}
      />
      {causes.length === 0 ? <Band>{words.noneFound}</Band> : null}
      {CAUSE_IDS.map((id) => [id, causes.filter(({ found }) => found === id)] as const)
        .filter(([, found]) => found.length > 0)
        .map(([id, found]) => (
          <Band key={id}>
            <span className="row">
              <span className="name">{causeWords.causes[id]}</span>
              <span className="note">
                {words.firstOf(found.filter(({ place }) => place === 1).length, found.length)}
              </span>
            </span>
            {[...new Set(found.filter(({ place }) => place > 1).map(({ saidFirst }) => saidFirst))].map(
              (said) => (
                <p className="note" key={said}>
                  {words.saidInstead(causeWords.causes[said])}
                </p>
              ),
            )}
          </Band>
        ))}
    </>
  );
}

function Elements({ visits }: OfVisits) {
  const { elements } = scoreTotals(visits);
  return (
    <>
      <Heading text={words.elements} />
      {(["keptAsGood", "new", "newThoughGood"] as const).map((which) => (
        <Band key={which}>
          <span className="with-count">
            <span className="name">{words.element[which]}</span>
            <Numeral text={String(elements[which])} height={28} />
          </span>
        </Band>
      ))}
    </>
  );
}

function CallBacks({ visits }: OfVisits) {
  const back = visits.filter(({ callsBack }) => callsBack !== undefined);
  return (
    <>
      <Heading text={words.callBacks} count={back.length} />
      {back.length === 0 ? <Band>{words.noneBack}</Band> : null}
      {back.map((one) => (
        <Band key={one.id} press={{ to: `/visit/${one.id}` }}>
          <span className="row">
            <span className="name">{titleOf(one.file)}</span>
            <span className="note">{day(one.on)}</span>
          </span>
          <p className="note">{words.afterVisitOf(one.callsBack ?? "")}</p>
        </Band>
      ))}
    </>
  );
}

function People({ visits, causes }: OfVisits & OfCauses) {
  return (
    <>
      <Heading text={words.people} />
      {techniciansIn(visits).map((who) => {
        const totals = scoreTotals(visits, who);
        const theirs = causes.filter(({ technician }) => technician === who);
        const first = theirs.filter(({ place }) => place === 1).length;
        return (
          <Band key={who}>
            <span className="row">
              <span className="name">{who}</span>
              <span className="note">{words.person(totals.visits, totals.callBacks)}</span>
            </span>
            {theirs.length > 0 ? <p className="note">{words.firstOf(first, theirs.length)}</p> : null}
          </Band>
        );
      })}
    </>
  );
}
