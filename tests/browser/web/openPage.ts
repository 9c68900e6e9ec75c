import type { Job, JobInput } from "@stayput/job";
import type { BrowserContextOptions, Page } from "playwright-core";
import { expect } from "vitest";
import type { Served } from "./served.ts";

export interface Opened {
  readonly page: Page;
  /** whatever went wrong: errors, warnings of the policy, requests to other places */
  readonly complaints: string[];
  readonly close: () => Promise<void>;
}

/** The page in a browser of its own, with everything noted that must not happen. */
export async function openPage({ browser, site }: Served, options: BrowserContextOptions = {}): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB", ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => {
    const { origin, protocol } = new URL(request.url());
    if (origin !== new URL(site.url).origin && protocol.startsWith("http")) complaints.push(`asked ${request.url()}`);
  });
  page.on("requestfailed", (request) => complaints.push(`failed ${request.url()}`));
  await page.goto(site.url);
  return { page, complaints, close: () => context.close() };
}

/** Waits until the job as it stands is answered in full. */
export const answered = (page: Page, how = "complete"): Promise<unknown> =>
  page.waitForSelector(`stay-sheet[data-answered="${how}"]`, { timeout: 60_000 });

/** The job on the sheet, as typed. */
export const jobOf = (page: Page): Promise<JobInput> =>
  page.evaluate(() => (document.querySelector("stay-sheet") as unknown as { store: { job: JobInput } }).store.job);

/** Types into the blank of a path, in place of what stands there. */
export async function type(page: Page, path: string, text: string): Promise<void> {
  await page.locator(`[data-path="${path}"]`).fill(text);
}

/** No number on the page is none. */
export async function expectSound(page: Page): Promise<void> {
  const text = await page.locator("body").innerText();
  expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
}

export type { Job };
