// Draws the app's icons for phones from icon.svg with the browser of the tests.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright";
import { root } from "./ensure-ready.mjs";
import { findBrowser } from "./find-browser.mjs";

const folder = join(root, "apps/field/public");
const svg = readFileSync(join(folder, "icon.svg"), "utf8");
const GROUND = "#F4F5F0";
/** A maskable icon may lose a tenth on every side: the sign keeps clear of it. */
const ICONS = [
  { name: "icon-192.png", size: 192, share: 1 },
  { name: "icon-512.png", size: 512, share: 1 },
  { name: "icon-maskable-512.png", size: 512, share: 0.7 },
];

const browser = await chromium.launch(await findBrowser());
for (const { name, size, share } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const style = `margin:0;height:100vh;display:grid;place-items:center;background:${GROUND}`;
  await page.setContent(
    `<body style="${style}"><style>svg{width:${share * 100}vw;height:${share * 100}vh}</style>${svg}</body>`,
  );
  writeFileSync(join(folder, name), await page.screenshot());
}
await browser.close();
