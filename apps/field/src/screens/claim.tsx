import { canonicalJson, freeze, type KeptVisit, type SlotId, unitFile } from "@tapside/records";
import { buildClaim, type RecordContent } from "@tapside/report";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { download, handOver } from "../store/hand-over.ts";
import { useBook } from "../store/use-book.ts";
import { makePdf } from "../visit/make-pdf.ts";
import { readingText } from "../visit/reading-text.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { withDays } from "./day.ts";
import { DrawnDay } from "./drawn-day.tsx";
import { Gone } from "./gone.tsx";

/** The visits it holds: those of an owner before may be left out. */
const visitsOf = (content: RecordContent) =>
  (content.inputs as { readonly visits: readonly { readonly id: string }[] }).visits;

/** The claim file of one unit in one tap: what is in it stands here, the PDF and its data are handed over together. */
export function ClaimScreen({ id }: { id: string }) {
  const { snapshot } = useBook();
  const [said, setSaid] = useState("");
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const content = buildClaim({
    book: snapshot.book,
    file,
    words: messages,
    issuedAt: new Date().toISOString(),
  });
  const shown = new Set(visitsOf(content).map((visit) => visit.id));
  const visits = file.visits.filter((visit) => shown.has(visit.id));
  const make = async () => {
    const { mark } = freeze(content);
    const name = `claim-${(file.unit.serial ?? file.unit.name ?? id).replace(/[^\w-]+/g, "-")}`;
    const pdf = await makePdf(content, mark);
    if (pdf.kind !== "known") return setSaid(officeWords.claimFailed);
    download(
      new Blob([canonicalJson({ mark, content } as never)], { type: "application/json" }),
      `${name}.json`,
    );
    await handOver(pdf.value, `${name}.pdf`);
    setSaid(officeWords.claimReady(name));
  };
  return (
    <Screen
      title={officeWords.claim}
      subtitle={content.subtitle}
      back={{ label: words.back, to: `/unit/${id}` }}
      next={{ label: officeWords.claim, hint: officeWords.claimHint, onPress: () => void make() }}
    >
      <p className="band" role="status">
        {said}
      </p>
      {content.blocks.map((block) =>
        block.kind === "list" ? (
          <section key={block.title} aria-label={block.title}>
            <Heading text={block.title} />
            {block.title === messages.claim.titles.history && visits.length > 0 ? (
              visits.map((visit) => <VisitRead key={visit.id} visit={visit} />)
            ) : (
              <Lines items={block.items} />
            )}
          </section>
        ) : null,
      )}
    </Screen>
  );
}

const Lines = ({ items }: { items: readonly string[] }) => (
  <Band>
    {items.map((item) => (
      <p key={item} className="line-of">
        {withDays(item)}
      </p>
    ))}
  </Band>
);

/** One visit of the history: when, what kind, by whom; its readings as a list; what was done. */
function VisitRead({ visit }: { visit: KeptVisit }) {
  const read = (["asFound", "asLeft"] as const).flatMap((phase) =>
    Object.entries(visit.readings[phase]).flatMap(([slot, one]) =>
      one.value === null ? [] : [{ phase, slot: slot as SlotId, text: readingText(one) }],
    ),
  );
  const done = Object.entries(visit.work).filter(([, work]) => work.state === "done");
  const iso = visit.startedAt ?? "";
  return (
    <Band>
      <span className="on-day">
        <span>
          <strong className="name">{messages.visitKinds[visit.kind ?? "annual"]}</strong>
          <span className="note">{visit.technician}</span>
        </span>
        {iso ? <DrawnDay iso={iso} today={todayIso()} /> : <span />}
      </span>
      {read.map(({ phase, slot, text }) => (
        <p key={phase + slot} className="row line-of">
          <span className="note">
            {[messages.slots[slot], phase === "asLeft" && messages.phases.asLeft.toLowerCase()]
              .filter(Boolean)
              .join(", ")}
          </span>
          <span>{text}</span>
        </p>
      ))}
      {done.map(([task]) => (
        <p key={task} className="line-of">
          {messages.taskTitle(task)}
        </p>
      ))}
    </Band>
  );
}
