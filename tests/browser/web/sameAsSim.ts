import { chanceInWords, sayChance, sayDays, sayWh } from "@stayput/charts";
import { parseJob, resolve } from "@stayput/job";
import { words } from "@stayput/job/quantities";
import { explain, type ExplainAnswer } from "@stayput/sim";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { answered, jobOf } from "./openPage.ts";

/** What the library answers for a job as typed. */
export async function simOf(typed: unknown): Promise<ExplainAnswer> {
  const parsed = parseJob(typed, { words });
  if (!parsed.ok) throw new Error(parsed.faults.map(({ message }) => message).join("\n"));
  const resolved = await resolve(parsed.job);
  if (!resolved.ok) throw new Error("no such place");
  return explain(resolved.study);
}

/** One row of the options table, a cell a setup. */
const cells = (page: Page, row: string): Promise<string[]> =>
  page.locator(`row-options tr:has(th[scope="row"]:text-is("${row}")) td`).allTextContents();

const plain = (texts: readonly string[]): string[] => texts.map((text) => text.replaceAll("\u00a0", " ").trim());

/** Waits for the answer, and holds every figure of the options and the sentence against the library's for the same job. */
export async function expectSameAsSim(page: Page): Promise<ExplainAnswer> {
  await answered(page);
  const answer = await simOf(await jobOf(page));
  const { setups, horizon_days, nights } = answer;
  const row = async (name: string, of: (setup: (typeof setups)[number]) => string) =>
    expect(plain(await cells(page, name)), name).toEqual(plain(setups.map(of)));
  await row("Days, median", ({ days }) => sayDays(days.drawn.p50, horizon_days, "en-GB"));
  await row("No sun at all", ({ days }) => sayDays(days.dark, horizon_days, "en-GB"));
  await row(`Chance of ${nights === 1 ? "the night" : `${nights} nights`}`, (setup) =>
    sayChance(setup.chanceOfLasting, "en-GB"),
  );
  await row("Uses", ({ use_Wh_day }) => `${sayWh(use_Wh_day.total, "en-GB")} a day`);
  const sentence = plain([await page.locator("the-bench .sentence").innerText()])[0]!;
  expect(sentence).toContain(setups[0]!.name);
  expect(sentence).toContain(chanceInWords(setups[0]!.chanceOfLasting, "en-GB"));
  if (setups[0]!.days.drawn.p50 !== null) {
    expect(sentence).toContain(plain([sayDays(setups[0]!.days.drawn.p50, horizon_days, "en-GB")])[0]!);
  }
  return answer;
}
