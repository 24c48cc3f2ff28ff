import { canonicalJson, freeze, unitFile } from "@tapside/records";
import { buildClaim } from "@tapside/report";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { download, handOver } from "../store/hand-over.ts";
import { useBook } from "../store/use-book.ts";
import { makePdf } from "../visit/make-pdf.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { Gone } from "./gone.tsx";

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
            <Band tint>
              <strong>{block.title}</strong>
            </Band>
            {block.items.map((item) => (
              <p className="band" key={item}>
                {item}
              </p>
            ))}
          </section>
        ) : null,
      )}
    </Screen>
  );
}
