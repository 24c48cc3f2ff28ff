import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import type { Change, FieldValue } from "./change.ts";
import { isChange } from "./change-shape.ts";
import { checkValue } from "./check-text.ts";
import { FILE_FORMAT, type FileContent, type Photo } from "./export-file.ts";
import { fromBase64 } from "./internal/base64.ts";
import { migrate, SCHEMA } from "./migrate.ts";
import { sha256Hex } from "./sha256.ts";

type Line = Readonly<Record<string, FieldValue>>;

/**
 * Reads a file back. Refused: "file-empty", "file-foreign" (not one of ours), "file-newer" (a later version
 * wrote it), "file-truncated" (its end is missing), "file-altered" (not as it was written), "file-broken" (with the line).
 */
export function importFile(text: string): Outcome<FileContent> {
  if (text.trim() === "") return refused("file-empty");
  const lines = text
    .replace(/^\uFEFF/, "")
    .replace(/\r\n/g, "\n")
    .trimEnd()
    .split("\n");
  return mapOutcome(checkHead(lines[0]!), (head) =>
    mapOutcome(checkEnd(lines, head), () => content(lines.slice(1, -1), head)),
  );
}

function checkHead(line: string): Outcome<Line> {
  const head = parsed(line);
  if (head?.format !== FILE_FORMAT || typeof head.schema !== "number") return refused("file-foreign");
  if (head.schema > SCHEMA) return refused("file-newer", { schema: head.schema, today: SCHEMA });
  return known(head);
}

function checkEnd(lines: readonly string[], head: Line): Outcome<true> {
  const awaited = Number(head.changes) + Number(head.photos) + 2;
  const end = parsed(lines.at(-1)!);
  if (end?.end === undefined) return refused("file-truncated", { awaited, found: lines.length });
  if (lines.length !== awaited) return refused("file-altered", { awaited, found: lines.length });
  const same = end.end === sha256Hex(lines.slice(0, -1).join("\n"));
  return same ? known(true) : refused("file-altered", { awaited, found: lines.length });
}

function content(lines: readonly string[], head: Line): Outcome<FileContent> {
  const changes: Change[] = [];
  const photos: Photo[] = [];
  for (const [index, text] of lines.entries()) {
    const line = parsed(text);
    const one = index < Number(head.changes) ? changeIn(line) : photoIn(line);
    if (one.kind !== "known") return refused("file-broken", { line: index + 2 });
    if ("hash" in one.value) photos.push(one.value);
    else changes.push(one.value);
  }
  return known({ changes, photos });
}

function changeIn(line: Line | undefined): Outcome<Change> {
  if (!line || !isChange(line)) return refused("not-a-change");
  return mapOutcome(checkValue(line), () => migrate(line as unknown as Change));
}

function photoIn(line: Line | undefined): Outcome<Photo> {
  const bytes = typeof line?.base64 === "string" ? fromBase64(line.base64) : undefined;
  if (!bytes || sha256Hex(bytes) !== line?.photo) return refused("not-a-photo");
  return known({ hash: line.photo, mime: String(line.mime), bytes });
}

function parsed(text: string): Line | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Line) : undefined;
  } catch {
    return undefined;
  }
}
