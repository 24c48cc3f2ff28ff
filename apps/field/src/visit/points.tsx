import type { Kept, OpenPoint, UnitFile } from "@tapside/records";
import { unitFile } from "@tapside/records";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { type Press, Screen } from "../look/screen.tsx";
import { day } from "../screens/day.ts";
import { Gone } from "../screens/gone.tsx";
import type { LiveBook } from "../store/open-book.ts";
import { useBook } from "../store/use-book.ts";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

/** Points left open at earlier visits, within a visit. */
export function PointsOfVisit({ open }: { open: OpenVisit }) {
  const { steps, hint, to } = useGoOn(open, "points");
  const earlier = open.file.openPoints.filter((point) => point.openedVisit !== open.visit.id);
  return (
    <Screen
      title={words.titles.points!}
      subtitle={words.pointsHint}
      ticks={<VisitTicks steps={steps} here="points" />}
      back={undoPress(open)}
      middle={photoPress(open, "asFound")}
      next={{ label: words.next, hint, to }}
    >
      {earlier.map((point) => (
        <Point key={point.id} point={point} file={open.file} live={open.live} visit={open.visit.id} />
      ))}
      {earlier.length === 0 ? <Band>{words.noPoints}</Band> : null}
    </Screen>
  );
}

/** The same at the unit, between visits. */
export function PointsOfUnit({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const back: Press = live.canUndo
    ? { label: words.undo, onPress: () => void live.undo() }
    : { label: words.back, to: `/unit/${id}` };
  return (
    <Screen
      title={words.titles.points!}
      subtitle={words.pointsHint}
      back={back}
      next={{ label: words.toUnit, to: `/unit/${id}` }}
    >
      {file.openPoints.map((point) => (
        <Point key={point.id} point={point} file={file} live={live} />
      ))}
      {file.openPoints.length === 0 ? <Band>{words.noPoints}</Band> : null}
      {file.settledPoints.map((point) => (
        <Band key={point.id} tint>
          <p>{messages.openPoint(point)}</p>
          <p className="note">{messages.settledPoint(point)}</p>
        </Band>
      ))}
    </Screen>
  );
}

interface PointProps {
  readonly point: Kept<OpenPoint>;
  readonly file: UnitFile;
  readonly live: LiveBook;
  /** Absent between visits. */
  readonly visit?: string;
}

type Answer = "closed" | "refused" | "kept";

/** One point: closed, refused by a named person, or kept open with its reason. */
function Point({ point, file, live, visit }: PointProps) {
  const [answer, setAnswer] = useState<Answer>();
  const [name, setName] = useState(file.site.askName ?? "");
  const [role, setRole] = useState(file.site.askRole ?? "");
  const [text, setText] = useState("");
  const [problem, setProblem] = useState("");
  const today = todayIso();
  const write = (fields: Readonly<Record<string, string>>) => void live.write("openPoint", point.id, fields);
  const close = () => write({ closedOn: today, ...(visit && { closedVisit: visit }) });
  const refuse = () => {
    if (!name.trim()) return setProblem(words.needPerson);
    write({
      refusedBy: name.trim(),
      refusedRole: role.trim(),
      refusedOn: today,
      ...(text.trim() && { refusedWords: text.trim() }),
      ...(visit && { refusedVisit: visit }),
    });
  };
  const keep = () => {
    write({
      keptOn: today,
      ...(visit && { keptVisit: visit }),
      ...(text.trim() && { keptReason: text.trim() }),
    });
    setAnswer(undefined);
  };
  const opened = file.visits.find((one) => one.id === point.openedVisit)?.startedAt;
  return (
    <section className="point">
      <Band>
        <strong className="name">{messages.openPoint(point)}</strong>
        <p className="note">
          {[
            opened && words.since(day(opened)),
            point.owner,
            point.keptReason && words.keptBecause(point.keptReason),
          ]
            .filter(Boolean)
            .join(" · ")}
        </p>
      </Band>
      <div className="answers">
        <button type="button" onClick={close}>
          {words.pointDone}
        </button>
        <button type="button" aria-pressed={answer === "refused"} onClick={() => setAnswer("refused")}>
          {words.pointRefused}
        </button>
        <button
          type="button"
          aria-pressed={answer === "kept" || (visit !== undefined && point.keptVisit === visit)}
          onClick={() => setAnswer("kept")}
        >
          {words.pointKept}
        </button>
      </div>
      {answer === "refused" ? (
        <>
          <TextEntry label={words.person} value={name} onChange={setName} />
          <TextEntry label={words.role} value={role} onChange={setRole} />
          <TextEntry label={words.theirWords} value={text} onChange={setText} />
          <button type="button" className="choice plain" onClick={refuse}>
            <strong>{words.keepRefusal}</strong>
          </button>
        </>
      ) : null}
      {answer === "kept" ? (
        <>
          <TextEntry label={words.whyOpen} value={text} onChange={setText} />
          <button type="button" className="choice plain" onClick={keep}>
            <strong>{words.keepOpen}</strong>
          </button>
        </>
      ) : null}
      {problem ? <p className="band problem">{problem}</p> : null}
    </section>
  );
}
