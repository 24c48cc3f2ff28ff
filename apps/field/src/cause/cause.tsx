import {
  answersOf,
  type CauseId,
  COMPLAINTS,
  complaintOf,
  confirmedIn,
  countsInBook,
  type Diagnosis,
  hourOf,
  repairedAnswers,
  repairedIn,
  SEARCH,
  TESTS,
  type Test,
  type TestId,
  type TestProposal,
  testOwed,
  visitCase,
} from "@tapside/diagnosis";
import { useEffect, useState } from "react";
import { Band } from "../look/band.tsx";
import { type Press, Rows, Screen } from "../look/screen.tsx";
import { whyNot } from "../screens/why-not.ts";
import { undoPress } from "../visit/go-on.ts";
import type { OpenVisit } from "../visit/use-visit.ts";
import { asAnswers } from "./as-answers.ts";
import { HourKeys } from "./hour-keys.tsx";
import { OddsBands } from "./odds-bands.tsx";
import { RepairSteps } from "./repair-steps.tsx";
import { useDiagnosis } from "./use-diagnosis.ts";
import { causeWords as words } from "./words.ts";

const pathOf = (open: OpenVisit, test: string) => `${open.base}/cause/${test}`;

/** What is most likely wrong at this visit, and what to do next: a test, or a repair. For the technician only. */
export default function CauseScreen({ open }: { open: OpenVisit }) {
  const found = visitCase(open);
  const counts = countsInBook(open.live.snapshot().book.causeCounts);
  const { diagnosis, isFresh, fit, sizes } = useDiagnosis(
    found.kind === "known" ? { ...found.value, hour: hourOf(open), counts } : undefined,
  );
  const [shown, setShown] = useState<"tests" | "plan" | "hour">();
  useEffect(() => {
    window.scrollTo(0, 0);
  }, []);
  const repaired = repairedIn(open);
  const keepRepaired = (causes: readonly CauseId[]) => {
    open.write(asAnswers(repairedAnswers(open, causes, new Date().toISOString())));
    setShown(undefined);
    window.scrollTo(0, 0);
  };
  return (
    <Screen
      title={words.title}
      subtitle={counts ? words.fromCounts(counts.version) : words.fromModel}
      back={undoPress(open)}
      middle={{
        label: words.toJudgement,
        to: `${open.base}/judgement`,
        picture: <Rows />,
      }}
      next={nextPress(open, isFresh ? diagnosis : undefined, () => setShown("plan"))}
    >
      {found.kind === "known" ? null : (
        <Band tint>{found.kind === "refused" ? whyNot(found) : words.noUnit}</Band>
      )}
      {found.kind === "known" ? <FitBand state={!isFresh ? "weighing" : fit} /> : null}
      {repaired.length > 0 ? (
        <Band fixed press={{ onPress: () => keepRepaired(repaired.slice(0, -1)) }}>
          <strong>{words.repaired(repaired.map((cause) => words.causes[cause]).join(", "))}</strong>
          <p className="note">{words.takeBack}</p>
        </Band>
      ) : null}
      {repaired.length > 0 && !testOwed(open) ? <Confirm open={open} /> : null}
      {diagnosis ? (
        <>
          <OddsBands diagnosis={diagnosis} sizes={sizes} />
          <Meanings diagnosis={diagnosis} />
          {diagnosis.plan.steps.length > 0 ? (
            <Band heavy press={{ onPress: () => setShown(shown === "plan" ? undefined : "plan") }}>
              <span className="row">
                <span className="name">{words.plan}</span>
                {shown === "plan" ? <span className="note">{words.hide}</span> : null}
              </span>
            </Band>
          ) : null}
          {shown === "plan" ? (
            <RepairSteps
              steps={diagnosis.plan.steps}
              onDone={(step) => keepRepaired([...repaired, step.cause])}
            />
          ) : null}
          <Band press={{ onPress: () => setShown(shown === "tests" ? undefined : "tests") }}>
            <span className="row">
              <span className="name">{words.otherTests}</span>
              {shown === "tests" ? <span className="note">{words.hide}</span> : null}
            </span>
          </Band>
          {shown === "tests"
            ? diagnosis.tests.map((one) => <TestBand key={one.test} open={open} proposal={one} />)
            : null}
        </>
      ) : null}
      <Band press={{ onPress: () => setShown(shown === "hour" ? undefined : "hour") }}>
        <span className="row">
          <span className="name">{words.here}</span>
          {shown === "hour" ? <span className="note">{words.hide}</span> : null}
        </span>
      </Band>
      {shown === "hour" ? <HourKeys open={open} /> : null}
      <Complaints open={open} />
    </Screen>
  );
}

const FIT_SAYS = {
  weighing: [words.thinking, ""],
  checking: [words.checking, ""],
  explained: [words.explained, ""],
  unexplained: [words.unexplained, words.unexplainedHow],
} as const;

/** How far the weighing is, and whether anything known explains the readings. Keeps its height, so that nothing below it moves. */
function FitBand({ state }: { state: keyof typeof FIT_SAYS }) {
  const [said, how] = FIT_SAYS[state];
  return (
    <div className={`band tint fit-band${state === "unexplained" ? " cannot-move" : ""}`} role="status">
      {how ? <strong>{said}</strong> : said}
      {how ? <p>{how}</p> : null}
    </div>
  );
}

function nextPress(open: OpenVisit, diagnosis: Diagnosis | undefined, onPlan: () => void): Press {
  const judgement = { label: words.toJudgement, to: `${open.base}/judgement`, quiet: true };
  const owed = testOwed(open);
  if (owed) return testPress(open, owed, TESTS[owed].minutes);
  if (!diagnosis) return judgement;
  const { step } = diagnosis;
  if (step.kind === "test") return testPress(open, step.proposal.test, step.proposal.minutes);
  if (step.kind !== "repair") return { ...judgement, hint: step.kind === "sound" ? words.sound : "" };
  const inPlan = diagnosis.plan.steps.some(({ cause }) => cause === step.cause);
  if (!inPlan) return judgement;
  return {
    label: words.putRight,
    hint: `${words.causes[step.cause]}${step.sure ? "" : `. ${words.quickestWay}`}`,
    onPress: () => {
      onPlan();
      requestAnimationFrame(() => document.querySelector("section[aria-label]")?.scrollIntoView());
    },
  };
}

const testPress = (open: OpenVisit, test: TestId, minutes: number): Press => ({
  label: words.tests[test],
  hint: words.at(words.minutes(minutes), words.ports[test]),
  to: pathOf(open, test),
});

/** What each outcome of the next test would mean. */
function Meanings({ diagnosis }: { diagnosis: Diagnosis }) {
  const { step, meanings } = diagnosis;
  if (step.kind !== "test" || meanings.length === 0) return null;
  const { test, setUp, minutes } = step.proposal;
  const [sign] = TESTS[test].signs;
  return (
    <Band tint>
      <strong>{words.test(words.tests[test], words.minutes(minutes), words.ports[test])}</strong>
      {setUp ? <p>{words.prepare(words.setUps[setUp], words.minutes(minutes))}</p> : null}
      {meanings.slice(0, 4).map(({ cause, probability, shows }) => (
        <p key={cause}>
          {words.near(words.signText(sign, shows, 2), words.causes[cause], words.percent(probability))}
        </p>
      ))}
    </Band>
  );
}

function TestBand({ open, proposal }: { open: OpenVisit; proposal: TestProposal }) {
  const { test, minutes } = proposal;
  const { disturbsKitchen }: Test = TESTS[test];
  return (
    <Band press={{ to: pathOf(open, test) }}>
      <span className="name">{words.tests[test]}</span>
      <p className="note">
        {words.at(words.minutes(minutes), words.ports[test])}
        {disturbsKitchen ? `, ${words.disturbs}` : ""}
      </p>
    </Band>
  );
}

/** After a repair was measured again: was it this? Only then may the owner's record say "found". */
function Confirm({ open }: { open: OpenVisit }) {
  const confirmed = confirmedIn(open);
  const others = (cause: CauseId) => confirmed.filter((one) => one !== cause);
  const turn = (cause: CauseId) => (confirmed.includes(cause) ? others(cause) : [...others(cause), cause]);
  return (
    <fieldset className="answers">
      <legend>{words.wasIt}</legend>
      {repairedIn(open).map((cause) => (
        <button
          type="button"
          key={cause}
          aria-pressed={confirmed.includes(cause)}
          onClick={() => open.write({ [`answer:${SEARCH.found}`]: turn(cause) })}
        >
          {words.foundIt(words.causes[cause])}
        </button>
      ))}
    </fieldset>
  );
}

/** Why somebody called: one of a few, taken back by a second tap. */
function Complaints({ open }: { open: OpenVisit }) {
  const said = answersOf(open)[SEARCH.complaint];
  const taken = complaintOf(open.visit);
  return (
    <fieldset className="answers">
      <legend>{words.said}</legend>
      {COMPLAINTS.map((one) => (
        <button
          type="button"
          key={one}
          aria-pressed={taken === one}
          onClick={() => open.write({ [`answer:${SEARCH.complaint}`]: said === one ? null : one })}
        >
          {words.complaints[one]}
        </button>
      ))}
    </fieldset>
  );
}
