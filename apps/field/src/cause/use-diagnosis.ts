import type { CompanyCounts, Diagnosis, FittedCauses, Hour, Readings, Scene } from "@tapside/diagnosis";
import { useEffect, useState } from "react";
import type { CauseAsked, CauseTold } from "./worker-asks.ts";

let worker: Worker | undefined;

/** One worker for all screens, started with the first question. */
export function causeWorker(): Worker {
  worker ??= new Worker(new URL("./cause-worker.ts", import.meta.url), { type: "module" });
  return worker;
}

interface CaseAsked {
  readonly scene: Scene;
  readonly readings: Readings;
  readonly hour?: Hour;
  readonly counts?: CompanyCounts | undefined;
}

/** The newest answer for a case; while a newer one is being weighed the last stands, marked as old. */
export function useDiagnosis(asked: CaseAsked | undefined) {
  const key = asked ? JSON.stringify(asked) : "";
  const [found, setFound] = useState<{ key: string; diagnosis: Diagnosis }>();
  const [fit, setFit] = useState<{ key: string; unexplained: boolean; sizes: FittedCauses }>();
  useEffect(() => {
    if (!key) return;
    const listen = ({ data }: MessageEvent<CauseTold>) => {
      if (data.key !== key) return;
      if (data.kind === "diagnosed") setFound(data);
      if (data.kind === "fit") setFit(data);
    };
    const question: CauseAsked = { ...(JSON.parse(key) as CaseAsked), kind: "diagnose", key };
    causeWorker().addEventListener("message", listen);
    causeWorker().postMessage(question);
    return () => causeWorker().removeEventListener("message", listen);
  }, [key]);
  return {
    diagnosis: found?.diagnosis,
    isFresh: found?.key === key,
    fit: fit?.key !== key ? "checking" : fit.unexplained ? "unexplained" : "explained",
    sizes: fit?.key === key ? fit.sizes : undefined,
  } as const;
}
