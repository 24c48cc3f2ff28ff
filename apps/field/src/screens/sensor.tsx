import { decodeText, readSensor, type SensorPreview } from "@tapside/book";
import type { Outcome } from "@tapside/quantities";
import { unitFile } from "@tapside/records";
import { inSign } from "@tapside/words";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { pickFile } from "../look/pick-photo.ts";
import { Rows, Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { clockOf, day } from "./day.ts";
import { Gone } from "./gone.tsx";
import { RefusedRows } from "./refused-rows.tsx";
import { SensorLogs } from "./sensor-logs.tsx";
import { undoOrBack } from "./setup-keys.ts";
import { titleOf } from "./unit-line.ts";

interface Chosen {
  readonly name: string;
  readonly read: Outcome<SensorPreview>;
}

/** A sensor's file comes in: looked at first, every refused row with its reason, then kept with the unit as one step of undo. */
export function SensorScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [chosen, setChosen] = useState<Chosen>();
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const preview = chosen?.read.kind === "known" ? chosen.read.value : undefined;
  const logs = [...snapshot.book.sensorLog.values()].filter((log) => log.unit === id);
  const choose = async () => {
    const picked = await pickFile(".csv,text/csv,text/plain");
    if (!picked) return;
    const text = decodeText(new Uint8Array(await picked.arrayBuffer()));
    setChosen({
      name: picked.name.replace(/\.\w+$/, ""),
      read: readSensor(text, -new Date().getTimezoneOffset()),
    });
  };
  const takeIn = () => {
    if (!preview || !chosen) return;
    const lines = preview.lines.map((line) => ({ ...line }));
    void live.write("sensorLog", live.newId(), { unit: id, name: chosen.name, takenOn: todayIso(), lines });
    setChosen(undefined);
  };
  const ready = preview !== undefined && preview.lines.length > 0;
  return (
    <Screen
      title={officeWords.sensor}
      subtitle={titleOf(file)}
      back={undoOrBack(live, `/unit/${id}`)}
      middle={{ label: words.unit, to: `/unit/${id}`, picture: <Rows /> }}
      next={
        ready
          ? {
              label: officeWords.takeIn,
              hint: officeWords.sensorReadings(preview.lines.length),
              onPress: takeIn,
            }
          : { label: officeWords.chooseFile, onPress: () => void choose() }
      }
    >
      <Band tint>
        <p>{officeWords.sensorColumns}</p>
      </Band>
      {ready ? (
        <Band press={{ onPress: () => void choose() }}>
          <span className="name">{officeWords.chooseFile}</span>
        </Band>
      ) : null}
      <p className="band" role="status">
        {chosen && chosen.read.kind !== "known" ? sayWhyNot(chosen.read) : ""}
        {preview ? officeWords.sensorReadings(preview.lines.length) : ""}
      </p>
      {preview ? <PreviewOf preview={preview} /> : null}
      <SensorLogs logs={logs} />
    </Screen>
  );
}

function PreviewOf({ preview: { lines, refused, unknownColumns } }: { preview: SensorPreview }) {
  return (
    <>
      {unknownColumns.length > 0 ? (
        <p className="band note">{officeWords.unknownColumns(unknownColumns.join(", "))}</p>
      ) : null}
      <RefusedRows rows={refused} />
      <GrowingList items={lines} more={officeWords.moreUnits}>
        {({ at, value, unit, alarm }) => (
          <p key={`${at}${unit}${alarm}`} className="band">
            {[
              day(at),
              clockOf(at),
              value !== undefined && inSign(String(value), messages.decimalSign),
              unit,
              alarm,
            ]
              .filter(Boolean)
              .join(" ")}
          </p>
        )}
      </GrowingList>
    </>
  );
}
