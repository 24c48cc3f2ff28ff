/** Columns of a table that nothing reads though they look like one that was looked for and is not there: `[written, looked for]`. */
export function mistakenColumns(
  columns: readonly string[],
  read: readonly string[],
): readonly (readonly [string, string])[] {
  const lookedFor = read.filter((column) => !columns.includes(column));
  return columns
    .filter((column) => !read.includes(column))
    .flatMap((column) => {
      const meant = lookedFor.find((one) => isLike(column, one));
      return meant === undefined ? [] : [[column, meant] as const];
    });
}

const parts = (name: string): readonly string[] =>
  name
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((part) => part !== "");

const beginsAlike = (a: string, b: string): boolean =>
  a !== "" && b !== "" && (a.startsWith(b) || b.startsWith(a));

/** The same words but for case and separators, or the same first word cut shorter with the rest equal or the unit written another way. */
function isLike(a: string, b: string): boolean {
  const [first, ...rest] = parts(a);
  const [firstMeant, ...restMeant] = parts(b);
  if (parts(a).join("") === parts(b).join("")) return true;
  if (first === firstMeant)
    return rest.length === restMeant.length && rest.every((part, i) => beginsAlike(part, restMeant[i]!));
  return beginsAlike(first ?? "", firstMeant ?? "") && rest.length > 0 && rest.join() === restMeant.join();
}
