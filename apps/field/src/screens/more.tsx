import { calendarFile, dueList, partsCsv, workLinesCsv } from "@tapside/book";
import { unitFile, unitTitle } from "@tapside/records";
import { readingsCsv } from "@tapside/report/csv";
import { useRef, useState } from "react";
import fontLicence from "../../../../packages/pictures/fonts/LICENSE-B612.txt?url";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { handOver } from "../store/hand-over.ts";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { sayWhyNot } from "../words/say-why-not.ts";

interface MoreScreenProps {
  readonly onDemo: () => void;
  readonly onOwn: () => void;
  readonly isDemo: boolean;
}

/** Everything that is not a unit: in and out, instruments, types, stickers, settings, what this cannot know. */
export function MoreScreen({ onDemo, onOwn, isDemo }: MoreScreenProps) {
  return (
    <Screen title={words.more} back={{ label: words.back, to: "/" }} next={{ label: words.book, to: "/" }}>
      <Places />
      <WholeBook />
      <Tables />
      <Band press={{ onPress: isDemo ? onOwn : onDemo }} heavy>
        <span className="name">{isDemo ? words.backToOwn : words.openDemo}</span>
      </Band>
      <Band tint>
        <strong>{words.about}</strong>
        <p>{words.aboutText}</p>
        <p className="note">{words.licence}</p>
      </Band>
      <a className="band tint" href={fontLicence} target="_blank" rel="noreferrer">
        {words.fontLicence}
      </a>
    </Screen>
  );
}

/** The whole book out and in, lossless. */
function WholeBook() {
  const { live } = useBook();
  const file = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState("");
  const exportAll = async () => {
    const text = await live.exportText({ mark: false });
    const name = `tapside-${todayIso()}.json`;
    const given = await handOver(new Blob([text], { type: "application/json" }), name);
    if (given) await live.markExported();
  };
  const importChosen = async () => {
    const chosen = file.current?.files?.[0];
    if (!chosen) return;
    const outcome = await live.importText(await chosen.text());
    setSaid(outcome.kind === "known" ? words.imported(outcome.value.added) : sayWhyNot(outcome));
    if (file.current) file.current.value = "";
  };
  return (
    <>
      <Heading text={words.inAndOut} />
      <Band press={{ onPress: () => void exportAll() }}>
        <span className="name">{words.exportAll}</span>
        <p className="note">{words.notExported(live.unsent)}</p>
      </Band>
      <Band press={{ onPress: () => file.current?.click() }}>
        <span className="name">{words.importFile}</span>
        <p className="note">{words.importHint}</p>
      </Band>
      <p className="band" role="status">
        {said}
      </p>
      <Band press={{ to: "/list" }}>
        <span className="name">{officeWords.listIn}</span>
      </Band>
      <input
        ref={file}
        type="file"
        accept="application/json,.json"
        className="unseen"
        tabIndex={-1}
        aria-label={words.importFile}
        onChange={() => void importChosen()}
      />
    </>
  );
}

type Place = readonly [label: string, to: string];

/** The day's own first, then what is set up once. */
function Places() {
  const daily: readonly Place[] = [
    [officeWords.van, "/van"],
    [officeWords.month, `/month/${todayIso().slice(0, 7)}`],
    [words.ownScore, "/score"],
    [words.practiceUnit, "/practice"],
  ];
  const setUp: readonly Place[] = [
    [words.settings, "/settings"],
    [words.instruments, "/instruments"],
    [words.models, "/models"],
    [officeWords.stickerRoll, "/stickers"],
    [words.causesFound, "/counts"],
  ];
  return (
    <>
      <PlacesOf places={daily} />
      <Heading text={words.setUpOnce} />
      <PlacesOf places={setUp} />
    </>
  );
}

const PlacesOf = ({ places }: { places: readonly Place[] }) =>
  places.map(([label, to]) => (
    <Band key={to} press={{ to }}>
      <span className="name">{label}</span>
    </Band>
  ));

/** Tables for the office, and what is due as a calendar. */
function Tables() {
  const { snapshot } = useBook();
  const { book } = snapshot;
  const table = (name: string, make: () => string) => () =>
    void handOver(new Blob([make()], { type: "text/csv" }), `${name}-${todayIso()}.csv`);
  const files = () => [...book.unit.keys()].sort().flatMap((id) => unitFile(book, id) ?? []);
  const calendar = () => {
    const rows = dueList(book, todayIso());
    const ics = calendarFile(rows, new Date().toISOString(), {
      title: ({ file }) => unitTitle(file),
      reason: messages.dueReason,
    });
    void handOver(new Blob([ics], { type: "text/calendar" }), `due-${todayIso()}.ics`);
  };
  const tables: readonly (readonly [label: string, hand: () => void, hint?: string])[] = [
    [officeWords.calendar, calendar],
    [officeWords.readingsCsv, table("readings", () => readingsCsv(files()))],
    [officeWords.partsCsv, table("parts", () => partsCsv(book))],
    [officeWords.workCsv, table("work", () => workLinesCsv(book)), officeWords.workHint],
  ];
  return (
    <>
      {tables.map(([label, hand, hint]) => (
        <Band key={label} press={{ onPress: hand }}>
          <span className="name">{label}</span>
          {hint ? <p className="note">{hint}</p> : null}
        </Band>
      ))}
    </>
  );
}
