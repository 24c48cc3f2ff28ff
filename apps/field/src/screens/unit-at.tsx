import { type FeedRead, feedAmongNeighbours } from "@tapside/book";
import type { PartRole, Reading, SlotId, UnitFile } from "@tapside/records";
import { unitFile } from "@tapside/records";
import { useMemo } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { setupWords } from "../words/setup.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";

interface Place {
  readonly slots: readonly SlotId[];
  readonly roles: readonly PartRole[];
}

/** What is read and fitted at each place along the water. */
const PLACES: Readonly<Record<string, Place>> = {
  tap: {
    slots: [
      "feedTds",
      "feedTemperature",
      "hardness",
      "chlorineBefore",
      "staticPressure",
      "waterMeter",
      "feedAlkalinity",
      "feedChloride",
      "feedSilica",
      "feedPh",
    ],
    roles: [],
  },
  cartridge: {
    slots: ["beforeFilterPressure", "afterFilterPressure", "chlorineAfter"],
    roles: ["softener", "sediment", "carbon", "scaleInhibitor"],
  },
  shutOff: { slots: ["tankFullPressure"], roles: ["shutOff", "checkValve"] },
  element: {
    slots: ["permeateFlow", "drainFlow", "permeateTds", "drainTds"],
    roles: ["element", "restrictor"],
  },
  tank: { slots: ["tankFullPressure", "drawnVolume", "tankAfterPressure", "airCharge"], roles: ["tank"] },
  postFilter: {
    slots: ["postFilterPressure", "deliveredFlow", "hourCounter"],
    roles: ["postCarbon", "remineraliser", "uvLamp"],
  },
  outlet: {
    slots: ["deliveredTds", "deliveredHardness", "deliveredChloride", "deliveredSilica", "deliveredPh"],
    roles: [],
  },
};

/** One place along the water: what was read there at every visit, what is fitted there, what is asked of it. */
export function UnitAtScreen({ id, band }: { id: string; band: string }) {
  const { snapshot } = useBook();
  const file = unitFile(snapshot.book, id);
  const place = PLACES[band];
  if (!file || !place) return <Gone />;
  const parts = file.parts.filter((part) => part.role && place.roles.includes(part.role) && !part.removedOn);
  return (
    <Screen
      title={words.bands[band] ?? words.unit}
      subtitle={[file.site.name, file.unit.name].filter(Boolean).join(", ")}
      back={{ label: words.back, to: `/unit/${id}` }}
      next={{ label: words.setUp, to: `/unit/${id}/edit` }}
    >
      {parts.length > 0 ? (
        <Band tint>
          <strong>{words.fittedHere}</strong>
        </Band>
      ) : null}
      {parts.map((part) => (
        <Band key={part.id} press={{ to: `/part/${part.id}` }}>
          <span className="row">
            <span className="name">{part.role ? setupWords.part.roles[part.role] : words.parts}</span>
            <span className="note">{day(part.fittedOn)}</span>
          </span>
          <p className="note">{words.lotAnd(part.lot ?? "", part.serial ?? "")}</p>
        </Band>
      ))}
      {band === "outlet" ? <LimitsHere file={file} /> : null}
      {band === "tap" ? <Neighbours id={id} /> : null}
      {place.slots.map((slot) => (
        <ReadHere key={slot} file={file} slot={slot} />
      ))}
    </Screen>
  );
}

/** What the neighbours on the same water read, and what that says of the last reading here. */
function Neighbours({ id }: { id: string }) {
  const { book } = useBook().snapshot;
  const among = useMemo(() => feedAmongNeighbours(book, id), [book, id]);
  if (among.kind !== "known") return null;
  const { said, own, others } = among.value;
  const line = (read: FeedRead, name: string) => (
    <p key={read.unit} className="note">
      {name}: {Math.round(read.ecUSPerCm)} µS/cm, {day(read.on)}
    </p>
  );
  return (
    <Band heavy={said !== "same"}>
      <strong>{officeWords.neighbours[said]}</strong>
      {line(own, officeWords.thisUnit)}
      {others.map((read) => line(read, [read.site, read.name].filter(Boolean).join(", ")))}
    </Band>
  );
}

function LimitsHere({ file }: { file: UnitFile }) {
  return file.appliances.map((one) => (
    <Band key={one.id} press={{ to: `/appliance/${one.id}` }}>
      <span className="name">{one.name}</span>
      {one.limits.map((limit) => (
        <p key={limit.id} className="note">
          {[
            limit.quantity ? setupWords.limit.quantities[limit.quantity] : "",
            limit.low !== undefined ? `≥ ${limit.low}` : "",
            limit.high !== undefined ? `≤ ${limit.high}` : "",
            limit.unit,
            limit.scale,
            limit.source,
            day(limit.sourceDate),
          ]
            .filter(Boolean)
            .join(" ")}
        </p>
      ))}
      {one.limits.length === 0 ? <p className="note">{words.noLimit}</p> : null}
    </Band>
  ));
}

function ReadHere({ file, slot }: { file: UnitFile; slot: SlotId }) {
  const read = [...file.visits].reverse().flatMap((visit) =>
    (["asLeft", "asFound"] as const).flatMap((phase) => {
      const reading = visit.readings[phase][slot];
      return reading ? [{ key: visit.id + phase, at: visit.startedAt, phase, reading }] : [];
    }),
  );
  return (
    <>
      <Band tint>
        <strong>{messages.slots[slot]}</strong>
      </Band>
      {read.length === 0 ? <p className="band note">{words.noReadingsHere}</p> : null}
      {read.map(({ key, at, phase, reading }) => (
        <Band key={key}>
          <span className="row">
            <span className="name">{asRead(reading)}</span>
            <span className="note">
              {day(at)}, {messages.phases[phase].toLowerCase()}
            </span>
          </span>
        </Band>
      ))}
    </>
  );
}

const asRead = ({ raw, unit, scale, volumeL }: Reading): string =>
  [raw, unit, scale, volumeL !== undefined && `/ ${volumeL * 1000} mL`].filter(Boolean).join(" ");
