import { describe, expect, it } from "vitest";
import { demandOf, planStay } from "../../../../packages/sim/src/stay/index.ts";
import type { Load } from "../../../../packages/sim/src/study.ts";
import { familyFridge, inverter, lamp, threeWay } from "../../../fixtures/loads.ts";
import { dryTropics, openCamp } from "../../../fixtures/stays.ts";

const plan = () => planStay(dryTropics, openCamp, 6);
const kettle: Load = { ...lamp, id: "kettle", supply: "ac", watts: 1000 };
const small = { ...inverter, rated_W: 500, idle_W: 6 };

describe("a load's demand", () => {
  it.each([lamp, familyFridge])("is worked out once for all setups that run it off the bank itself: $name", (load) => {
    const stay = plan();
    expect(demandOf(stay, load, inverter, 12)).toBe(demandOf(stay, load, null, 12));
  });
  it("is worked out anew for another inverter, none, other volts, another load alike or another stay", () => {
    const stay = plan();
    const asked = [inverter, small, null, inverter].map((one) => demandOf(stay, kettle, one, 12));
    const afresh = [inverter, small, null, inverter].map((one) => demandOf(plan(), kettle, one, 12));
    expect(asked).toEqual(afresh);
    expect(asked[0]!.camped_W).not.toEqual(asked[1]!.camped_W);
    const [at12, at24] = [12, 24].map((volts) => demandOf(stay, threeWay, null, volts).camped_W[0]!);
    expect(at24).toBe(2 * at12!);
    expect(demandOf(stay, { ...lamp }, null, 12)).not.toBe(demandOf(stay, lamp, null, 12));
    expect(demandOf(plan(), lamp, null, 12)).not.toBe(demandOf(stay, lamp, null, 12));
  });
  it.each<Load>([kettle, { ...familyFridge, supply: "ac" }, { ...threeWay, burns: "ac" }])(
    "is nothing for an ac load where there is no inverter, and it cools nothing: $name",
    (load) => {
      const { camped_W, driving_W, inside_C, gas_g } = demandOf(plan(), load, null, 12);
      expect(Math.max(...camped_W, ...driving_W)).toBe(0);
      expect([inside_C, gas_g]).toEqual([null, null]);
    },
  );
});
