import { parseJobText, resolve } from "@stayput/job";
import { explain, type ExplainAnswer } from "@stayput/sim";
import { beforeAll, describe, expect, it } from "vitest";
import { demo } from "./helpers.ts";

const answers: Record<string, ExplainAnswer> = {};
beforeAll(async () => {
  for (const name of ["family-caravan", "bush-camper"] as const) {
    const read = parseJobText(demo(name));
    if (!read.ok) throw new Error(read.faults[0]!.message);
    const ready = await resolve(read.job);
    if (!ready.ok) throw new Error(ready.faults[0]!.message);
    answers[name] = explain(ready.study, { without: false });
  }
});
const setup = (job: string, id: string) => answers[job]!.setups.find((each) => each.id === id)!;

// The third night of a stay begun at 15:00 runs from sunset to sunrise: about day 2.15 to day 2.65.
describe("the demo jobs tell the story that they are there to tell", () => {
  it("the family caravan goes flat on the third night, under the average sky and the middling one", () => {
    const { days } = setup("family-caravan", "now");
    for (const flat of [days.average!, days.drawn.p50!]) {
      expect(flat).toBeGreaterThan(2.15);
      expect(flat).toBeLessThan(2.65);
    }
  });
  it("a bigger bank alone only puts it off; more panel, or lithium with it, lasts the trip more often than not", () => {
    expect(setup("family-caravan", "bigger-bank").days.average!).toBeGreaterThan(4);
    expect(setup("family-caravan", "bigger-bank").chanceOfLasting).toBeLessThan(0.5);
    expect(setup("family-caravan", "more-panel").chanceOfLasting).toBeGreaterThan(0.5);
    expect(setup("family-caravan", "lithium").chanceOfLasting).toBeGreaterThan(0.9);
  });
  it("the bush camper without a panel is flat within two days, and with one it is not", () => {
    expect(setup("bush-camper", "now").days.average!).toBeLessThan(2);
    expect(setup("bush-camper", "folding-panel").days.drawn.p10 ?? Infinity).toBeGreaterThan(7);
  });
});
