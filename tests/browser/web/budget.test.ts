import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { answered, openPage } from "./openPage.ts";
import { served } from "./served.ts";

const here = served();

/** The climate of places and of the grid comes after the page stands. */
const climate = (file: string, text: string): boolean =>
  file.includes("/assets/") && /NASA|,ghi_1,|radiationPacked/.test(text.slice(0, 4000));

it("loads first in at most 200 kB compressed, fonts and worker included, the tables after", async () => {
  const context = await here.browser.newContext();
  const page = await context.newPage();
  const files = new Map<string, { kB: number; climate: boolean }>();
  page.context().on("response", (response) => {
    const file = response.url().replace(here.site.url, "/");
    void response
      .body()
      .then((body) => {
        const kB = (file.endsWith(".woff2") ? body.length : gzipSync(body).length) / 1000;
        files.set(file, { kB, climate: climate(file, body.toString("latin1")) });
      })
      .catch(() => undefined);
  });
  await page.goto(here.site.url);
  await page.waitForSelector("stay-sheet[data-answered]:not([data-answered=nothing])");
  const first = [...files].filter(([, { climate }]) => !climate);
  const later = [...files].filter(([, { climate }]) => climate);
  const total = first.reduce((sum, [, { kB }]) => sum + kB, 0);
  const say = (rows: typeof first) => rows.map(([file, { kB }]) => `${file} ${kB.toFixed(1)}`).join(", ");
  console.log(`first load ${total.toFixed(1)} kB compressed: ${say(first)}; climate besides: ${say(later)}`);
  // a run that saw no worker or no font would pass for a light page
  expect(first.some(([file]) => file.includes("worker"))).toBe(true);
  expect(first.some(([file]) => file.endsWith(".woff2"))).toBe(true);
  expect(total).toBeLessThanOrEqual(200);
  await context.close();
});

it("has a policy that bars scripts and requests from anywhere else", async () => {
  const { page, close } = await openPage(here);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
  expect(policy).toMatch(/script-src 'self'(;|$)/);
  expect(policy).toMatch(/connect-src 'self'(;|$)/);
  expect(policy).not.toMatch(/unsafe/);
  const barred = await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "window.ranInline = true";
    document.head.append(script);
    return (window as unknown as { ranInline?: boolean }).ranInline ?? false;
  });
  expect(barred).toBe(false);
  await close();
});

/** Milliseconds from a change of one blank until the page has drawn each kind of answer, in the page's own clock. */
async function times(page: Page, value: number): Promise<{ average: number; drawn: number }> {
  return page.evaluate(async (capacity) => {
    const sheet = document.querySelector<HTMLElement>("stay-sheet")!;
    const until = (kind: string) =>
      new Promise<number>((done) => {
        const watch = new MutationObserver(() => {
          if (sheet.dataset["answered"] !== kind) return;
          watch.disconnect();
          done(performance.now());
        });
        watch.observe(sheet, { attributes: true });
      });
    const [average, drawn] = [until("average"), until("drawn")];
    const input = document.querySelector<HTMLInputElement>('[data-path="setups[0].bank.capacity_Ah"]')!;
    const start = performance.now();
    input.value = String(capacity);
    input.dispatchEvent(new Event("input", { bubbles: true }));
    return { average: (await average) - start, drawn: (await drawn) - start };
  }, value);
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

it("draws the average sky before the band, and prints how long a change takes", async () => {
  const { page, close } = await openPage(here);
  await answered(page);
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable");
  const script_ms = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0);
  };
  const rows: { average: number; drawn: number; script: number }[] = [];
  for (let i = 0; i < 11; i++) {
    const before = await script_ms();
    const took = await times(page, 150 + 5 * i);
    rows.push({ ...took, script: (await script_ms()) - before });
    await answered(page);
  }
  const [average, drawn, script] = [
    median(rows.map((row) => row.average)),
    median(rows.map((row) => row.drawn)),
    median(rows.map((row) => row.script)),
  ];
  const yardstick = await page.evaluate(() => {
    const start = performance.now();
    let x = 0;
    for (let i = 0; i < 2e7; i++) x = x * 0.999 + i;
    return x === 0 ? 0 : performance.now() - start;
  });
  console.log(
    `change to redraw, medians of ${rows.length}: average sky ${average.toFixed(1)} ms, drawn band ${drawn.toFixed(1)} ms; ` +
      `scripting on the page for both ${script.toFixed(1)} ms; a loop of 20 million steps takes ${yardstick.toFixed(1)} ms here`,
  );
  expect(rows.every((row) => row.average > 0 && row.average <= row.drawn)).toBe(true);
  await close();
});

it("stays free while the worker works: the page answers a frame in good time during a search for sizes", async () => {
  const { page, close } = await openPage(here);
  await answered(page);
  await page.getByRole("button", { name: /^Find what lasts/ }).click();
  const frames = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        let count = 0;
        const start = performance.now();
        const frame = () => (performance.now() - start > 1000 ? done(count) : (count++, requestAnimationFrame(frame)));
        requestAnimationFrame(frame);
      }),
  );
  console.log(`frames in a second while sizes are searched for: ${frames}`);
  expect(frames).toBeGreaterThan(3);
  await close();
});
