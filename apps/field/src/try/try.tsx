import { elementAsNew, type UnitAsRead, unitAsRead } from "@tapside/assessment";
import { converted, type Outcome } from "@tapside/quantities";
import { type UnitFile, unitFile, unitTitle } from "@tapside/records";
import { capillaryFlow } from "@tapside/reverse-osmosis";
import { useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { day } from "../screens/day.ts";
import { Gone } from "../screens/gone.tsx";
import { whyNot } from "../screens/why-not.ts";
import { useBook } from "../store/use-book.ts";
import { contextNow } from "../visit/context-now.ts";
import { applied, asItIs, type Tried } from "./change.ts";
import { Fold } from "./fold.tsx";
import { Knobs } from "./knobs.tsx";
import { LeakyNight } from "./leaky-night.tsx";
import { outcomeOf, type TriedOutcome } from "./outcome-of.ts";
import { ElementPicture, FillingPicture, short, TankPicture } from "./pictures.tsx";
import { RecoveryWanted } from "./recovery-wanted.tsx";
import { Standing } from "./standing.tsx";
import "./try.css";
import { tryWords as words } from "./words.ts";

/** One page to try changes on a unit: turn by thumb, see filling, tank and element answer at once. */
export function TryScreen({ id }: { id: string }) {
  const { snapshot } = useBook();
  const { book } = snapshot;
  const file = useMemo(() => unitFile(book, id), [book, id]);
  const base = useMemo(() => (file ? unitAsRead(file, contextNow(book)) : undefined), [file, book]);
  if (!file || !base) return <Gone />;
  if (base.kind !== "known")
    return (
      <Screen title={words.title} subtitle={unitTitle(file)} back={{ label: words.unit, to: `/unit/${id}` }}>
        <Band>{whyNot(base)}</Band>
      </Screen>
    );
  return <Bench file={file} base={base.value} />;
}

function Bench({ file, base }: { file: UnitFile; base: UnitAsRead }) {
  const { snapshot } = useBook();
  const start = useMemo(() => asItIs(base), [base]);
  const [tried, setTried] = useState<Tried>(start);
  const fresh = useMemo(() => elementAsNew(file, contextNow(snapshot.book)), [file, snapshot.book]);
  const now = useMemo(() => outcomeOf(base), [base]);
  const asTried = useMemo(() => {
    const element = fresh.kind === "known" ? base.unit.elements.map(() => fresh.value) : base.unit.elements;
    return applied(base, tried, element);
  }, [base, tried, fresh]);
  const changed = useMemo(() => outcomeOf(asTried), [asTried]);
  const visit = file.visits.find((one) => one.id === base.visit);
  return (
    <Screen
      title={words.title}
      subtitle={`${unitTitle(file)}, ${visit ? words.from(day(visit.startedAt)) : words.fromNameplate}`}
      back={{ label: words.unit, to: `/unit/${file.unit.id}` }}
      next={{ label: words.asItIs, hint: words.asItIsHint, onPress: () => setTried(start) }}
    >
      <div className="try">
        <div aria-live="polite">
          <Answer now={now} changed={changed} minimumKPa={base.minimumKPaGauge} />
        </div>
        {now.kind === "known" && changed.kind === "known" ? (
          <>
            <Band>
              <FillingPicture now={now.value} changed={changed.value} />
            </Band>
            <Band>
              <TankPicture now={now.value} changed={changed.value} />
            </Band>
            <Band>
              <ElementPicture now={now.value} changed={changed.value} />
            </Band>
          </>
        ) : null}
        <Fold title={words.standing} hint={words.standingHint}>
          {() => <Standing base={base} changed={asTried} />}
        </Fold>
        <Fold title={words.leak} hint={words.leakHint}>
          {() => <LeakyNight tried={asTried} />}
        </Fold>
        <Fold title={words.restrictorWanted} hint={words.restrictorWantedHint}>
          {() => <RecoveryWanted file={file} own={base.unit.restrictor} tried={asTried} />}
        </Fold>
        <Band tint>
          {beyondLaminar(asTried) ? <p>{words.beyondLaminar}</p> : null}
          <p className="note">{words.estimate}</p>
        </Band>
      </div>
      <Knobs
        tried={tried}
        start={start}
        canRenew={fresh.kind === "known"}
        hasBooster={base.unit.booster !== undefined}
        vented={file.unit.ventedTank === true}
        onTurn={setTried}
      />
    </Screen>
  );
}

/** A capillary driven faster than its law holds, at the pressure and warmth that are tried. */
function beyondLaminar({ unit, conditions }: UnitAsRead): boolean {
  const { restrictor } = unit;
  if (restrictor.kind !== "capillary") return false;
  const { feedPressureKPaGauge, temperatureC } = conditions;
  return capillaryFlow(restrictor, feedPressureKPaGauge, temperatureC).regime === "beyond-laminar";
}

interface AnswerProps {
  readonly now: Outcome<TriedOutcome>;
  readonly changed: Outcome<TriedOutcome>;
  readonly minimumKPa: number;
}

/** The answer: three figures, each beside what it is now; or why there is none. */
function Answer({ now, changed, minimumKPa }: AnswerProps) {
  if (changed.kind !== "known") return <Band heavy>{whyNot(changed)}</Band>;
  const minimum = minimumKPa > 0 ? converted(minimumKPa, "kPa", "psi").toFixed(0) : undefined;
  const rows = [
    [words.hours, "hours", words.h],
    [words.litres(minimum), "usableL", words.L],
    [words.delivered, "deliveredMgPerL", words.ppm],
  ] as const;
  return (
    <Band heavy>
      {rows.map(([label, key, unit]) => {
        const is = unit(short(changed.value[key]));
        return (
          <span className="row answer" key={key}>
            <span>{label}</span>
            <strong>{now.kind === "known" ? words.instead(is, unit(short(now.value[key]))) : is}</strong>
          </span>
        );
      })}
    </Band>
  );
}
