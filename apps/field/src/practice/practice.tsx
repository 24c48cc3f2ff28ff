import {
  CAUSE_IDS,
  type CauseId,
  type Difficulty,
  minutesOf,
  type Practice,
  practiceUnit,
  type Readings,
  repairInPractice,
  SIGN_IDS,
  TEST_IDS,
  TESTS,
  takeTest,
} from "@tapside/diagnosis";
import { useState } from "react";
import { OddsBands } from "../cause/odds-bands.tsx";
import { useDiagnosis } from "../cause/use-diagnosis.ts";
import { causeWords, practiceWords as words } from "../cause/words.ts";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { PracticeEnd } from "./practice-end.tsx";

const newSeed = () => crypto.getRandomValues(new Uint32Array(1))[0]! % 2 ** 31;
const LEVELS: readonly Difficulty[] = ["easy", "usual", "hard"];

/** The exercise under way outlives a look at another screen, not the app. */
let kept: { readonly start: Practice; readonly now: Practice } | undefined;

/** A simulated unit with hidden faults. Nothing of it is written to the book. */
export default function PracticeScreen() {
  const [run, setRun] = useState(kept);
  const [decided, setDecided] = useState(false);
  const turnTo = (next: typeof kept) => {
    kept = next;
    setRun(next);
    window.scrollTo(0, 0);
  };
  const begin = (difficulty: Difficulty) => {
    const unit = practiceUnit(newSeed(), difficulty);
    setDecided(false);
    turnTo({ start: unit, now: unit });
  };
  if (!run) return <Choose onChoose={begin} />;
  const { start, now } = run;
  if (decided) return <PracticeEnd start={start} end={now} onAgain={() => turnTo(undefined)} />;
  return (
    <Bench now={now} onChange={(next) => turnTo({ start, now: next })} onDecide={() => setDecided(true)} />
  );
}

function Choose({ onChoose }: { onChoose: (difficulty: Difficulty) => void }) {
  return (
    <Screen
      title={words.title}
      subtitle={words.simulated}
      back={{ label: words.more, to: "/more" }}
      next={{ label: words.levels.usual[0], hint: words.levels.usual[1], onPress: () => onChoose("usual") }}
    >
      <Band tint>
        <strong>{words.choose}</strong>
      </Band>
      {LEVELS.map((level) => (
        <Band key={level} press={{ onPress: () => onChoose(level) }}>
          <span className="name">{words.levels[level][0]}</span>
          <p className="note">{words.levels[level][1]}</p>
        </Band>
      ))}
    </Screen>
  );
}

interface BenchProps {
  readonly now: Practice;
  readonly onChange: (next: Practice) => void;
  readonly onDecide: () => void;
}

/** The unit on the bench: what was read, odds on demand, tests and repairs with their minutes. */
function Bench({ now, onChange, onDecide }: BenchProps) {
  const [list, setList] = useState<"tests" | "repair">("tests");
  const [odds, setOdds] = useState(false);
  const { diagnosis } = useDiagnosis(
    odds ? { scene: now.scene, readings: now.readings, hour: { setUps: now.setUps } } : undefined,
  );
  const { complaint } = now.scene;
  return (
    <Screen
      title={words.title}
      subtitle={words.simulated}
      aside={words.spent(causeWords.minutes(now.minutes))}
      back={{ label: words.more, to: "/more" }}
      next={{ label: words.decide, onPress: onDecide }}
    >
      {complaint ? (
        <Band tint>
          {words.called}: <strong>{causeWords.complaints[complaint]}</strong>
        </Band>
      ) : null}
      <Read readings={now.readings} />
      <Band heavy press={{ onPress: () => setOdds(!odds) }}>
        <span className="name">{odds ? words.hideOdds : words.odds}</span>
      </Band>
      {odds && !diagnosis ? <Band tint>{causeWords.thinking}</Band> : null}
      {odds && diagnosis ? (
        <>
          <Band tint>
            <p className="note">{causeWords.fromModel}</p>
          </Band>
          <OddsBands diagnosis={diagnosis} />
        </>
      ) : null}
      <fieldset className="answers big">
        <legend>{words.doWhat}</legend>
        {(["tests", "repair"] as const).map((one) => (
          <button type="button" key={one} aria-pressed={list === one} onClick={() => setList(one)}>
            {words[one]}
          </button>
        ))}
      </fieldset>
      {list === "tests" ? (
        <Tests now={now} onChange={onChange} />
      ) : (
        <Repairs onRepair={(cause) => onChange(repairInPractice(now, cause))} />
      )}
    </Screen>
  );
}

function Read({ readings }: { readings: Readings }) {
  const read = SIGN_IDS.filter((sign) => readings[sign] !== undefined);
  return (
    <Band>
      <strong>{words.readings}</strong>
      {read.length === 0 ? <p className="note">{words.nothingRead}</p> : null}
      {read.map((sign) => (
        <p className="row" key={sign}>
          <span>{causeWords.signs[sign]}</span>
          <strong>{causeWords.signText(sign, readings[sign]!)}</strong>
        </p>
      ))}
    </Band>
  );
}

function Tests({ now, onChange }: Omit<BenchProps, "onDecide">) {
  const possible = TEST_IDS.filter((test) => !now.scene.impossible?.includes(test));
  return possible.map((test) => (
    <Band key={test} press={{ onPress: () => onChange(takeTest(now, test)) }}>
      <span className="row">
        <span>{causeWords.tests[test]}</span>
        <span className="note">{causeWords.minutes(minutesOf(test, { setUps: now.setUps }))}</span>
      </span>
      {TESTS[test].signs.every((sign) => now.readings[sign] !== undefined) ? (
        <span className="note">{words.alreadyRead}</span>
      ) : null}
    </Band>
  ));
}

function Repairs({ onRepair }: { onRepair: (cause: CauseId) => void }) {
  return CAUSE_IDS.filter((cause) => cause !== "healthy").map((cause) => (
    <Band key={cause} press={{ onPress: () => onRepair(cause) }}>
      {causeWords.causes[cause]}
    </Band>
  ));
}
