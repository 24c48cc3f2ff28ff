import fc from "fast-check";

/** How much the property tests sample: one seed for every ordinary run, a fresh one (printed) in `npm run soak`. */
const RUNS: Readonly<Record<string, number>> = { ci: 300, soak: 3000 };
const depth = process.env.TAPSIDE_DEPTH ?? "";

fc.configureGlobal({ seed: Number(process.env.TAPSIDE_SEED ?? 4711), numRuns: RUNS[depth] ?? 100 });
