import { type LabelText, labelText } from "@tapside/book";
import { pickFile } from "../../look/pick-photo.ts";
import { pixelsOf, readLabelCode } from "./read-sign.ts";

/** A photo of a part's label, and what its code says; undefined when none was taken, "unread" when it holds no readable code. */
export async function readLabel(): Promise<LabelText | "unread" | undefined> {
  const file = await pickFile("image/*", true);
  if (!file) return undefined;
  const picture = await createImageBitmap(file).catch(() => undefined);
  const pixels = picture && pixelsOf(picture, picture.width, picture.height);
  const text = pixels && (await readLabelCode(pixels));
  return text ? labelText(text) : "unread";
}
