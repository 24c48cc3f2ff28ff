import type { Change } from "./change.ts";
import { toBase64 } from "./internal/base64.ts";
import { SCHEMA } from "./migrate.ts";
import { sha256Hex } from "./sha256.ts";

export const FILE_FORMAT = "tapside-book";

export interface Photo {
  /** SHA-256 of the bytes. */
  readonly hash: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
}

export interface FileContent {
  readonly changes: readonly Change[];
  readonly photos: readonly Photo[];
}

/**
 * Everything as one text file of JSON lines: a head with the counts, one change a line, one photo a line, and
 * an end with the SHA-256 of all lines before it. The same content gives the same text.
 */
export function exportFile(content: FileContent): string {
  const changes = [...content.changes].sort((a, b) => (a.at + a.id < b.at + b.id ? -1 : 1));
  const photos = [...content.photos].sort((a, b) => (a.hash < b.hash ? -1 : 1));
  const head = { format: FILE_FORMAT, schema: SCHEMA, changes: changes.length, photos: photos.length };
  const lines = [
    JSON.stringify(head),
    ...changes.map((change) => JSON.stringify(change)),
    ...photos.map(({ hash, mime, bytes }) => JSON.stringify({ photo: hash, mime, base64: toBase64(bytes) })),
  ].join("\n");
  return `${lines}\n${JSON.stringify({ end: sha256Hex(lines) })}\n`;
}
