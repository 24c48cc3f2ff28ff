import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Phone } from "./phone.ts";

const folder =
  process.env.TAPSIDE_SHOTS &&
  fileURLToPath(new URL(`../../../${process.env.TAPSIDE_SHOTS}/`, import.meta.url));

/** A picture of the screen, when pictures are wanted (`npm run pictures`). */
export async function shoot(phone: Phone, name: string) {
  if (!folder) return;
  mkdirSync(folder, { recursive: true });
  await phone.page.screenshot({ path: `${folder}${name}.png` });
}
