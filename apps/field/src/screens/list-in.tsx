import {
  decodeText,
  LIST_COLUMNS,
  type ListPreview,
  listEdits,
  type RefusedRow,
  readList,
} from "@tapside/book";
import type { Outcome } from "@tapside/quantities";
import { useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { GrowingList } from "../look/growing-list.tsx";
import { pickFile } from "../look/pick-photo.ts";
import { Rows, Screen } from "../look/screen.tsx";
import { handOver } from "../store/hand-over.ts";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { RefusedRows } from "./refused-rows.tsx";
import { undoOrBack } from "./setup-keys.ts";

/** A list of sites and units comes in: looked at first, every refused row with its reason, then taken in as one step of undo. */
export function ListInScreen() {
  const { live, snapshot } = useBook();
  const [read, setRead] = useState<Outcome<ListPreview>>();
  const [taken, setTaken] = useState(0);
  const preview = read?.kind === "known" ? read.value : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the preview stands against the book as it was when the file was chosen
  const plan = useMemo(() => preview && listEdits(snapshot.book, preview, () => live.newId()), [preview]);
  const choose = async () => {
    const file = await pickFile(".csv,text/csv,text/plain");
    if (!file) return;
    setTaken(0);
    setRead(readList(decodeText(new Uint8Array(await file.arrayBuffer()))));
  };
  const takeIn = () => {
    if (!plan || !preview) return;
    void live.writeAll(plan.edits, "list taken in");
    setTaken(preview.rows.length);
    setRead(undefined);
  };
  const ready = plan !== undefined && plan.edits.length > 0;
  return (
    <Screen
      title={officeWords.listIn}
      back={undoOrBack(live, "/more")}
      middle={{ label: words.book, to: "/", picture: <Rows /> }}
      next={
        ready
          ? { label: officeWords.takeIn, onPress: takeIn }
          : { label: officeWords.chooseFile, onPress: () => void choose() }
      }
    >
      <Band tint>
        <p>{officeWords.listHint}</p>
      </Band>
      <Band press={{ onPress: () => void handOver(sample(), "tapside-list.csv") }}>
        <span className="name">{officeWords.sample}</span>
      </Band>
      {ready ? (
        <Band press={{ onPress: () => void choose() }}>
          <span className="name">{officeWords.chooseFile}</span>
        </Band>
      ) : null}
      <p className="band" role="status">
        {read && read.kind !== "known" ? sayWhyNot(read) : ""}
        {plan ? officeWords.preview(plan.newSites, plan.newUnits, plan.knownUnits) : ""}
        {taken > 0 ? officeWords.takenIn(taken) : ""}
      </p>
      {preview ? <PreviewOf preview={preview} /> : null}
    </Screen>
  );
}

function PreviewOf({ preview }: { preview: ListPreview }) {
  const { rows, refused, unknownColumns } = preview;
  return (
    <>
      {unknownColumns.length > 0 ? (
        <p className="band note">{officeWords.unknownColumns(unknownColumns.join(", "))}</p>
      ) : null}
      {refused.length > 0 ? (
        <>
          <RefusedRows rows={refused} />
          <Band press={{ onPress: () => void handOver(report(refused), "tapside-refused.csv") }}>
            {officeWords.saveRefused}
          </Band>
        </>
      ) : null}
      <GrowingList items={rows} more={officeWords.moreUnits}>
        {({ line, values }) => (
          <Band key={line}>
            <span className="name">{[values.site, values.unit].filter(Boolean).join(", ")}</span>
            <p className="note">
              {[values.site_code, values.place, values.serial].filter(Boolean).join(", ")}
            </p>
          </Band>
        )}
      </GrowingList>
    </>
  );
}

const csv = (text: string) => new Blob([text], { type: "text/csv" });
const sample = () => csv(`${Object.keys(LIST_COLUMNS).join(",")}\r\n`);
const report = (refused: readonly RefusedRow[]) =>
  csv(
    `line,reason\r\n${refused.map((row) => `${row.line},"${messages.refusal(row).replaceAll('"', '""')}"`).join("\r\n")}\r\n`,
  );
