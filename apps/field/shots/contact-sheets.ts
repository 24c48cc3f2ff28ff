import { existsSync, readFileSync, writeFileSync } from "node:fs";
import type { BrowserContext } from "playwright";

const EACH = 12;

/** Puts the pictures of a folder side by side, a dozen a sheet: `sheet-01.png` and so on. */
export async function sheets(context: BrowserContext, folder: string, names: readonly string[]) {
  const page = await context.browser()!.newPage({ viewport: { width: 1500, height: 800 } });
  const there = names.filter((name) => existsSync(`${folder}${name}.png`));
  for (let i = 0; i < there.length; i += EACH) {
    await page.setContent(sheet(there.slice(i, i + EACH), folder));
    const path = `${folder}sheet-${String(i / EACH + 1).padStart(2, "0")}.png`;
    writeFileSync(path, await page.screenshot({ fullPage: true }));
  }
  await page.close();
}

const sheet = (names: readonly string[], folder: string): string =>
  `<body style="margin:8px;background:#888;display:grid;grid-template-columns:repeat(6,1fr);gap:8px;font:14px sans-serif">
${names.map((name) => `<figure style="margin:0"><figcaption>${name}</figcaption><img style="width:100%" src="${pictureUrl(`${folder}${name}.png`)}"></figure>`).join("")}</body>`;

const pictureUrl = (path: string) => `data:image/png;base64,${readFileSync(path).toString("base64")}`;
