import { unitFile, unitTitle, type VisitKind } from "@tapside/records";
import { useLocation } from "wouter";
import { Screen } from "../look/screen.tsx";
import { Gone } from "../screens/gone.tsx";
import { useBook } from "../store/use-book.ts";
import { messages } from "../words/messages.ts";
import { kindWords as words } from "./kind-words.ts";
import { firstPathOf, proposedKind } from "./proposed-kind.ts";
import { startVisit } from "./start-visit.ts";
import { visitWords } from "./words.ts";

/** What kind of visit it is: one screen, one tap. */
export function KindScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const start = (kind: VisitKind) => navigate(`/visit/${startVisit(live, id, kind)}/${firstPathOf(kind)}`);
  const proposed = proposedKind(file);
  return (
    <Screen
      title={words.title}
      subtitle={unitTitle(file)}
      back={{ label: visitWords.back, to: `/unit/${id}` }}
      next={{
        label: messages.visitKinds[proposed],
        hint: words.hints[proposed],
        onPress: () => start(proposed),
      }}
    >
      {(Object.keys(words.hints) as VisitKind[]).map((kind) => (
        <button type="button" key={kind} className="choice plain" onClick={() => start(kind)}>
          <span>
            {messages.visitKinds[kind]}
            <span className="note">{words.hints[kind]}</span>
          </span>
        </button>
      ))}
    </Screen>
  );
}
