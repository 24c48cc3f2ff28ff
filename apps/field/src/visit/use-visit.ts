import { type Assessment, assess } from "@tapside/assessment";
import { type FieldValue, type KeptVisit, type UnitFile, unitFile } from "@tapside/records";
import { useEffect, useMemo } from "react";
import type { LiveBook } from "../store/open-book.ts";
import { useBook } from "../store/use-book.ts";
import { holdVisitOpen } from "../store/visit-lock.ts";
import { contextNow } from "./context-now.ts";

/** A visit opened on the screen: its records, its judgement, and the one way to write to it. */
export interface OpenVisit {
  readonly live: LiveBook;
  readonly visit: KeptVisit;
  readonly file: UnitFile;
  readonly assessment: Assessment;
  /** Base path of its screens. */
  readonly base: string;
  write(fields: Readonly<Record<string, FieldValue>>): void;
}

/** The visit with this id, or undefined when the book has none. Judged again whenever the book changes. */
export function useVisit(id: string): OpenVisit | undefined {
  const { live, snapshot } = useBook();
  const { book } = snapshot;
  const visit = book.visit.get(id);
  const file = useMemo(() => (visit?.unit ? unitFile(book, visit.unit) : undefined), [book, visit?.unit]);
  const assessment = useMemo(() => (file ? assess(file, id, contextNow(book)) : undefined), [file, id, book]);
  useVisitLock(visit !== undefined && visit.closed !== true);
  if (!visit || !file || !assessment) return undefined;
  const write = (fields: Readonly<Record<string, FieldValue>>) =>
    void live.write("visit", id, fields).catch(leftToTheText);
  return { live, visit, file, assessment, base: `/visit/${id}`, write };
}

/** While a visit is open no new version of the app is taken up. */
function useVisitLock(open: boolean) {
  useEffect(() => (open ? holdVisitOpen() : undefined), [open]);
}

/** Only text that cannot be kept is refused: the entry it stands in says so, and the visit does not go on over it. */
const leftToTheText = () => undefined;
