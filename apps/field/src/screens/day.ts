/** A day as people write it, from an ISO date or instant; empty when there is none. */
export function day(iso: string | null | undefined): string {
  const date = new Date(iso ?? "");
  if (Number.isNaN(date.getTime())) return "";
  return date.toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric" });
}
