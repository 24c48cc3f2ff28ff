import { assess } from "@tapside/assessment";
import { codeOfUnit } from "@tapside/book";
import { freeze, type UnitFile, unitFile } from "@tapside/records";
import type { RecordContent } from "@tapside/report";
import { useState } from "react";
import { callWords } from "../call/words.ts";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { handOver } from "../store/hand-over.ts";
import { type LiveBook, useBook } from "../store/use-book.ts";
import { contextNow } from "../visit/context-now.ts";
import { makePdf } from "../visit/make-pdf.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { Gone } from "./gone.tsx";
import { titleOf } from "./unit-line.ts";

type Which = "card" | "page";

interface KitchenScreenProps {
  readonly id: string;
  /** The visit it was opened from, to go back to. */
  readonly from: string | undefined;
}

/** What is given to the people of the kitchen: a card to hang at the unit, and the water in plain words, in the owner's language. */
export function KitchenScreen({ id, from }: KitchenScreenProps) {
  const { live, snapshot } = useBook();
  const [said, setSaid] = useState("");
  const file = unitFile(snapshot.book, id);
  if (!file) return <Gone />;
  const make = async (which: Which) => {
    const content = await contentOf(which, live, file);
    const pdf = await makePdf(content, freeze(content).mark);
    if (pdf.kind !== "known") return setSaid(officeWords.stickerFailed);
    const name = `kitchen-${which}-${(file.unit.serial ?? file.unit.name ?? id).replace(/[^\w-]+/g, "-")}.pdf`;
    await handOver(pdf.value, name);
    setSaid(officeWords.claimReady(name));
  };
  return (
    <Screen
      title={officeWords.forKitchen}
      subtitle={titleOf(file)}
      back={{ label: words.back, to: from ? `/visit/${from}/leave` : `/unit/${id}` }}
      next={{ label: officeWords.kitchenCard, onPress: () => void make("card") }}
    >
      <Band press={{ onPress: () => void make("card") }}>
        <span className="name">{officeWords.kitchenCard}</span>
      </Band>
      {file.visits.length > 0 ? (
        <Band press={{ onPress: () => void make("page") }}>
          <span className="name">{officeWords.kitchenPage}</span>
        </Band>
      ) : (
        <Band tint>{officeWords.noVisitJudged}</Band>
      )}
      <Band press={{ to: `/call/${file.unit.sticker ?? codeOfUnit(file.unit.id)}` }}>
        <span className="name">{callWords.forTechnician}</span>
        <p className="note">{callWords.forTechnicianHint}</p>
      </Band>
      {snapshot.book.settings.get("settings")?.phone ? null : (
        <Band tint press={{ to: "/settings" }}>
          {officeWords.noPhoneYet}
        </Band>
      )}
      <p className="band" role="status">
        {said}
      </p>
    </Screen>
  );
}

/** The words of the owner's language and the two pages are fetched when one is made. */
async function contentOf(which: Which, live: LiveBook, file: UnitFile): Promise<RecordContent> {
  const [{ messagesIn }, { kitchenInLanguage }, { kitchenDay }, { buildKitchenCard }, { buildKitchenPage }] =
    await Promise.all([
      import("@tapside/words/every-language"),
      import("@tapside/words/kitchen"),
      import("@tapside/report/kitchen-day"),
      import("@tapside/report/kitchen-card"),
      import("@tapside/report/kitchen-page"),
    ]);
  const { book } = live.snapshot();
  const context = contextNow(book);
  const visit = file.visits.at(-1);
  const shared = {
    file,
    words: messagesIn(file.site.language),
    kitchen: kitchenInLanguage(file.site.language),
    issuedAt: context.asOf,
    timeZone: context.timeZone,
  };
  const assessment = visit && assess(file, visit.id, context);
  if (which === "page" && visit && assessment)
    return buildKitchenPage({
      ...shared,
      visitId: visit.id,
      assessment,
      kitchenDay: kitchenDay(file, context, shared),
    });
  const { technician = "", phone = "" } = context.settings;
  // Only what stands behind https is reached by another phone.
  const appUrl = location.protocol === "https:" ? location.href : undefined;
  return buildKitchenCard({ ...shared, assessment, name: technician, phone, appUrl });
}
