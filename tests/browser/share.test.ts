import { readFile } from "node:fs/promises";
import { packJob, parseJob, type JobInput } from "@stayput/job";
import fc from "fast-check";
import jsQr from "jsqr";
import type { BrowserContext, Download, Page } from "playwright-core";
import { afterAll, afterEach, beforeEach, describe, expect, it } from "vitest";
import { anyJob } from "../laws/arbitraries/job.ts";
import { propertyRuns } from "../seed.ts";
import { stayput } from "../units/cli/stayput.ts";
import { jobOf, type } from "./web/openPage.ts";
import { keptJobs, slip, watchedPage } from "./web/kept.ts";
import { served } from "./web/served.ts";

const here = served();
let context: BrowserContext;
let complaints: string[];
let asked: string[];

const tally = { linksOpened: 0, linksRefused: 0, filesOpened: 0, filesRefused: 0, codesRead: 0, mutantsShown: 0 };

afterAll(() => {
  console.log(`files and links: ${JSON.stringify(tally)}`);
});
beforeEach(async () => {
  context = await here.browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB" });
  // the picker of a place to save is the system's own window, which no test can press
  await context.addInitScript(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
  complaints = [];
  asked = [];
  context.on("request", (request) => asked.push(request.url()));
});
afterEach(async () => {
  await context.close();
  expect(complaints).toEqual([]);
});

/** From the one seed of all property tests. */
const sampled = (numRuns: number): { numRuns: number; seed: number } => ({ numRuns, seed: propertyRuns.seed });
const eventually = <T>(what: () => T | Promise<T>) => expect.poll(what, { timeout: 15_000 });
const open = (address = here.site.url): Promise<Page> => watchedPage(context, address, complaints);
const title = (page: Page): Promise<string> => page.locator('[data-path="title"]').inputValue();
const send = (page: Page): Promise<void> => page.getByRole("button", { name: "Save or send" }).click();
const textOf = async (download: Download): Promise<string> => readFile(await download.path(), "utf8");
const meaning = (job: unknown): unknown => {
  const parsed = parseJob(job);
  if (!parsed.ok) throw new Error(parsed.faults[0]?.message);
  return parsed.job;
};

async function saved(page: Page, button: string): Promise<{ name: string; text: string }> {
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: button }).click();
  const download = await coming;
  return { name: download.suggestedFilename(), text: await textOf(download) };
}

describe("a link", () => {
  it("holds the whole job: another browser opens it as a new job, and no server hears of it", async () => {
    const page = await open();
    await type(page, "title", "Sent by link");
    await send(page);
    const link = await page.locator("#job-link").inputValue();
    const other = await here.browser.newContext();
    const heard: string[] = [];
    other.on("request", (request) => heard.push(request.url()));
    const there = await watchedPage(other, link, complaints);
    await eventually(() => title(there)).toBe("Sent by link");
    expect(meaning(await jobOf(there))).toEqual(meaning(await jobOf(page)));
    expect(there.url()).toBe(here.site.url); // plain again
    await eventually(async () => (await keptJobs(there)).length).toBe(1);
    await there.reload();
    await eventually(() => title(there)).toBe("Sent by link");
    expect(await keptJobs(there)).toHaveLength(1);
    const [, fragment] = link.split("#");
    expect(heard.length).toBeGreaterThan(3);
    expect(heard.filter((url) => url.includes(fragment!.slice(0, 40)))).toEqual([]);
    await other.close();
    tally.linksOpened++;
  });

  it("opens any valid job in place, beside what was there", async () => {
    const page = await open();
    const links = fc.sample(anyJob, sampled(5));
    for (const job of links) {
      await page.evaluate((fragment) => (location.hash = fragment), packJob(job));
      await eventually(async () => meaning(await jobOf(page))).toEqual(job);
      tally.linksOpened++;
    }
    await eventually(async () => (await keptJobs(page)).length).toBe(links.length);
  });

  it("says clearly when it is damaged, and leaves the sheet as it was", async () => {
    const page = await open();
    await type(page, "title", "Still here");
    const [good] = fc.sample(anyJob, sampled(1)).map(packJob);
    const damaged = [
      good!.slice(0, -7),
      good!.slice(0, 30) + (good![30] === "A" ? "B" : "A") + good!.slice(31),
      `2${good!.slice(1)}`,
      "1.",
      "nothing",
      `1.${"A".repeat(500_000)}`,
    ];
    for (const fragment of damaged) {
      await page.evaluate((text) => (location.hash = text), fragment);
      await slip(page, /This link cannot be opened: .*link/).waitFor();
      expect(await title(page)).toBe("Still here");
      await page
        .locator(".slip")
        .getByRole("button", { name: /^Close/ })
        .click();
      tally.linksRefused++;
    }
    const fresh = await open(`${here.site.url}#${damaged[0]}`);
    await slip(fresh, /damaged or cut short/).waitFor();
  });

  it("stands as a code that reads back as the link, and says when it is too long for one", async () => {
    const page = await open();
    await send(page);
    const picture = page.locator("svg.code");
    await picture.waitFor();
    const link = await page.locator("#job-link").inputValue();
    expect(await readCode(page)).toBe(link);
    tally.codesRead++;
    await page.getByRole("button", { name: "Close" }).click();
    const noise = fc.sample(fc.string({ unit: "grapheme-ascii", minLength: 1900, maxLength: 1990 }), sampled(2));
    await page.evaluate((texts) => {
      const { store } = document.querySelector("stay-sheet") as unknown as {
        store: { edit: (label: string, change: (job: JobInput) => JobInput) => void };
      };
      store.edit("x", (job) => ({ ...job, about: texts[0]!, customer: { name: "x", notes: texts[1]! } }));
    }, noise);
    await send(page);
    await page.getByText(/too many for a code/).waitFor();
  });

  it("is not made of a job with faults; its file is", async () => {
    const page = await open();
    await type(page, "setups[0].bank.capacity_Ah", "lots");
    await send(page);
    await page.getByText("A link holds only a job without faults. One blank needs another look").waitFor();
    const { text } = await saved(page, "Save the job file");
    expect(JSON.parse(text)).toEqual(await jobOf(page));
  });
});

/** The code as a camera would see it, read by a reader that is none of ours. */
async function readCode(page: Page): Promise<string | undefined> {
  const { size, path } = await page.locator("svg.code").evaluate((svg) => ({
    size: (svg as SVGSVGElement).viewBox.baseVal.width,
    path: svg.querySelector("path")!.getAttribute("d")!,
  }));
  const scale = 4;
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row++) {
      const from = (row * side + Number(x) * scale) * 4;
      for (let i = from; i < from + Number(run) * scale * 4; i += 4) pixels.fill(0, i, i + 3);
    }
  }
  return jsQr(pixels, side, side)?.data;
}

describe("files", () => {
  const drop = (page: Page, files: readonly { name: string; text: string }[]): Promise<void> =>
    page.evaluate((all) => {
      const dataTransfer = new DataTransfer();
      for (const { name, text } of all) dataTransfer.items.add(new File([text], name, { type: "application/json" }));
      for (const kind of ["dragover", "drop"])
        document.body.dispatchEvent(new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true }));
    }, files);

  it("are saved as the job stands, and open again by the picker and by being let go on the page", async () => {
    const page = await open();
    await type(page, "title", "Round / trip: <1>");
    await type(page, "loads[1].watts", "3 A");
    const before = await jobOf(page);
    await send(page);
    const { name, text } = await saved(page, "Save the job file");
    expect(name).toBe("Round-trip-1.json");
    await page.getByRole("button", { name: "Close" }).click();
    await drop(page, [
      { name, text: text.replace("Round / trip: <1>", "Dropped") },
      { name: "b.json", text: text.replace("Round / trip: <1>", "Dropped after") },
    ]);
    await eventually(() => title(page)).toBe("Dropped after");
    expect(await jobOf(page)).toEqual({ ...before, title: "Dropped after" });
    await eventually(async () => (await keptJobs(page)).length).toBe(3);
    await page.getByRole("button", { name: "Jobs", exact: true }).click();
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open a job file" }).click();
    await (await chooser).setFiles({ name: "picked.json", mimeType: "application/json", buffer: Buffer.from(text) });
    await eventually(() => title(page)).toBe("Round / trip: <1>");
    tally.filesOpened += 3;
  });

  it("that are no jobs are refused in words, and the sheet stays", async () => {
    const page = await open();
    await type(page, "title", "Still here");
    const good = JSON.stringify(await jobOf(page));
    const bad: [string, RegExp][] = [
      ["", /empty/],
      [good.slice(0, 400), /cut off/],
      ["\u0000PK\u0003\u0004", /not readable as JSON/],
      ["[1, 2, 3]", /./],
      [good.replace("{", '{"constructor":{"prototype":{"hacked":1}},'), /constructor/],
      [good.replace("{", '{"currancy":"ZAR",'), /did you mean currency/],
      [good.replace('"version":1', '"version":9'), /newer program/],
      [good.replace('"title":', '"title":"first","title":'), /stands twice/],
      ['{"a":'.repeat(5000), /./],
      ["9".repeat(5_100_000), /characters/],
    ];
    for (const [i, [text, says]] of bad.entries()) {
      await drop(page, [{ name: `bad-${i}.json`, text }]);
      await slip(page, new RegExp(`bad-${i}.json is not a job`)).waitFor();
      expect(await page.locator(".slip.grave").innerText()).toMatch(says);
      expect(await title(page)).toBe("Still here");
      tally.filesRefused++;
    }
    expect(await page.evaluate(() => "hacked" in {})).toBe(false);
    expect(await keptJobs(page)).toHaveLength(1);
  });

  it("with a slip in a blank open with the fault at the blank", async () => {
    const page = await open();
    const job = await jobOf(page);
    await drop(page, [
      { name: "slip.json", text: JSON.stringify({ ...job, title: "Slip", trip: { ...job.trip, nights: "four" } }) },
    ]);
    await slip(page, /slip.json is open. One blank needs another look/).waitFor();
    await page.locator('.faulty [data-path="trip.nights"]').waitFor();
    expect(await page.locator('[data-path="trip.nights"]').inputValue()).toBe("four");
  });

  it("changed at random either open on the sheet or are refused, and never break it", async () => {
    const page = await open();
    const mutants = fc.sample(anyJob.chain(mutantOf), sampled(120));
    for (const text of mutants) {
      await page.evaluate(async (mutant) => {
        const { keeper } = document.querySelector("stay-sheet") as unknown as {
          keeper: { takeText: (text: string, from: string) => Promise<boolean> };
        };
        await keeper.takeText(mutant, "mutant");
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      }, text);
      tally.mutantsShown++;
    }
    await page.waitForTimeout(300);
    expect(await page.locator("body").innerText()).not.toMatch(/NaN|\[object|undefined/);
    await type(page, "title", "Still works");
    await eventually(async () => (await jobOf(page)).title).toBe("Still works");
  });
});

/** A valid job's text with one value anywhere put wrong. */
function mutantOf(job: JobInput): fc.Arbitrary<string> {
  const spots: [object, string][] = [];
  const copy = structuredClone(job) as object;
  const walk = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    for (const key of Object.keys(value)) {
      spots.push([value, key]);
      walk((value as Record<string, unknown>)[key]);
    }
  };
  walk(copy);
  const wrong = fc.constantFrom<unknown>("", "x", -1, 1e9, null, [], {}, true, "12 parsecs", "\u202E", { a: 1 }, [
    null,
  ]);
  return fc.tuple(fc.integer({ min: 0, max: spots.length - 1 }), wrong).map(([at, value]) => {
    const [parent, key] = spots[at]!;
    const was = (parent as Record<string, unknown>)[key];
    Object.assign(parent, { [key]: value });
    const text = JSON.stringify(copy);
    Object.assign(parent, { [key]: was });
    return text;
  });
}

describe("the figures", () => {
  it("are saved hour by hour as CSV, and the answer as JSON, as the command line has them", async () => {
    const page = await open();
    await send(page);
    const csv = await saved(page, "Save the hours as CSV");
    const run = async (verb: string, ...options: string[]): Promise<string> =>
      (await stayput([verb, "-", ...options], JSON.stringify(await jobOf(page)))).out;
    expect(csv.name).toMatch(/\.hours\.csv$/);
    expect(csv.text).toBe(await run("hours"));
    const json = await saved(page, "Save the answer as JSON");
    const answer = JSON.parse(json.text) as { setups: { id: string }[] };
    expect(answer.setups.map(({ id }) => id)).toEqual((await jobOf(page)).setups.map(({ id }) => id));
    // the browser's exponentials differ from Node's in their last place
    const rounded = (text: string): unknown =>
      JSON.parse(text, (_, value: unknown) => (typeof value === "number" ? Number(value.toPrecision(9)) : value));
    expect(rounded(json.text)).toEqual(rounded(await run("explain", "--json")));
  });
});
