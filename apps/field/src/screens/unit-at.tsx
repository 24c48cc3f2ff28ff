import { type FeedRead, feedAmongNeighbours } from "@tapside/book";
import type { PartRole, Phase, Reading, SlotId, UnitFile } from "@tapside/records";
import { unitFile, unitTitle } from "@tapside/records";
import { inSign } from "@tapside/words";
import { useMemo } from "react";
import { FoundBands } from "../found/found-bands.tsx";
import { Band } from "../look/band.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { Numeral } from "../visit/numeral.tsx";
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

/** Behind the membrane the line is thin and pale. */
const PRODUCT = ["tank", "postFilter", "outlet"];

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
      subtitle={unitTitle(file)}
      back={{ label: words.back, to: `/unit/${id}` }}
      next={{ label: words.setUp, to: `/unit/${id}/edit` }}
    >
      {parts.length > 0 ? <Heading text={words.fittedHere} /> : null}
      {parts.map((part) => (
        <Band key={part.id} press={{ to: `/part/${part.id}` }}>
          <span className="row">
            <span className="name">{part.role ? setupWords.part.roles[part.role] : words.parts}</span>
            <span className="note">{day(part.fittedOn)}</span>
          </span>
          <p className="note">{words.lotAnd(part.lot ?? "", part.serial ?? "")}</p>
        </Band>
      ))}
      {band === "element" ? <FoundBands unit={file.unit} /> : null}
      {band === "outlet" ? <LimitsHere file={file} /> : null}
      {band === "tap" ? <Neighbours id={id} /> : null}
      <ReadHere file={file} slots={place.slots} product={PRODUCT.includes(band)} />
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

interface Read {
  readonly key: string;
  readonly at: string | undefined;
  readonly phase: Phase;
  readonly reading: Reading;
}

/** Every reading of a slot that has its number, the newest first. */
const readOf = (file: UnitFile, slot: SlotId): readonly Read[] =>
  [...file.visits].reverse().flatMap((visit) =>
    (["asLeft", "asFound"] as const).flatMap((phase) => {
      const reading = visit.readings[phase][slot];
      return reading && reading.value !== null
        ? [{ key: visit.id + phase, at: visit.startedAt, phase, reading }]
        : [];
    }),
  );

/** What is read here stands beside the water: the newest number drawn, those before it as lines; what never was is named once. */
function ReadHere({ file, slots, product }: { file: UnitFile; slots: readonly SlotId[]; product: boolean }) {
  const read = slots.map((slot) => [slot, readOf(file, slot)] as const);
  const never = read.filter(([, list]) => list.length === 0).map(([slot]) => messages.slots[slot]);
  return (
    <>
      <div className={product ? "beside-water product" : "beside-water"}>
        {read.map(([slot, list]) =>
          list.length > 0 ? <SlotRead key={slot} slot={slot} list={list} /> : null,
        )}
      </div>
      {never.length > 0 ? (
        <Band tint>
          <p>{words.noReadingsHere}</p>
          <p className="note">{never.join(", ")}</p>
        </Band>
      ) : null}
    </>
  );
}

function SlotRead({ slot, list }: { slot: SlotId; list: readonly Read[] }) {
  const [newest, ...before] = list;
  if (!newest) return null;
  const number = numberOf(newest.reading);
  return (
    <Band water>
      <p className="row">
        <span>{messages.slots[slot]}</span>
        <span className="note">{when(newest)}</span>
      </p>
      <div className="with-u">
        <Numeral text={number} height={46} name={`${number} ${unitOf(newest.reading)}`} />
        <span>{unitOf(newest.reading)}</span>
      </div>
      {before.map((one) => (
        <p key={one.key} className="row">
          <span>
            {numberOf(one.reading)} {unitOf(one.reading)}
          </span>
          <span className="note">{when(one)}</span>
        </p>
      ))}
    </Band>
  );
}

/** The day; what was read before the work needs no word more. */
const when = ({ at, phase }: Read) =>
  [day(at), phase === "asLeft" && messages.phases.asLeft.toLowerCase()].filter(Boolean).join(", ");

const numberOf = ({ raw, notDetected }: Reading): string =>
  `${notDetected ? "<" : ""}${inSign(raw, messages.decimalSign)}`;

const unitOf = ({ unit, scale, volumeL }: Reading): string =>
  [unit, scale, volumeL !== undefined && `/ ${volumeL * 1000} mL`].filter(Boolean).join(" ");
