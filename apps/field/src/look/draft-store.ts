import type { LiveBook } from "../store/open-book.ts";
import type { DraftStore } from "./use-draft.ts";

/** What was typed and refused waits beside its record, outside of undo and of what is sent. */
export const draftStore = (live: LiveBook, record: string, field: string): DraftStore => ({
  load: () => {
    const raw = live.field(`draft:${record}`, field);
    return typeof raw === "string" ? raw : undefined;
  },
  keep: (raw) => void keepDraft(live, record, field, raw),
});

/** Text that no book could keep is not kept as a draft either; it stands on the screen with the reason. */
const keepDraft = (live: LiveBook, record: string, field: string, raw: string | null) =>
  live.write("draft", `draft:${record}`, { [field]: raw }, { undoable: false }).catch(() => undefined);
