import { type UnitFile, unitFile, type VisitKind } from "@tapside/records";
import { useMemo } from "react";
import { useLocation } from "wouter";
import { kitchenDayWords } from "../kitchen-day/words.ts";
import { Band } from "../look/band.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { tryWords } from "../try/words.ts";
import { firstPathOf, proposedKind } from "../visit/proposed-kind.ts";
import { startVisit } from "../visit/start-visit.ts";
import { waterPageWords } from "../water/words.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";
import { SensorLogs } from "./sensor-logs.tsx";
import { UnitBands } from "./unit-bands.tsx";
import { titleOf } from "./unit-line.ts";

/** A unit's first screen: five numbers along the water, one line, the life strip; everything else opens from there. */
export function UnitScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const { book } = snapshot;
  const file = useMemo(() => unitFile(book, id), [book, id]);
  if (!file) return <Gone />;
  const last = file.visits.at(-1);
  const open = last && !last.closed ? last : undefined;
  const judged =
    file.visits.findLast((visit) => visit.readings.asFound.feedTds || visit.readings.asFound.permeateTds) ??
    last;
  const sensorLogs = [...book.sensorLog.values()].filter((log) => log.unit === id);
  const proposed = proposedKind(file);
  const start = (kind: VisitKind) => navigate(`/visit/${startVisit(live, id, kind)}/${firstPathOf(kind)}`);
  return (
    <Screen
      title={titleOf(file)}
      subtitle={[
        ...file.appliances.map((one) => one.name),
        last ? words.lastVisit(day(last.startedAt)) : words.noVisit,
      ].join(" · ")}
      back={{ label: words.book, to: "/" }}
      middle={{ label: words.asLeft, to: `/unit/${id}/photos` }}
      next={
        open
          ? { label: words.goOn, hint: words.openVisit, to: `/visit/${open.id}` }
          : {
              label: words.startVisit,
              hint: messages.visitKinds[proposed].toLowerCase(),
              onPress: () => start(proposed),
            }
      }
    >
      {judged ? <UnitBands file={file} visitId={judged.id} /> : <UnjudgedUnit file={file} />}
      <Band tint press={{ to: open ? `/visit/${open.id}/expected` : `/unit/${id}/expected` }}>
        <span className="name">{words.expectedToday}</span>
      </Band>
      <Band tint press={{ to: `/unit/${id}/try` }}>
        <span className="name">{tryWords.open}</span>
      </Band>
      <Band tint press={{ to: `/unit/${id}/kitchen-day` }}>
        <span className="name">{kitchenDayWords.open}</span>
        <p className="note">{kitchenDayWords.openHint}</p>
      </Band>
      {open ? null : (
        <Band tint press={{ to: `/unit/${id}/start` }}>
          <span className="name">{words.otherKind}</span>
        </Band>
      )}
      <Band tint press={{ to: `/site/${file.site.id}/water` }}>
        <span className="row">
          <span className="name">{waterPageWords.open}</span>
          <span className="note">{waterPageWords.openHint}</span>
        </span>
      </Band>
      <Places file={file} />
      <History file={file} openVisit={open?.id} />
      <SensorLogs logs={sensorLogs} to={`/unit/${id}/sensor`} />
    </Screen>
  );
}

function UnjudgedUnit({ file }: { file: UnitFile }) {
  return (
    <>
      <Band tint>{words.tap}</Band>
      <Band>
        <p>{words.noVisit}</p>
        <p className="note">{file.point.name}</p>
      </Band>
    </>
  );
}

/** Where everything else about the unit opens. */
function Places({ file }: { file: UnitFile }) {
  const { id } = file.unit;
  const places: readonly (readonly [label: string, note: string, to: string])[] = [
    file.point.id
      ? [words.findIt, file.point.name ?? "", `/point/${file.point.id}`]
      : [words.findIt, officeWords.inStoreAt(file.unit.storedAt ?? ""), `/unit/${id}/move`],
    [officeWords.plan, "", `/unit/${id}/plan`],
    [words.setUp, "", `/unit/${id}/edit`],
    [officeWords.moveTitle, "", `/unit/${id}/move`],
    [officeWords.stickerOf, "", `/unit/${id}/sticker`],
    [officeWords.forKitchen, officeWords.forKitchenHint, `/unit/${id}/kitchen`],
    [officeWords.sensor, officeWords.sensorHint, `/unit/${id}/sensor`],
    [officeWords.claim, officeWords.claimHint, `/unit/${id}/claim`],
  ];
  return (
    <>
      {places.map(([label, note, to]) => (
        <Band key={label} press={{ to }}>
          <span className="row">
            <span className="name">{label}</span>
            <span className="note">{note}</span>
          </span>
        </Band>
      ))}
    </>
  );
}

interface HistoryProps {
  readonly file: UnitFile;
  readonly openVisit: string | undefined;
}

function History({ file, openVisit }: HistoryProps) {
  return (
    <>
      <Heading text={words.history} count={file.visits.length} />
      {[...file.visits].reverse().map((visit) => (
        <Band
          key={visit.id}
          press={{ to: visit.closed ? `/visit/${visit.id}/record` : `/visit/${visit.id}` }}
        >
          <span className="row">
            <span className="name">{day(visit.startedAt)}</span>
            <span className="note">{messages.visitKinds[visit.kind ?? "annual"]}</span>
          </span>
        </Band>
      ))}
      {file.openPoints.map((point) => (
        <Band
          key={point.id}
          press={{ to: openVisit ? `/visit/${openVisit}/points` : `/unit/${file.unit.id}/points` }}
        >
          {messages.openPoint(point)}
        </Band>
      ))}
    </>
  );
}
