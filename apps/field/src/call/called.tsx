import { complaintItems, type KitchenCall, readCall, unitOfSticker } from "@tapside/book";
import type { BeforeDriving } from "@tapside/diagnosis";
import { type UnitFile, unitFile } from "@tapside/records";
import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { clockOf, day } from "../screens/day.ts";
import { titleOf } from "../screens/unit-line.ts";
import { type LiveBook, useBook } from "../store/use-book.ts";
import { firstPathOf } from "../visit/proposed-kind.ts";
import { startVisit } from "../visit/start-visit.ts";
import { bookWords } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { linesOf } from "./sentences-of.ts";
import { callWords as words } from "./words.ts";

/** A kitchen's message on the technician's phone: what was said, what is likely, what to load, and the call-out that begins with it. */
export function CalledScreen({ text }: { text: string }) {
  const { snapshot } = useBook();
  const call = readCall(text);
  const unit = call.kind === "known" ? unitOfSticker(snapshot.book, call.value.code) : undefined;
  const file = unit ? unitFile(snapshot.book, unit) : undefined;
  if (call.kind === "known" && file) return <CalledUnit call={call.value} file={file} />;
  return (
    <Screen
      title={words.called}
      back={{ label: bookWords.back, to: "/" }}
      next={{ label: bookWords.book, to: "/" }}
    >
      {call.kind === "known" ? <Said call={call.value} /> : null}
      <p className="band problem">{call.kind === "known" ? words.noUnit : sayWhyNot(call)}</p>
    </Screen>
  );
}

function CalledUnit({ call, file }: { call: KitchenCall; file: UnitFile }) {
  const { live } = useBook();
  const [, navigate] = useLocation();
  const unit = `/unit/${file.unit.id}`;
  const last = file.visits.at(-1);
  const open = last && !last.closed ? last : undefined;
  const start = () => {
    const visit = startVisit(live, file.unit.id, "callOut", complaintOfCall(call));
    navigate(`/visit/${visit}/${firstPathOf("callOut")}`);
  };
  return (
    <Screen
      title={titleOf(file)}
      subtitle={words.called}
      back={{ label: bookWords.unit, to: unit }}
      next={
        open
          ? { label: words.open, hint: words.openHint, to: `/visit/${open.id}` }
          : { label: words.start, onPress: start }
      }
    >
      <Said call={call} />
      {call.full ? (
        <Band tint press={{ to: `${unit}/points` }}>
          <span className="name">{words.stillOpen}</span>
        </Band>
      ) : null}
      <Likely call={call} file={file} />
    </Screen>
  );
}

/** The call as the visit's own complaint, what it has no item for in words. */
function complaintOfCall(call: KitchenCall) {
  const { drain, items: _, ...rest } = call;
  const note = [...linesOf({ ...rest, items: [], ...(drain === "silent" && { drain }) }), call.name ?? ""];
  return { "answer:complaint": { items: [...complaintItems(call)], note: note.filter(Boolean).join("; ") } };
}

function Said({ call }: { call: KitchenCall }) {
  const lines = linesOf(call);
  const when = `${day(call.at)}, ${clockOf(call.at)}`;
  return (
    <Band>
      <p className="note">{words.saidAt(when, call.name ?? "")}</p>
      {lines.length === 0 ? <p>{words.nothingTicked}</p> : null}
      {lines.map((line) => (
        <p key={line} className="name">
          {line}
        </p>
      ))}
    </Band>
  );
}

function Likely({ call, file }: { call: KitchenCall; file: UnitFile }) {
  const { live } = useBook();
  const [found, setFound] = useState<Weighed>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: weighed once for a message
  useEffect(() => {
    let wanted = true;
    void weighed(call, file, live).then((answer) => wanted && setFound(answer));
    return () => {
      wanted = false;
    };
  }, [call.at, file.unit.id]);
  if (!found || "why" in found)
    return (
      <p className="band" role="status">
        {found ? found.why : words.thinking}
      </p>
    );
  const { parts, causes, percent } = found.names;
  return (
    <>
      <Heading text={words.likely} />
      <Band>
        <p className="note">{words.fromModel}</p>
      </Band>
      {found.causes.map(({ cause, probability }) => (
        <Band key={cause}>
          <span className="row">
            <span className="name">{causes[cause]}</span>
            <span className="note">{percent(probability)}</span>
          </span>
        </Band>
      ))}
      <Heading text={words.load} />
      {found.parts.length === 0 ? <Band>{words.nothingToLoad}</Band> : null}
      {found.parts.map(({ part, probability }) => (
        <Band key={part}>
          <span className="row">
            <span className="name capital">{parts[part]}</span>
            <span className="note">{officeWords.likelyOdds(percent(probability))}</span>
          </span>
        </Band>
      ))}
    </>
  );
}

/** Why there are no odds, or the odds. */
type Weighed =
  | { readonly why: string }
  | (BeforeDriving & { readonly names: ReturnType<typeof import("@tapside/words/causes").causesInLanguage> });

/** The search for causes is fetched only here: no first screen waits for it. */
async function weighed(call: KitchenCall, file: UnitFile, live: LiveBook): Promise<Weighed> {
  const [{ beforeDriving, countsInBook, worthSaying }, { causesInLanguage }] = await Promise.all([
    import("@tapside/diagnosis"),
    import("@tapside/words/causes"),
  ]);
  const said = { at: call.at, items: complaintItems(call) };
  const found = await beforeDriving(file, said, countsInBook(live.snapshot().book.causeCounts));
  if (found.kind !== "known") return { why: found.kind === "refused" ? sayWhyNot(found) : words.cannotTell };
  const { causes, parts } = found.value;
  return { causes: worthSaying(causes), parts, names: causesInLanguage(messages.language) };
}
