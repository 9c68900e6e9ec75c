/**
 * Draws the installed page's icons as PNG from apps/web/public/mark.svg, which is the drawing. Run after changing it:
 * node --conditions=source --import tsx apps/chores/src/drawIcons.ts
 */
import { readFile, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { launchChromium } from "../../../tests/browser/chromium.ts";

const folder = resolve(import.meta.dirname, "../../web/public");

/** `inset` is the share of each side left as plain paper, so that a round or squircle mask cuts nothing of the drawing. */
const icons = [
  { name: "mark-180.png", size: 180, inset: 0, square: true },
  { name: "mark-192.png", size: 192, inset: 0, square: false },
  { name: "mark-512.png", size: 512, inset: 0, square: false },
  { name: "mark-maskable-512.png", size: 512, inset: 0.14, square: true },
];

const mark = await readFile(resolve(folder, "mark.svg"), "utf8");
const browser = await launchChromium();
const page = await browser.newPage();
for (const { name, size, inset, square } of icons) {
  await page.setViewportSize({ width: size, height: size });
  const paper = square ? "#fbf7ec" : "transparent";
  const side = Math.round(size * (1 - 2 * inset));
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:${size}px;background:${paper}">
     <img width="${side}" height="${side}" src="data:image/svg+xml;base64,${Buffer.from(mark).toString("base64")}">`,
  );
  await writeFile(resolve(folder, name), await page.screenshot({ omitBackground: !square }));
}
await browser.close();
