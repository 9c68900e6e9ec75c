import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { launchChromium } from "../chromium.ts";
import { answered, openPage } from "./openPage.ts";
import { builtSite, type Site } from "./site.ts";

let browser: Browser;
let site: Site;

beforeAll(async () => {
  [site, browser] = await Promise.all([builtSite(), launchChromium()]);
});
afterAll(async () => {
  await browser.close();
  await site.close();
});

it("prints one side of A4 with the sentence, two pictures, the options, the workshop and what it is", async () => {
  const { page, close, complaints } = await openPage(browser, site);
  await answered(page);
  await page.emulateMedia({ media: "print" });
  const sheet = page.locator("printed-page");
  const text = await sheet.innerText();
  for (const part of [
    "Example Auto Electrical",
    "How long it lasts",
    "Options side by side",
    "Estimate for planning",
    "goes flat after",
  ])
    expect(text).toContain(part);
  expect(await sheet.locator("svg.picture").count()).toBe(2);
  expect(await page.locator("main").isVisible()).toBe(false);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  expect([...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)]).toHaveLength(1);
  expect(complaints).toEqual([]);
  await close();
});

it("saves a picture as SVG and PNG", async () => {
  const { page, close } = await openPage(browser, site);
  await answered(page);
  for (const kind of ["SVG", "PNG"]) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: `Save How long it lasts as ${kind}` }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(`how-long-it-lasts.${kind.toLowerCase()}`);
  }
  await close();
});
