/** Rows of a small comma-separated table without quoting, by column name. */
export function readTable(text: string): Record<string, string>[] {
  const [head = "", ...lines] = text.trim().split(/\r?\n/);
  const names = head.split(",");
  return lines.map((line) => {
    const cells = line.split(",");
    return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? ""]));
  });
}
