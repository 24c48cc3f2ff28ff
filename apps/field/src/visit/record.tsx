import { inputsChangedSince } from "@tapside/records";
import type { Block, CellMark, ReadingCell, RecordContent } from "@tapside/report";
import { Fragment, type ReactNode, useState } from "react";
import { Band } from "../look/band.tsx";
import { Rows, Screen } from "../look/screen.tsx";
import { download, handOver } from "../store/hand-over.ts";
import { messages } from "../words/messages.ts";
import { useGoOn } from "./go-on.ts";
import { issueRecord, recordsOf } from "./issue-record.ts";
import { makePdf } from "./make-pdf.ts";
import { stepTitle } from "./step-title.ts";
import { StillToType } from "./still-to-type.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

type PdfState = "none" | "making" | "ready" | "failed";

/** The end: what is not done, the frozen record, its PDF. */
export default function RecordScreen({ open }: { open: OpenVisit }) {
  const { steps } = useGoOn(open, "record");
  const [pdf, setPdf] = useState<PdfState>("none");
  const last = recordsOf(open).at(-1);
  const content = last?.json ? (JSON.parse(last.json) as RecordContent) : undefined;
  const changed = content ? inputsChangedSince(content.inputsMark, open.file, open.visit.id) : false;
  const undone = steps.filter((step) => !step.done && step.id !== "record");

  const print = async (what: RecordContent, mark: string, share: boolean) => {
    setPdf("making");
    const outcome = await makePdf(what, mark);
    if (outcome.kind !== "known") return setPdf("failed");
    const name = `service-record-${what.issuedAt.slice(0, 10)}-${mark.slice(0, 8)}.pdf`;
    if (share) await handOver(outcome.value, name);
    else download(outcome.value, name);
    setPdf("ready");
  };
  const issue = async () => {
    setPdf("making");
    const issued = await issueRecord(open);
    await print(issued.content, issued.mark, false);
  };
  return (
    <Screen
      title={words.titles.record!}
      subtitle={content?.subtitle ?? open.file.site.name ?? ""}
      ticks={<VisitTicks steps={steps} here="record" />}
      back={{ label: words.visit, to: open.base }}
      middle={
        content && last?.mark
          ? { label: words.share, onPress: () => void print(content, last.mark!, true), picture: <Rows /> }
          : { label: words.back, to: `/unit/${open.file.unit.id}`, picture: <Rows /> }
      }
      next={
        content && !changed
          ? { label: words.toUnit, to: `/unit/${open.file.unit.id}` }
          : {
              label: content ? words.issueAgain : words.issue,
              hint: words.issueHint,
              onPress: () => void issue(),
            }
      }
    >
      <p className="band" role="status">
        {pdf === "making"
          ? words.makingPdf
          : pdf === "failed"
            ? words.pdfFailed
            : pdf === "ready"
              ? words.filesShared
              : undone.length > 0
                ? words.stillOpen
                : words.allDone}
      </p>
      <StillToType open={open} />
      {content
        ? null
        : undone.map((step) => (
            <Band key={step.id} tint press={{ to: `${open.base}/${step.path}` }}>
              {stepTitle(step)}
            </Band>
          ))}
      {changed ? (
        <Band heavy>
          <strong>{messages.record.says.changedSince}</strong>
        </Band>
      ) : null}
      {content && last?.mark ? (
        <>
          <Band press={{ onPress: () => void print(content, last.mark!, false) }}>
            <span className="name">{words.download}</span>
            <p className="note">
              {words.mark}{" "}
              {last.mark
                .slice(0, 12)
                .replace(/(.{4})/g, "$1 ")
                .trim()}
              , revision {content.revision}
            </p>
          </Band>
          {recordsOf(open)
            .slice(0, -1)
            .map((one) => (
              <Band key={one.id} tint>
                {words.earlierRevision(one.revision ?? 1, one.mark?.slice(0, 12) ?? "")}
              </Band>
            ))}
          {content.blocks.map((block, i) => (
            <BlockView key={i} block={block} />
          ))}
        </>
      ) : null}
    </Screen>
  );
}

function BlockView({ block }: { block: Block }) {
  switch (block.kind) {
    case "heading":
      return (
        <Band tint>
          <h2>{block.text}</h2>
        </Band>
      );
    case "paragraph":
      return (
        <Band>{block.strong ? <strong className="name">{block.text}</strong> : <p>{block.text}</p>}</Band>
      );
    case "readings":
      return (
        <table className="readings">
          <thead>
            <tr>
              {block.head.slice(0, 3).map((text) => (
                <th key={text} scope="col">
                  {text}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {block.rows.map((row) => (
              <Fragment key={row.title}>
                <tr className="numbers">
                  <th scope="row">
                    {row.title}
                    <span className="note">{row.note}</span>
                  </th>
                  <ReadingTd cell={row.asFound} />
                  <ReadingTd cell={row.asLeft} />
                </tr>
                <tr>
                  <td className="limit-of" colSpan={3}>
                    {row.limit}
                  </td>
                </tr>
              </Fragment>
            ))}
          </tbody>
        </table>
      );
    case "list":
      return block.items.length === 0 ? null : (
        <Band>
          <h2>{block.title}</h2>
          <ul className="cautions">
            {block.items.map((item) => (
              <li key={item}>{item}</li>
            ))}
          </ul>
        </Band>
      );
    case "signature":
      return <Band>{block.text}</Band>;
    default:
      return null;
  }
}

/** A number of the record, heavy as on paper, its mark beside it; what is no number stands light. */
const ReadingTd = ({ cell: { text, mark } }: { cell: ReadingCell }) => (
  <td className={/\d/.test(text) ? "number" : "note"}>
    {text}
    {mark === "none" ? null : (
      <svg viewBox="0 0 26 20" role="img" aria-label={messages.record.marks[mark]}>
        {MARKS[mark]}
      </svg>
    )}
  </td>
);

const MARKS: Readonly<Record<Exclude<CellMark, "none">, ReactNode>> = {
  outside: <path d="M6 2L22 10L6 18Z" fill="currentColor" />,
  notExpected: <path d="M7 3L21 10L7 17Z" fill="none" stroke="currentColor" strokeWidth="2" />,
  tooClose: (
    <g stroke="currentColor" strokeWidth="2">
      <path d="M1 10H25M1 5V15M25 5V15M16 0V20" />
      <circle cx="11" cy="10" r="4.5" fill="currentColor" />
    </g>
  ),
};
