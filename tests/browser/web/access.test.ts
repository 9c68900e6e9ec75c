import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { answered, jobOf, openPage, type } from "./openPage.ts";
import { served } from "./served.ts";

const here = served();
let axe: string;

beforeAll(async () => {
  axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
});

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** Every finding, as one line each: the rule and where. */
async function findings(page: Page): Promise<string[]> {
  // evaluated by the test's own channel, which the page's policy does not bar
  await page.evaluate(axe);
  const { violations } = await page.evaluate(
    (values) =>
      (window as unknown as { axe: { run: (...a: unknown[]) => Promise<AxeResults> } }).axe.run(document, {
        runOnly: { type: "tag", values },
      }),
    rules,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")}: ${failureSummary ?? ""}`),
  );
}

const openAll = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });

const views: readonly { view: string; prepare: (page: Page) => Promise<void> }[] = [
  {
    view: "the demo job",
    prepare: async (page) => {
      await answered(page);
    },
  },
  {
    view: "the demo job with everything opened and sizes found",
    prepare: async (page) => {
      await answered(page);
      await openAll(page);
      await page.getByRole("button", { name: /^Find what lasts/ }).click();
      await page.locator("the-bench table.points").waitFor({ timeout: 60_000 });
    },
  },
  {
    view: "an empty sheet with places found",
    prepare: async (page) => {
      await page.getByRole("button", { name: "Start an empty sheet" }).click();
      await page.getByRole("combobox", { name: "Place" }).fill("south");
      await page.getByRole("option").first().waitFor();
    },
  },
  {
    view: "a faulty blank",
    prepare: async (page) => {
      await answered(page);
      await type(page, "setups[0].bank.capacity_Ah", "lots");
      await answered(page, "faults");
      await page.locator(".faults").waitFor();
    },
  },
];

describe.each(["light", "dark"] as const)("in the %s", (colorScheme) => {
  it.each(views)("axe finds nothing at WCAG 2.2 AA on $view", async ({ prepare }) => {
    const { page, close } = await openPage(here, { colorScheme });
    await prepare(page);
    expect(await findings(page)).toEqual([]);
    await close();
  });

  it("nor on a phone", async () => {
    const { page, close } = await openPage(here, { colorScheme, viewport: { width: 390, height: 844 } });
    await answered(page);
    expect(await findings(page)).toEqual([]);
    await close();
  });
});

describe("the width of the page", () => {
  it.each([320, 360, 390, 768, 1280, 1920])(
    "holds everything at %i px, with no sideways scroll of the page",
    async (width) => {
      const { page, close } = await openPage(here, { viewport: { width, height: 900 } });
      await answered(page);
      await openAll(page);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBeLessThanOrEqual(0);
      await close();
    },
  );

  it("keeps the short answer on a phone's top edge, however far down one is", async () => {
    const { page, close } = await openPage(here, { viewport: { width: 390, height: 844 } });
    await answered(page);
    await page.locator("row-fitted").scrollIntoViewIfNeeded();
    const box = (await page.locator(".pinned").boundingBox())!;
    expect(box.y).toBeGreaterThanOrEqual(-1);
    expect(box.y).toBeLessThanOrEqual(1);
    await close();
  });

  it.each([320, 390])("says the days of every setup there, none cut off, at %i px", async (width) => {
    const { page, close } = await openPage(here, { viewport: { width, height: 844 } });
    await answered(page);
    const setups = (await jobOf(page)).setups.length;
    expect(await page.locator(".pinned span").count()).toBe(setups);
    const cut = await page.locator(".pinned span").evaluateAll(
      (spans, edge) =>
        spans.filter((span) => {
          const days = document.createRange();
          days.selectNode(span.lastChild!);
          return span.scrollWidth > span.clientWidth || days.getBoundingClientRect().right > edge;
        }).length,
      width,
    );
    expect(cut).toBe(0);
    expect(await page.locator(".pinned").innerText()).toMatch(/\d\sdays/);
    await close();
  });
});

it("draws the bars of the strip where the reader's own colours hold", async () => {
  const { page, close } = await openPage(here, { forcedColors: "active" });
  await answered(page);
  const colours = await page
    .locator("day-strip .bar")
    .first()
    .evaluate((bar) => [
      getComputedStyle(bar, "::before").backgroundColor,
      getComputedStyle(document.body).backgroundColor,
    ]);
  expect(colours[0]).not.toBe(colours[1]);
  await close();
});

it("gives every control of the sheet a target of 44 px, or 24 px where a mouse is used", async () => {
  const { page, close } = await openPage(here, {
    hasTouch: true,
    isMobile: true,
    viewport: { width: 390, height: 844 },
  });
  await answered(page);
  const small = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        "button, summary, select, .track, .blank input, .blank textarea, label.tick, .ways label",
      ),
    ]
      .filter((each) => each.checkVisibility())
      .map((each) => ({
        text: `${each.tagName} ${each.className} ${each.textContent.trim().slice(0, 30)}`,
        height: each.getBoundingClientRect().height,
      }))
      .filter(({ height }) => height < 41.9),
  );
  expect(small.filter(({ text }) => !text.startsWith("BUTTON link"))).toEqual([]);
  await close();
});
