import { headline, type Handover } from "@stayput/handout";
import type { SetupAnswer } from "@stayput/sim";
import { beforeAll, describe, expect, it } from "vitest";
import { demoInput, handoverOf } from "../handover.ts";

let demo: Handover;
beforeAll(async () => {
  demo = await handoverOf(demoInput("family-caravan"), 10);
});

const plain = (text: string | null): string => (text ?? "").replace(/\u00a0/g, " ");

/** The demo with some answers of its setups, in order, put in place of the simulation's; the other setups left out. */
function told(...changes: readonly Partial<SetupAnswer>[]): Handover {
  const setups = demo.explained.setups.slice(0, changes.length).map((setup, i) => ({ ...setup, ...changes[i] }));
  const study = { ...demo.study, setups: demo.study.setups.slice(0, changes.length) };
  return { ...demo, study, explained: { ...demo.explained, draws: 200, setups } };
}

const lasting = (p10: number | null, p50: number | null, p90: number | null, chanceOfLasting: number) => ({
  days: { dark: 1, average: p50, drawn: { p10, p50, p90 } },
  chanceOfLasting,
});
const fridge = {
  total: 1000,
  byLoad: [
    { id: "a", name: "Lamp", Wh_day: 180, share: 0.18 },
    { id: "b", name: "Fridge", Wh_day: 820, share: 0.82 },
  ],
};

describe("the short of it", () => {
  it("says how long, how sure and what takes most", () => {
    const { lasts, why, better } = headline(told({ ...lasting(1.84, 2.37, 2.76, 0.055), use_Wh_day: fridge }));
    expect(plain(lasts)).toBe(
      "As it came: parked at Charleville in November it lasts 2.4 days, flat in night 3 about 23:50; 1.8 to 2.8 days under eight skies in ten.",
    );
    expect(plain(why)).toBe("Of trips like this one, 6 in 100 last all 6 nights. Biggest user: Fridge, 82% of it all.");
    expect(better).toBeNull();
  });

  it("says 60 days or more where it never runs down, and no hour", () => {
    const { lasts } = headline(told(lasting(null, null, null, 1)));
    expect(plain(lasts)).toBe("As it came: parked at Charleville in November it lasts 60 days or more.");
    expect(plain(headline(told(lasting(4.8, null, null, 0.97))).lasts)).toContain(
      "lasts 60 days or more; 4.8 to 60 days or more under",
    );
  });

  it("names the proposal with the best chance, the cheaper of equals, or none", () => {
    const now = lasting(1, 2, 3, 0.1);
    const best = (...others: Partial<SetupAnswer>[]) => plain(headline(told(now, ...others)).better);
    expect(best(lasting(5, 18, 40, 0.87), lasting(13, 41, null, 0.97))).toBe(
      "The best chance has C, 200 Ah lithium, 450 W, converter: 41 days, and 97 in 100 trips last.",
    );
    expect(best(lasting(5, 18, 40, 0.9), lasting(13, 41, null, 0.9))).toContain("has B, Second panel"); // 890 against 4,350
    expect(best(lasting(1, 2, 3, 0.1))).toBe("No proposal here has a better chance.");
  });

  it("lasts nothing where nothing draws", () => {
    expect(plain(headline(told({ use_Wh_day: { total: 0, byLoad: [] } })).why)).not.toContain("Biggest");
  });
});
