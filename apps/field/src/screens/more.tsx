import { useRef, useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { handOver } from "../store/hand-over.ts";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { sayWhyNot } from "../words/say-why-not.ts";

interface MoreScreenProps {
  readonly onDemo: () => void;
  readonly onOwn: () => void;
  readonly isDemo: boolean;
}

/** Everything that is not a unit: in and out, instruments, settings, what this cannot know. */
export function MoreScreen({ onDemo, onOwn, isDemo }: MoreScreenProps) {
  const { live } = useBook();
  const file = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState("");
  const exportAll = async () => {
    const text = await live.exportText({ mark: false });
    const name = `tapside-${new Date().toISOString().slice(0, 10)}.json`;
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
    <Screen title={words.more} back={{ label: words.back, to: "/" }} next={{ label: words.book, to: "/" }}>
      <Band press={{ onPress: () => void exportAll() }}>
        <span className="name">{words.exportAll}</span>
        <p className="note">{words.notExported(live.unsent)}</p>
      </Band>
      <Band press={{ onPress: () => file.current?.click() }}>
        <span className="name">{words.importFile}</span>
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
      <p className="band" role="status">
        {said}
      </p>
      <Band press={{ to: "/instruments" }}>
        <span className="name">{words.instruments}</span>
      </Band>
      <Band press={{ to: "/settings" }}>
        <span className="name">{words.settings}</span>
      </Band>
      <Band press={{ onPress: isDemo ? onOwn : onDemo }} heavy>
        <span className="name">{isDemo ? words.backToOwn : words.openDemo}</span>
      </Band>
      <Band tint>
        <strong>{words.about}</strong>
        <p>{words.aboutText}</p>
        <p className="note">{words.licence}</p>
      </Band>
    </Screen>
  );
}
