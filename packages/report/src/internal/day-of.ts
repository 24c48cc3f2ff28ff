/** The day of an ISO instant as it is written; empty when there is none. */
export const dayOf = (iso: string | undefined): string => (iso ?? "").slice(0, 10);
