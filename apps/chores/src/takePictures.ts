/**
 * Takes the README's pictures of the page on the demo job: shared/pictures/*.png. Run after the page's look changes:
 * npm run pictures
 */
import { mkdir } from "node:fs/promises";
import { resolve } from "node:path";
import { launchChromium } from "../../../tests/browser/chromium.ts";
import { builtSite } from "../../../tests/browser/web/site.ts";

const folder = resolve(import.meta.dirname, "../../../shared/pictures");

const pictures = [
  { name: "wide-light", width: 1280, height: 860, scheme: "light" },
  { name: "wide-dark", width: 1280, height: 860, scheme: "dark" },
  { name: "phone-light", width: 390, height: 860, scheme: "light" },
] as const;

await mkdir(folder, { recursive: true });
const site = await builtSite();
const browser = await launchChromium();
for (const { name, width, height, scheme } of pictures) {
  const context = await browser.newContext({ viewport: { width, height }, colorScheme: scheme });
  const page = await context.newPage();
  await page.goto(site.url);
  await page.getByText("How long it lasts").first().waitFor();
  await page.waitForTimeout(6000); // the drawn skies and the fonts
  await page.screenshot({ path: `${folder}/${name}.png` });
  await context.close();
}
await browser.close();
await site.close();
