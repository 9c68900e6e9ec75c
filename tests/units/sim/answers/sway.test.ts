import { describe, expect, it } from "vitest";
import { explain } from "../../../../packages/sim/src/answers/explain.ts";
import { sway, swayInParts } from "../../../../packages/sim/src/answers/sway.ts";
import type { CompressorFridge } from "../../../../packages/sim/src/study.ts";
import { familyFridge } from "../../../fixtures/loads.ts";
import { openCamp, setup, shadedCamp, study, twoAgm } from "../../../fixtures/stays.ts";

const skies = { seed: 1, draws: 20 };
const camp = setup(twoAgm, 250);
const answer = sway(study([camp], shadedCamp), camp, skies);
const row = (id: string) => answer.rows.find((each) => each.id === id)!;

describe("sway", () => {
  it("turns every assumption once, the greatest change first", () => {
    const ids = answer.rows.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(
      expect.arrayContaining(["capacity", "sun", "array", "start", "bay", ...camp.loads.map(({ id }) => `load:${id}`)]),
    );
    const sizes = answer.rows.map(({ change_days }) => Math.abs(change_days));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });
  it("turns by a tenth, the charge on arrival down", () => {
    for (const { id, now, turned } of answer.rows) expect(turned / now).toBeCloseTo(id === "start" ? 0.9 : 1.1, 9);
    expect(row("capacity")).toMatchObject({ now: 200, unit: "Ah" });
  });
  it("says what `explain` says of the setup with that much more", () => {
    const median = (change: Partial<typeof camp>) =>
      explain(study([{ ...camp, ...change }], shadedCamp), { skies, without: false }).setups[0]!.days.drawn.p50;
    expect(row("capacity").p50).toBe(median({}));
    expect(row("capacity").p50Turned).toBe(median({ bank: { ...twoAgm, capacity_Ah: row("capacity").turned } }));
    const fan = camp.loads.map((load) => (load.id === "fan" ? { ...load, watts: row("load:fan").turned } : load));
    expect(row("load:fan").p50Turned).toBe(median({ loads: fan }));
  });
  it("lasts longer with more bank, sun and panels; shorter with a warmer bay, a poorer start and a hungrier fridge", () => {
    for (const id of ["capacity", "sun", "array"]) expect(row(id).change_days).toBeGreaterThan(0);
    for (const id of ["bay", "start", "load:fridge"]) expect(row(id).change_days).toBeLessThan(0);
  });
  it("leaves out what stands at nothing or is not there, and turns nothing past what is accepted", () => {
    const fullTime: CompressorFridge = { ...familyFridge, rated_Wh_day: 23.5 * familyFridge.compressor_W };
    const bare = setup(twoAgm, 0, [fullTime]);
    const { rows } = sway(study([bare], { ...openCamp, bayOffset_C: 0 }), bare, { seed: 1, draws: 2 });
    expect(rows.map(({ id }) => id).sort()).toEqual(["capacity", `load:${fullTime.id}`, "start"]);
    expect(rows.find(({ id }) => id.startsWith("load:"))!.turned).toBe(24 * fullTime.compressor_W);
    const hot = sway(study([bare], { ...openCamp, bayOffset_C: 39 }), bare, { seed: 1, draws: 2 });
    expect(hot.rows.find(({ id }) => id === "bay")!.turned).toBe(40);
  });
  it("tells its progress, never falling and never past the end", () => {
    const told = [...swayInParts(study([camp], shadedCamp), camp, skies)].map(({ progress }) => progress);
    expect(told.length).toBe(2 * (answer.rows.length + 1));
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(told.at(-1)).toBeCloseTo(1, 9);
  });
  it("refuses to go without skies", () => {
    expect(() => sway(study([camp], shadedCamp), camp, { seed: 1, draws: 0 })).toThrow(/^draws must be/);
  });
});
