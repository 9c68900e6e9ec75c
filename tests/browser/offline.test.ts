import { execFile } from "node:child_process";
import { readFile, rm, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { answered, jobOf, type } from "./web/openPage.ts";
import { keptJobs, slip, watchedPage } from "./web/kept.ts";
import { expectSameAsSim } from "./web/sameAsSim.ts";
import { buildEnvironment } from "./web/site.ts";
import { visits } from "./web/visits.ts";

const here = visits();
const eventually = <T>(what: () => T | Promise<T>) => expect.poll(what, { timeout: 20_000 });
const { complaints, open } = here;
const title = (page: Page): Promise<string> => page.locator('[data-path="title"]').inputValue();

/** When everything is fetched for later. */
const stored = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });

describe("installing", () => {
  interface Manifest {
    readonly name: string;
    readonly short_name: string;
    readonly start_url: string;
    readonly scope: string;
    readonly display: string;
    readonly icons: readonly { src: string; sizes: string; type: string; purpose: string }[];
    readonly share_target: { action: string; method: string; enctype: string };
  }
  it("has a manifest that stands under any folder, with icons of the sizes it says", async () => {
    const page = await open();
    const href = await page.locator('link[rel="manifest"]').evaluate((link) => (link as HTMLLinkElement).href);
    expect(href.startsWith(here.site.url)).toBe(true);
    const manifest = JSON.parse(await readFile(join(here.site.folder, "manifest.webmanifest"), "utf8")) as Manifest;
    expect(manifest).toMatchObject({ start_url: "./", scope: "./", display: "standalone", short_name: "Stayput" });
    expect(manifest.icons.map(({ purpose }) => purpose)).toContain("maskable");
    for (const { src, sizes, type: kind } of manifest.icons) {
      const bytes = await readFile(join(here.site.folder, src));
      if (kind !== "image/png") continue;
      expect(bytes.subarray(1, 4).toString()).toBe("PNG");
      expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes); // IHDR: width, height
    }
  });

  it("is free of faults as the browser judges it", async () => {
    const page = await open();
    const devtools = await here.context.newCDPSession(page);
    const { errors } = await devtools.send("Page.getAppManifest");
    expect(errors).toEqual([]);
  });
});

describe("with the network gone", () => {
  it("opens on the second visit, answers, and has every part of itself", async () => {
    const first = await open();
    await stored(first);
    await first.close();
    await here.context.setOffline(true);
    const page = await open();
    await expectSameAsSim(page);
    await type(page, "loads[1].watts", "3 A"); // units in words are a part that comes late
    await expectSameAsSim(page);
    await page.getByRole("button", { name: "Save or send" }).click();
    await page.locator("svg.code").waitFor();
    await page.getByRole("button", { name: "Close" }).click();
    await type(page, "title", "Out of reach");
    await eventually(async () => (await keptJobs(page)).some(({ text }) => text.includes("Out of reach"))).toBe(true);
    await page.reload();
    await eventually(() => title(page)).toBe("Out of reach");
    await answered(page);
    await page.getByRole("combobox", { name: "Place" }).fill("upingt"); // the tables as well
    await page.getByRole("option", { name: /Upington/ }).waitFor();
  });
});

describe("a newer version", () => {
  /** As a new release would be: another page, and a worker that says so. */
  async function release(words: string): Promise<void> {
    const html = join(here.site.folder, "index.html");
    await writeFile(html, (await readFile(html, "utf8")).replace(/<title>[^<]*/, `<title>${words}`));
    const worker = join(here.site.folder, "sw.js");
    const text = await readFile(worker, "utf8");
    const marked = text.replace(
      /(["'`]?url["'`]?:["'`]index\.html["'`],["'`]?revision["'`]?:["'`])[^"'`]*|(["'`]?revision["'`]?:["'`])[^"'`]*(["'`],["'`]?url["'`]?:["'`]index\.html)/,
      (all, a?: string, b?: string, c?: string) => (a !== undefined ? `${a}${words}` : `${b ?? all}${words}${c ?? ""}`),
    );
    expect(marked).not.toBe(text);
    await writeFile(worker, marked);
  }
  const look = (page: Page): Promise<unknown> =>
    page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });

  async function secondVisit(): Promise<Page> {
    const first = await open();
    await stored(first);
    await first.close();
    const page = await open();
    await eventually(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    return page;
  }

  it("is said to be ready, waits to be asked, and comes in without losing the edit under way", async () => {
    const page = await secondVisit();
    await release("Version two");
    await look(page);
    await slip(page, /newer version of this page is ready/).waitFor();
    expect(await page.title()).not.toBe("Version two");
    await type(page, "title", "In the middle");
    await type(page, "setups[0].bank.capacity_Ah", "two hun");
    const before = await jobOf(page);
    await page.getByRole("button", { name: "Use it now" }).click();
    await eventually(() => page.title().catch(() => "")).toBe("Version two");
    await eventually(() => title(page).catch(() => "")).toBe("In the middle");
    expect(await jobOf(page)).toEqual(before);
  });

  it("comes in by itself when the page is next begun", async () => {
    const page = await secondVisit();
    await release("Version three");
    await look(page);
    await slip(page, /newer version of this page is ready/).waitFor();
    await page.close();
    const blank = await here.context.newPage();
    await blank.waitForTimeout(300);
    const next = await open();
    await eventually(() => next.title()).toBe("Version three");
  });

  it("says so in the other tabs, and leaves them as they are", async () => {
    const a = await secondVisit();
    const b = await open();
    await type(b, "title", "Left alone");
    await release("Version four");
    await look(a);
    await a.getByRole("button", { name: "Use it now" }).click();
    await slip(b, /newer version of this page came in from another tab/).waitFor();
    expect(await title(b)).toBe("Left alone");
    await b.getByRole("button", { name: "Reload" }).click();
    await eventually(() => title(b).catch(() => "")).toBe("Left alone");
  });
});

describe("a file from another app's share sheet", () => {
  it("is held on the device and opens as a new job", async () => {
    const first = await open();
    await stored(first);
    await first.close();
    const job = { ...(await jobOf(await open())), title: "From the share sheet" };
    // as the system does it: a form sent to the address that the manifest names
    const taken = await watchedPage(here.context, "about:blank", complaints);
    await taken.setContent(
      `<form method="post" enctype="multipart/form-data" action="${here.site.url}take-shared">
       <input name="title" value="x"><input type="file" name="jobs"></form>`,
    );
    const buffer = Buffer.from(JSON.stringify(job));
    await taken.setInputFiles("input[type=file]", { name: "sent.json", mimeType: "application/json", buffer });
    await taken.evaluate(() => document.forms[0]!.submit());
    await eventually(() => title(taken).catch(() => "")).toBe("From the share sheet");
    expect(taken.url()).toBe(here.site.url);
    await taken.reload();
    await eventually(() => title(taken)).toBe("From the share sheet");
    expect((await keptJobs(taken)).length).toBe(1);
  });
});

describe("the page as one file", () => {
  it("opens from disk, answers as the library does, keeps the job, and asks no address for anything", async () => {
    const folder = await mkdtemp(join(tmpdir(), "stayput-single-"));
    const web = resolve(import.meta.dirname, "../../apps/web");
    const vite = resolve(import.meta.dirname, "../../node_modules/vite/bin/vite.js");
    const args = [vite, "build", "--mode", "single", "--logLevel", "error", "--outDir", folder, "--emptyOutDir"];
    await promisify(execFile)(process.execPath, args, { cwd: web, env: buildEnvironment() });
    const file = join(folder, "stayput.html");
    const html = await readFile(file, "utf8");
    console.log(`the page as one file: ${(html.length / 1000).toFixed(0)} kB`);
    const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(html)?.[1] ?? "";
    expect(policy).toMatch(/script-src 'sha256-[^;]+; style-src 'sha256-/);
    expect(policy.includes("unsafe")).toBe(false);
    const heard: string[] = [];
    here.context.on("request", (request) => heard.push(request.url()));
    const page = await open(pathToFileURL(file).href);
    await expectSameAsSim(page);
    await type(page, "loads[1].watts", "3 A");
    await type(page, "title", "From disk");
    await expectSameAsSim(page);
    await page.getByRole("button", { name: "Save or send" }).click();
    await page.getByText("a link to it would lead nowhere").waitFor();
    await page.reload();
    await eventually(() => title(page)).toBe("From disk");
    expect(heard.filter((url) => !/^(file|blob|data):/.test(url))).toEqual([]);
    await rm(folder, { recursive: true, force: true });
  });
});
