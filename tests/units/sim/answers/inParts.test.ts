import { describe, expect, it } from "vitest";
import { chanceGridInParts } from "../../../../packages/sim/src/answers/chanceGrid.ts";
import { compareInParts } from "../../../../packages/sim/src/answers/compare.ts";
import { explainInParts } from "../../../../packages/sim/src/answers/explain.ts";
import { atOnce, watched, type InParts } from "../../../../packages/sim/src/answers/inParts.ts";
import { matchInParts } from "../../../../packages/sim/src/answers/match.ts";
import { roundTheYearInParts } from "../../../../packages/sim/src/answers/roundTheYear.ts";
import { sizeInParts } from "../../../../packages/sim/src/answers/size.ts";
import { upgradesInParts } from "../../../../packages/sim/src/answers/upgrades.ts";
import { request } from "../../../fixtures/sizing.ts";
import { dryTropics, lithium, setup, study, twoAgm } from "../../../fixtures/stays.ts";

const skies = { seed: 1, draws: 20 };
const [now, next] = [setup(twoAgm, 200), { ...setup(lithium, 300), id: "next" }];
const job = study([now, next]);
const seen = [{ flatOnMorning: 3, month: 6, day: 1, climate: dryTropics }];

const long: readonly (readonly [string, () => InParts<unknown>])[] = [
  ["explain", () => explainInParts(job, { skies, horizon_days: 20 })],
  ["compare", () => compareInParts(job, { skies, horizon_days: 20 })],
  ["size", () => sizeInParts(job, now, request(), skies)],
  ["chanceGrid", () => chanceGridInParts(job, now, request(), skies)],
  ["roundTheYear", () => roundTheYearInParts(job, skies, 10)],
  ["upgrades", () => upgradesInParts(job, now, next, skies)],
  ["match", () => matchInParts(job, now, seen, skies)],
];

describe("long answers in parts", () => {
  it.each(long)("%s: progress rises from 0 to 1, and the whole is the same as at once", async (_, ask) => {
    const progress: number[] = [];
    const whole = await watched(ask(), { onPart: (part) => progress.push(part.progress) });
    expect(whole).toEqual(atOnce(ask()));
    expect(progress.length).toBeGreaterThan(1);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
    expect(progress[0]).toBeGreaterThanOrEqual(0);
    expect(progress.at(-1)).toBeLessThanOrEqual(1);
    expect(progress.at(-1)).toBeGreaterThan(0.9);
  });

  it.each(long)("%s: stops between parts when it is aborted, with the signal's reason", async (_, ask) => {
    const stop = new AbortController();
    const reason = new Error("enough");
    let parts = 0;
    const onPart = () => {
      parts++;
      stop.abort(reason);
    };
    await expect(watched(ask(), { signal: stop.signal, onPart })).rejects.toBe(reason);
    expect(parts).toBe(1);
  });

  it("lets the host in between parts", async () => {
    let pauses = 0;
    const pause = () => {
      pauses++;
      return Promise.resolve();
    };
    await watched(compareInParts(job, { skies, horizon_days: 10 }), { pause });
    expect(pauses).toBe(2);
  });

  it("does not begin where it is aborted beforehand", async () => {
    const ask = sizeInParts(job, now, request(), skies);
    await expect(watched(ask, { signal: AbortSignal.abort() })).rejects.toThrow();
    expect(ask.next().value).toMatchObject({ progress: 0.4 / 3 });
  });
});
