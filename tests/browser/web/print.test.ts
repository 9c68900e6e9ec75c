import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { pagesOfPdf } from "../pagesOfPdf.ts";
import { answered, jobOf, openPage, type } from "./openPage.ts";
import { served } from "./served.ts";

const here = served();

/** As the browser's own print command does it: the page hears of it just before, and the style sheets set the paper. */
const printed = async (page: Page): Promise<string[]> => pagesOfPdf(await page.pdf({ preferCSSPageSize: true }));

const printButton = (page: Page) => page.getByRole("button", { name: /^Print / });
const readyToPrint = async (page: Page): Promise<void> => {
  await answered(page);
  await page.waitForSelector("row-hand-over button.main:not([disabled])", { timeout: 60_000 });
  // laid out ahead, so that a print need not wait
  await page.locator("printed-page .customer").waitFor({ state: "attached", timeout: 20_000 });
};

/** Holds the browser's print command back, and counts. */
const holdPrints = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const held = window as unknown as { prints: number };
    held.prints = 0;
    window.print = () => {
      held.prints++;
    };
  });
const prints = (page: Page): Promise<number> => page.evaluate(() => (window as unknown as { prints: number }).prints);

const choose = async (page: Page, button: RegExp, file: { name: string; mimeType: string; buffer: Buffer }) => {
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: button }).click(),
  ]);
  await chooser.setFiles(file);
};
const mark = (body: string) => ({
  name: "mark.svg",
  mimeType: "image/svg+xml",
  buffer: Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 20" width="60" height="20">${body}</svg>`,
  ),
});

describe("the printed pages", () => {
  it("are one side for the customer, with the sentence, the picture and the table", async () => {
    const { page, close, complaints } = await openPage(here);
    await readyToPrint(page);
    const pages = await printed(page);
    expect(pages).toHaveLength(1);
    const [first = ""] = pages;
    const job = await jobOf(page);
    for (const part of [job.title, job.workshop?.name, job.customer?.name]) {
      expect(part).toBeTruthy();
      expect(first).toContain(part);
    }
    expect(first).toMatch(/parked at \w+ in \w+ it lasts [\d.]+ days, flat (in|after) night \d+ about \d\d:\d0/);
    expect(first).toContain("days from arrival at 15:00; nights shaded"); // drawn in the picture
    for (const { name } of job.setups) expect(first).toContain(name);
    expect(first).toContain("eight skies in ten");
    expect(first).toContain("Estimate for planning, not a promise.");
    expect(first).not.toMatch(/NaN|undefined|null|Infinity|\[object|For the fitter/);
    expect(complaints).toEqual([]);
    await close();
  });

  it("are A4 with the margins of the pages' own style sheet, and hide the sheet", async () => {
    const { page, close } = await openPage(here);
    await readyToPrint(page);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    const [, width = "0", height = "0"] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf) ?? [];
    // A4 in points; letter paper, the browser's own, is 612 by 792
    expect(Math.abs(Number(width) - (210 / 25.4) * 72)).toBeLessThan(1);
    expect(Math.abs(Number(height) - (297 / 25.4) * 72)).toBeLessThan(1);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("main").isVisible()).toBe(false);
    const box = await page.locator("printed-page .customer").boundingBox();
    expect(Math.abs((box?.width ?? 0) - (184 / 25.4) * 96)).toBeLessThan(1);
    await close();
  });

  it("have the fitter's page where it is ticked, by the button and by the browser's own command alike", async () => {
    const { page, close, complaints } = await openPage(here);
    await readyToPrint(page);
    await page.getByRole("checkbox", { name: /^With the fitter’s page/ }).check();
    await holdPrints(page);
    await page.getByRole("button", { name: "Print both pages" }).click();
    await expect.poll(() => prints(page)).toBe(1);
    const pages = await printed(page);
    expect(pages).toHaveLength(2);
    expect(pages[0]).toContain("Estimate for planning, not a promise.");
    for (const part of ["For the fitter", "Parts", "Charge run", "Wire and fuses", "While the loom is open", "mm²"])
      expect(pages[1]).toContain(part);
    expect(complaints).toEqual([]);
    await close();
  });

  it("print in black on white whatever the lights on the screen", async () => {
    const { page, close } = await openPage(here, { colorScheme: "dark" });
    await readyToPrint(page);
    await page.emulateMedia({ media: "print" });
    const colours = await page.locator("printed-page .customer").evaluate((sheet) => {
      const { color, backgroundColor } = getComputedStyle(sheet);
      return { color, backgroundColor, body: getComputedStyle(document.body).backgroundColor };
    });
    expect(colours).toEqual({
      color: "rgb(20, 17, 13)",
      backgroundColor: "rgb(255, 255, 255)",
      body: "rgb(255, 255, 255)",
    });
    await close();
  });

  it("say so on paper where the answer is not in, is of an older job, or a blank has a fault", async () => {
    const { page, close } = await openPage(here);
    // printed at once, whatever has come by then: never half a page
    const [early = ""] = await printed(page);
    expect(early).toMatch(/Not ready to be handed over|Estimate for planning, not a promise\./);
    await readyToPrint(page);
    const [before = ""] = await printed(page);
    await type(page, "setups[0].bank.capacity_Ah", "minus many");
    await answered(page, "faults");
    const faulty = await printed(page);
    expect(faulty).toHaveLength(1);
    expect(faulty[0]).toBe("Not ready to be handed over One blank needs another look first.");
    expect(await printButton(page).isDisabled()).toBe(true);
    await type(page, "setups[0].bank.capacity_Ah", "160");
    const words = await page.evaluate(async () => {
      const field = document.querySelector<HTMLInputElement>('[data-path="setups[0].bank.capacity_Ah"]')!;
      field.value = "400";
      field.dispatchEvent(new Event("input", { bubbles: true }));
      // asked in the same breath as the change, before any worker can have answered
      await Promise.resolve();
      window.dispatchEvent(new Event("beforeprint"));
      return document.querySelector("printed-page")!.shadowRoot!.textContent;
    });
    expect(words).toContain("It is still being worked out: print once it is in.");
    expect(words).not.toContain("Options side by side");
    await readyToPrint(page);
    const [after = ""] = await printed(page);
    expect(after).toContain("Estimate for planning, not a promise.");
    expect(after).not.toBe(before);
    await page.getByRole("button", { name: "Start an empty sheet" }).click();
    await expect.poll(async () => (await printed(page))[0]).toMatch(/^Not ready to be handed over Name a place/);
    await close();
  });
});

describe("the workshop's logo", () => {
  it("is kept for the next visit, printed and saved, and taken off again", async () => {
    const { page, close, complaints } = await openPage(here);
    await readyToPrint(page);
    await choose(page, /logo/, mark('<rect width="60" height="20"/>'));
    await page.locator("row-hand-over img").waitFor();
    await page.reload();
    await readyToPrint(page);
    await holdPrints(page);
    await printButton(page).click();
    await expect.poll(() => prints(page)).toBe(1);
    const drawn = await page
      .locator("printed-page img.logo")
      .evaluate((image: HTMLImageElement) => image.complete && image.naturalWidth);
    expect(drawn).toBe(60);
    await page.getByRole("button", { name: "Take the logo off" }).click();
    await page.reload();
    await readyToPrint(page);
    expect(await page.locator("row-hand-over img, printed-page img").count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });

  it.each([
    ["too large", { name: "big.png", mimeType: "image/png", buffer: Buffer.alloc(200_001, 0x89) }, "It has 201 kB"],
    [
      "of another kind",
      { name: "note.png", mimeType: "image/png", buffer: Buffer.from("GIF89a, or so") },
      "none of PNG, JPEG or SVG",
    ],
    [
      "damaged",
      {
        name: "cut.png",
        mimeType: "image/png",
        buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3]),
      },
      "cannot draw it",
    ],
  ])("is refused in words where it is %s", async (_, file, words) => {
    const { page, close } = await openPage(here);
    await answered(page);
    await choose(page, /logo/, file);
    const fault = page.locator("row-hand-over .logo .fault");
    await expect.poll(() => fault.innerText()).toContain(words);
    expect(await fault.innerText()).toContain(file.name);
    expect(await page.locator("row-hand-over img").count()).toBe(0);
    await close();
  });

  it("holds for the visit, and says so, where the browser's storage is full", async () => {
    const { page, close } = await openPage(here);
    await readyToPrint(page);
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });
    await choose(page, /logo/, mark('<circle r="9"/>'));
    await page.locator("row-hand-over img").waitFor();
    expect(await page.locator("row-hand-over .logo .fault").innerText()).toMatch(/does not keep it.*full/);
    await close();
  });
});

describe("the saved file", () => {
  it("prints the same words in the same places as the page does, and asks for nothing", async () => {
    const { page, close } = await openPage(here);
    await readyToPrint(page);
    await choose(page, /logo/, mark('<rect width="60" height="20"/>'));
    for (const both of [false, true]) {
      await page.getByRole("checkbox", { name: /^With the fitter’s page/ }).setChecked(both);
      const path = await savedFile(page);
      const own = await here.browser.newPage();
      const asked: string[] = [];
      own.on("request", (request) => asked.push(request.url()));
      await own.setContent(await readFile(path, "utf8"), { waitUntil: "load" });
      const [fromFile, fromPage] = [await printed(own), await printed(page)];
      expect(fromFile).toHaveLength(both ? 2 : 1);
      expect(fromFile).toEqual(fromPage);
      expect(await laidOut(own)).toEqual(await laidOut(page));
      expect(asked.filter((url) => !url.startsWith("data:"))).toEqual([]);
      const faces = await own.evaluate(() => Array.from(document.fonts, ({ family, status }) => `${family} ${status}`));
      expect(faces.map((face) => face.replaceAll('"', ""))).toEqual(["Sheet loaded"]);
      await own.close();
    }
    await close();
  });
});

/** Where each part of each page stands in print, and the size of its type. */
async function laidOut(page: Page): Promise<readonly string[]> {
  await page.emulateMedia({ media: "print" });
  const parts = await page.locator(".handout.sheet").evaluateAll((sheets) =>
    sheets.flatMap((sheet) => {
      const from = sheet.getBoundingClientRect();
      return Array.from(sheet.querySelectorAll("*"), (part) => {
        const { left, top, width, height } = part.getBoundingClientRect();
        const places = [left - from.left, top - from.top, width, height].map((px) => Math.round(px));
        return `${part.tagName} ${places.join(" ")}, ${getComputedStyle(part).fontSize}`;
      });
    }),
  );
  await page.emulateMedia({ media: null });
  expect(parts.length).toBeGreaterThan(100);
  return parts;
}

async function savedFile(page: Page): Promise<string> {
  // without the picker, which no test can answer
  await page.evaluate(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: /^Save .* as a file$/ }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.handout\.html$/);
  return download.path();
}

it("saves a picture as SVG and PNG", async () => {
  const { page, close } = await openPage(here);
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
