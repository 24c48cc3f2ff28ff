import type { KeptVisit } from "@tapside/records";

/** What a photo of a leak is kept for. */
export const LEAK = "exception:leaks";

/** A leak was reported or seen, and there is neither a photo of it nor a word why not: nothing may be touched before. */
export function wantsLeakPhoto({ exceptions, answers, photos }: KeptVisit): boolean {
  const leaks = exceptions.leaks !== undefined || answers.complaint?.items.includes("leak") === true;
  const taken = Object.values(photos).some((photo) => photo.for === LEAK && photo.hash !== null);
  return leaks && !taken && !answers.leakPhoto?.reason;
}
