import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { setupWords } from "../words/setup.ts";
import { useUnitLines } from "./use-unit-lines.ts";

/** A chain: its sites by their codes, each with its units and what is due there. */
export function ChainScreen({ name }: { name: string }) {
  const { snapshot } = useBook();
  const lines = useUnitLines();
  const sites = [...snapshot.book.site.values()]
    .filter((site) => site.chain === name)
    .sort((a, b) => ((a.code ?? a.name ?? "") < (b.code ?? b.name ?? "") ? -1 : 1));
  return (
    <Screen
      title={name}
      aside={officeWords.sitesOf(sites.length)}
      back={{ label: words.book, to: "/" }}
      next={{ label: words.book, to: "/" }}
    >
      <Band press={{ to: `/month/${todayIso().slice(0, 7)}/${encodeURIComponent(name)}` }}>
        <span className="name">{officeWords.month}</span>
      </Band>
      {sites.map((site) => (
        <section key={site.id} aria-label={site.name}>
          <Band tint press={{ to: `/site/${site.id}` }}>
            <span className="row">
              <strong>{site.name}</strong>
              <span className="note">{site.code ?? setupWords.site.code}</span>
            </span>
          </Band>
          {lines
            .filter((line) => line.row.file.site.id === site.id)
            .map((line) => (
              <Band key={line.id} press={{ to: `/unit/${line.id}` }}>
                <span className="name">{line.row.file.unit.name}</span>
                <p className="note">{line.line}</p>
              </Band>
            ))}
        </section>
      ))}
    </Screen>
  );
}
