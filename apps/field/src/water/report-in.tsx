import { decodeText } from "@tapside/book";
import type { Outcome } from "@tapside/quantities";
import type { FieldValue } from "@tapside/records";
import { reportedId } from "@tapside/water";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { pickFile } from "../look/pick-photo.ts";
import { Screen } from "../look/screen.tsx";
import { Gone } from "../screens/gone.tsx";
import { RefusedRows } from "../screens/refused-rows.tsx";
import { undoOrBack } from "../screens/setup-keys.ts";
import { useBook } from "../store/use-book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { type ReportFile, reportFile } from "./report-file.ts";
import { waterPageWords as words } from "./words.ts";

/** A laboratory's or utility's file comes in: looked at first, refused rows with their reasons, then kept as one step of undo. */
export function ReportIn({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [read, setRead] = useState<Outcome<ReportFile>>();
  const [taken, setTaken] = useState(0);
  const home = `/site/${id}/water`;
  if (!snapshot.book.site.has(id)) return <Gone />;
  const file = read?.kind === "known" ? read.value : undefined;
  const choose = async () => {
    const picked = await pickFile(".csv,text/csv,text/plain");
    if (!picked) return;
    setTaken(0);
    setRead(reportFile(decodeText(new Uint8Array(await picked.arrayBuffer()))));
  };
  const takeIn = () => {
    const reports = file?.reports ?? [];
    const edits = reports.map(({ entry }) => ({
      kind: "waterAnalysis" as const,
      record: live.newId(),
      fields: { ...entry, site: id } as unknown as Record<string, FieldValue>,
    }));
    void live.writeAll(edits, "report taken in");
    setTaken(reports.length);
    setRead(undefined);
  };
  const next =
    taken > 0
      ? { label: words.done, to: home }
      : file && file.reports.length > 0
        ? { label: officeWords.takeIn, onPress: takeIn }
        : { label: officeWords.chooseFile, onPress: () => void choose() };
  return (
    <Screen title={words.fileIn} back={undoOrBack(live, home)} next={next}>
      <Band>
        <p>{words.fileHint}</p>
      </Band>
      {file ? <Band press={{ onPress: () => void choose() }}>{words.otherFile}</Band> : null}
      <p className="band" role="status">
        {read && read.kind !== "known" ? sayWhyNot(read) : ""}
        {file ? words.filePreview(file.reports.length, file.refused.length) : ""}
        {taken > 0 ? words.fileTaken(taken) : ""}
      </p>
      {file ? <Preview file={file} /> : null}
    </Screen>
  );
}

const shown = (value: number | undefined) => (value === undefined ? "" : String(value));

function Preview({ file }: { file: ReportFile }) {
  return (
    <>
      <RefusedRows rows={file.refused.map(({ row, code, detail }) => ({ line: row, code, detail }))} />
      {file.reports.map(({ row, entry }) => (
        <Band key={row}>
          <span className="name">
            {[
              entry.origin === "utility" ? words.utility : words.laboratory,
              entry.bottleCode,
              entry.samplingPlace,
              entry.sampledOn,
            ]
              .filter(Boolean)
              .join(", ")}
          </span>
          {(entry.lines ?? []).map((line) => (
            <span key={line.name} className="row">
              <span>{messages.water.name(reportedId(line.name) ?? line.name)}</span>
              <span>{words.lineOf(shown(line.mean), shown(line.low), shown(line.high), line.unit)}</span>
            </span>
          ))}
        </Band>
      ))}
    </>
  );
}
