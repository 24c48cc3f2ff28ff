import { unitFile } from "@tapside/records";
import { useLocation } from "wouter";
import type { Press } from "../look/screen.tsx";
import { whenKept } from "../store/when-kept.ts";
import { stepTitle } from "./step-title.ts";
import { nextStep, stepsOf } from "./steps.ts";
import type { OpenVisit } from "./use-visit.ts";
import { takeWayBack } from "./way-back.ts";
import { visitWords } from "./words.ts";

/** Where the visit goes after a step, and the words on the next key for it. */
export function useGoOn(open: OpenVisit, stepId: string) {
  const [, navigate] = useLocation();
  const steps = stepsOf(open.file, open.visit, open.assessment);
  const next = nextStep(steps, stepId);
  const to = `${open.base}/${next.path}`;
  const go = () =>
    void whenKept(open.live, () => navigate(`${open.base}/${nextStep(freshSteps(open), stepId).path}`));
  const goAfter = (place: string | undefined) => {
    const there = takeWayBack(open.base, stepId) ?? place;
    return there ? void whenKept(open.live, () => navigate(`${open.base}/${there}`)) : go();
  };
  return { steps, next, to, hint: stepTitle(next), go, goAfter, navigate };
}

/** What the hands do next, in words. */
export const nextForHands = (open: OpenVisit): string =>
  stepTitle(nextStep(stepsOf(open.file, open.visit, open.assessment), ""));

/** The steps as the book stands this moment: what was just written may have brought a new one. */
function freshSteps(open: OpenVisit) {
  const { book } = open.live.snapshot();
  const visit = book.visit.get(open.visit.id) ?? open.visit;
  return stepsOf(unitFile(book, open.file.unit.id) ?? open.file, visit, open.assessment);
}

/** Takes back the newest change; when there is none to take back, leads to the overview. */
export function undoPress(open: OpenVisit): Press {
  return open.live.canUndo
    ? { label: visitWords.undo, onPress: () => void open.live.undo() }
    : { label: visitWords.visit, to: open.base };
}
