import { handoutHtml, logoDataUrl, type Handover } from "@stayput/handout";
import type { JobInput } from "@stayput/job";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demoInput, handoverOf } from "../units/handout/handover.ts";
import { launchChromium } from "./chromium.ts";
import { pagesOfPdf } from "./pagesOfPdf.ts";

/** The printed pages, printed: to PDF by a browser, its text read back page by page. */
let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage();
});
afterAll(() => browser.close());

const face = "@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2";
const font = readFileSync(createRequire(new URL("../../apps/cli/package.json", import.meta.url)).resolve(face));

async function printed(handover: Handover, withFont = true): Promise<string[]> {
  await page.setContent(handoutHtml(handover, withFont ? { font } : {}), { waitUntil: "load" });
  return pagesOfPdf(await page.pdf({ preferCSSPageSize: true }));
}

/** As much as the schema lets in: every list long, every text at its longest. */
function fullest(): JobInput {
  const job = demoInput("family-caravan");
  const long = (text: string, length: number) => `${text} WWWWW mmmmm `.repeat(40).slice(0, length);
  const setups = Array.from({ length: 12 }, (_, i) => ({
    ...job.setups[i % job.setups.length]!,
    id: `s${i}`,
    name: long(`Proposal ${i}`, 120),
    price: 123_456,
  }));
  const loads = Array.from({ length: 30 }, (_, i) => ({
    ...job.loads[i % job.loads.length]!,
    id: `load-${i}`,
    name: long(`Load ${i}`, 120),
  }));
  return {
    ...job,
    title: long("Title", 200),
    customer: { name: long("Customer", 200), notes: long("Notes", 5000) },
    workshop: { name: long("Workshop", 200), contact: long("Contact", 300) },
    loads,
    setups,
  };
}

/** What does not fit its page is cut off there: how far the parts run past its end, and the least height of the picture. */
const overrun = (): Promise<{ past_px: number; picture_px: number; wide_px: number }> =>
  page.evaluate(() => {
    const sheet = document.querySelector(".customer")!;
    const end = sheet.getBoundingClientRect();
    // names that are cut with an ellipsis run on inside their own box, and only what is in a picture may overhang it
    const inside = ":is(h1, .oneLine, .named, svg) *";
    const parts = [...sheet.querySelectorAll(`*:not(${inside})`)];
    return {
      past_px: Math.max(...parts.map((part) => part.getBoundingClientRect().bottom)) - end.bottom,
      wide_px: Math.max(...parts.map((part) => part.getBoundingClientRect().right)) - end.right,
      picture_px: sheet.querySelector(".long svg")!.getBoundingClientRect().height,
    };
  });

describe.each(["family-caravan", "bush-camper"] as const)("%s, printed", (demo) => {
  let handover: Handover;
  let pages: string[];
  beforeAll(async () => {
    handover = await handoverOf(demoInput(demo), 40);
    pages = await printed(handover);
  });

  it("is one side for the customer and one for the fitter", () => {
    expect(pages).toHaveLength(2);
    expect(pages[0]).toContain("Estimate for planning, not a promise.");
    expect(pages[1]).toContain("For the fitter");
  });

  it("has the sentence, the picture, the table and what is taken for granted on the customer's side", () => {
    const [first = ""] = pages;
    const { job, explained } = handover;
    for (const part of [job.title, job.customer.name, job.workshop.name, "2 November 2026"])
      expect(first).toContain(part);
    expect(first).toMatch(/parked at \w+ in \w+ it lasts [\d.]+ days, flat (in|after) night \d+ about \d\d:\d0/);
    expect(first).toContain("days from arrival at 15:00; nights shaded"); // drawn in the picture
    expect(first).toContain(`${explained.nights} nights`);
    for (const { name } of explained.setups) expect(first).toContain(name);
    for (const { price } of job.setups.filter((setup) => setup.price > 0))
      expect(first).toContain(price.toLocaleString("en-AU"));
    expect(first).toMatch(/[+−]\d+ kg/);
    expect(first).toMatch(/With no sun at all A is down to its reserve (in|after) night \d/);
    expect(first).toContain("A fridge goes off only when it is empty.");
    expect(first).toContain("SSE Release 6.0");
    expect(first).toContain("Deutscher Wetterdienst");
    expect(first).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
  });

  it("has parts, charge run, wire, fuses, checklist and cautions on the fitter's side", () => {
    const [, second = ""] = pages;
    for (const part of [
      "Parts",
      "Charge run",
      "Wire and fuses",
      "While the loom is open",
      "To mind",
      "mm²",
      "fuse",
      "DC-DC",
    ])
      expect(second).toContain(part);
    expect(second).toContain("Isolate every source");
    expect(second).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
  });

  it("cuts nothing off, in its own type and in the system's", async () => {
    for (const own of [true, false]) {
      const [first, second] = await printed(handover, own);
      expect(first).toContain("Estimate for planning, not a promise.");
      expect(second).toContain("For the fitter");
      const { past_px, wide_px, picture_px } = await overrun();
      expect(past_px).toBeLessThanOrEqual(0.5);
      expect(wide_px).toBeLessThanOrEqual(0.5);
      expect(picture_px).toBeGreaterThan(180);
    }
  });

  it("tells the setups apart by their lines, with no colour", async () => {
    const dashes = await page.$$eval(".customer .sample path", (paths) =>
      paths.map((path) => path.getAttribute("stroke-dasharray")),
    );
    expect(dashes).toHaveLength(handover.study.setups.length);
    expect(new Set(dashes).size).toBe(dashes.length);
  });
});

describe("a job as full as a job may be, printed", () => {
  it("keeps the customer to one side, cuts nothing off, and runs the fitter on", async () => {
    const handover = await handoverOf(fullest(), 10);
    const logo = logoDataUrl(
      new TextEncoder().encode("<svg xmlns='http://www.w3.org/2000/svg' width='900' height='900'/>"),
    );
    const pages = await printed({ ...handover, logo });
    expect(pages[0]).toContain("Estimate for planning, not a promise.");
    expect(pages[0]).toContain("6 more");
    expect(pages[1]).toContain("For the fitter");
    expect(pages.slice(1).join(" ")).toContain("Proposal 11");
    const { past_px, wide_px, picture_px } = await overrun();
    expect(past_px).toBeLessThanOrEqual(0.5);
    expect(wide_px).toBeLessThanOrEqual(0.5);
    expect(picture_px).toBeGreaterThan(150);
  });
});

describe("the file in a browser", () => {
  it("asks for nothing and runs nothing, whatever is written in the job", async () => {
    const handover = await handoverOf(
      { ...demoInput("bush-camper"), title: "<img src=x onerror=\"document.title='run'\">" },
      10,
    );
    const asked: string[] = [];
    const faults: string[] = [];
    const own = await browser.newPage();
    own.on("request", (request) => asked.push(request.url()));
    own.on("pageerror", (fault) => faults.push(fault.message));
    const svg =
      "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><script>document.title='run'</script></svg>";
    const logo = logoDataUrl(new TextEncoder().encode(svg));
    await own.setContent(handoutHtml({ ...handover, logo }, { font }), { waitUntil: "load" });
    expect(asked.filter((url) => !url.startsWith("data:"))).toEqual([]);
    expect(await own.title()).toContain("<img src=x");
    // even a script put into the page afterwards is refused by the page's own policy
    await own.evaluate(() => {
      const script = document.createElement("script");
      script.textContent = "document.title = 'run'";
      document.body.append(script);
    });
    expect(await own.title()).not.toBe("run");
    expect(faults).toEqual([]);
    await own.close();
  });
});
