import { CALL_ITEMS, type CallItem, callLink, type KitchenCall, readSticker } from "@tapside/book";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Heading } from "../look/heading.tsx";
import { Screen } from "../look/screen.tsx";
import { LanguageSwitch } from "../screens/language-switch.tsx";
import { handOverText } from "../store/hand-over-text.ts";
import { TextEntry } from "../visit/text-entry.tsx";
import { bookWords } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { sentencesOf } from "./sentences-of.ts";
import { callWords as words } from "./words.ts";

type Said = Omit<KitchenCall, "code" | "at">;

/** What a kitchen is asked when it scans the sticker: a few taps that go to the technician as a message, before anybody drives. */
export function CallScreen({ code }: { code: string }) {
  const [said, setSaid] = useState<Said>({ items: [] });
  const [status, setStatus] = useState("");
  const [byHand, setByHand] = useState("");
  const read = readSticker(code);
  if (read.kind !== "known")
    return (
      <Screen title={words.title} next={{ label: bookWords.book, to: "/" }}>
        <p className="band">{sayWhyNot(read)}</p>
      </Screen>
    );
  const tell = (part: Partial<Said>) => setSaid((before) => ({ ...before, ...part }));
  const turn = (item: CallItem) =>
    tell({ items: CALL_ITEMS.filter((one) => (one === item) !== said.items.includes(one)) });
  const isSaid =
    said.items.length > 0 || Boolean(said.drain || said.alarm?.trim() || said.words?.trim() || said.full);
  const send = async () => {
    if (!isSaid) return setStatus(words.tickFirst);
    const call: KitchenCall = { ...said, code: read.value, at: new Date().toISOString() };
    const text = [...sentencesOf(call), callLink(location.href, call)].join("\n");
    const how = await handOverText(text);
    setStatus({ shared: words.handed, copied: words.copied, calledOff: "", neither: words.byHand }[how]);
    setByHand(how === "neither" ? text : "");
  };
  return (
    <Screen
      title={words.title}
      subtitle={words.unit(read.value)}
      back={{ label: bookWords.book, to: "/" }}
      next={{
        label: words.send,
        hint: isSaid ? "" : words.tickFirst,
        quiet: !isSaid,
        onPress: () => void send(),
      }}
    >
      {CALL_ITEMS.map((item) => (
        <button
          type="button"
          key={item}
          className="choice"
          aria-pressed={said.items.includes(item)}
          onClick={() => turn(item)}
        >
          {messages.visit.checks.complaint.items[item]}
        </button>
      ))}
      <OneOf
        legend={words.drain}
        labels={words.drainSays}
        value={said.drain}
        onPick={(drain) => setSaid(({ drain: _, ...rest }) => (drain ? { ...rest, drain } : rest))}
      />
      <OneOf
        legend={words.tank}
        labels={words.tankSays}
        value={said.tank}
        onPick={(tank) => setSaid(({ tank: _, ...rest }) => (tank ? { ...rest, tank } : rest))}
      />
      <TextEntry label={words.alarm} value={said.alarm ?? ""} onChange={(alarm) => tell({ alarm })} />
      <TextEntry label={words.words} value={said.words ?? ""} onChange={(text) => tell({ words: text })} />
      <TextEntry label={words.name} value={said.name ?? ""} onChange={(name) => tell({ name })} />
      <button
        type="button"
        className="choice"
        aria-pressed={said.full === true}
        onClick={() => tell({ full: !said.full })}
      >
        {words.full}
      </button>
      <Heading text={words.meanwhile} />
      <Meanwhile items={said.items} />
      <p className="band" role="status">
        {status}
      </p>
      {byHand ? <p className="band to-copy">{byHand}</p> : null}
      <LanguageSwitch />
      <Band press={{ to: "/" }}>
        <span className="note">{words.notYou}</span>
      </Band>
    </Screen>
  );
}

interface OneOfProps<V extends string> {
  readonly legend: string;
  readonly labels: Readonly<Record<V, string>>;
  readonly value: V | undefined;
  readonly onPick: (value: V | undefined) => void;
}

/** One of a few, taken back by a second tap. */
function OneOf<V extends string>({ legend, labels, value, onPick }: OneOfProps<V>) {
  return (
    <fieldset className="answers">
      <legend>{legend}</legend>
      {(Object.keys(labels) as V[]).map((one) => (
        <button
          type="button"
          key={one}
          aria-pressed={one === value}
          onClick={() => onPick(one === value ? undefined : one)}
        >
          {labels[one]}
        </button>
      ))}
    </fieldset>
  );
}

const BAD_WATER: readonly CallItem[] = ["taste", "smellChlorine", "smellOther", "cloudy", "ice"];

/** What the kitchen may safely do until somebody comes: what was ticked first, then what is never done. */
function Meanwhile({ items }: { items: readonly CallItem[] }) {
  const first = [
    ...(items.includes("leak") ? [words.leak] : []),
    ...(items.some((item) => item === "noWater" || item === "weak") ? [words.noWater] : []),
    ...(items.some((item) => BAD_WATER.includes(item)) ? [words.badWater] : []),
  ];
  return (
    <Band>
      {[...first, ...words.never].map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p className="note">{messages.localCode}</p>
    </Band>
  );
}
