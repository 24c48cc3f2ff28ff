import { type Book, bookOf, type Change, EMPTY_STATE, fold, importFile } from "@tapside/records";
import type { Page } from "playwright";

const bookFrom = (changes: readonly Change[]): Book => bookOf(fold(EMPTY_STATE, changes));

/** What the phone's disk holds of a book, read past the app. */
export async function bookOnDisk(page: Page, name = "tapside"): Promise<Book> {
  const texts = await page.evaluate(
    (database) =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open(database);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction(["changes", "closed"]);
          const [open, closed] = ["changes", "closed"].map((store) => reading.objectStore(store).getAll());
          reading.oncomplete = () => {
            opening.result.close();
            resolve([...open!.result, ...closed!.result].map((row: { text: string }) => row.text));
          };
        };
      }),
    name,
  );
  const lines = texts.flatMap((text) => text.split("\n")).filter((line) => line !== "");
  return bookFrom(lines.map((line) => JSON.parse(line) as Change));
}

/** What an export made through the screen holds. */
export async function exportedText(page: Page): Promise<string> {
  await page.goto(`${new URL("#/more", page.url())}`);
  const downloaded = page.waitForEvent("download");
  await page.getByRole("button", { name: /^Export everything/ }).click();
  const stream = await (await downloaded).createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString("utf8");
}

export function changesInFile(text: string): readonly Change[] {
  const content = importFile(text);
  if (content.kind !== "known") throw new Error(`the export cannot be read: ${content.kind}`);
  return content.value.changes;
}

export const bookInFile = (text: string): Book => bookFrom(changesInFile(text));

/** What was typed, when a change wrote this reading. */
export const rawOf = (change: Change, field: string): string | undefined =>
  (change.fields[field] as { readonly raw?: string } | null | undefined)?.raw;
