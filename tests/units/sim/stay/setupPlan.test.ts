import { describe, expect, it } from "vitest";
import { planSetup, planStay } from "../../../../packages/sim/src/stay/index.ts";
import type { Bank, Climate } from "../../../../packages/sim/src/study.ts";
import { dryTropics, openCamp, setup, twoAgm } from "../../../fixtures/stays.ts";

/** The same all day and all year. */
const steady: Climate = { ...dryTropics, tmax_C: Array<number>(12).fill(20), tmin_C: Array<number>(12).fill(20) };

function planned(bank: Bank) {
  return planSetup(planStay(steady, openCamp, 6), setup(bank, 0)).bank;
}

describe("a bank's temperature, with 20 °C outside", () => {
  // Chosen: 5 K over the mean outside air of the month of arrival. Capacity: VRLA class table, 0.99 at 20 °C and 1 at 25.
  it("is 25 °C inside, where all of its capacity is there", () => {
    expect(planned(twoAgm).temp_C).toBeCloseTo(25, 9);
    expect(planned(twoAgm).capacity_Ah).toBeCloseTo(200, 9);
  });
  it("is 20 °C outside, where 1 % is not", () => {
    const outside = planned({ ...twoAgm, where: "outside" });
    expect(outside.temp_C).toBeCloseTo(20, 9);
    expect(outside.capacity_Ah).toBeCloseTo(198, 9);
  });
});
