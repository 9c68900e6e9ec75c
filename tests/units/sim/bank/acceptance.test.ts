import { describe, expect, it } from "vitest";
import { acceptance_A, stored_A } from "../../../../packages/sim/src/bank/acceptance.ts";
import { bankModel } from "../../../../packages/sim/src/bank/bankModel.ts";
import { chemistries } from "../../../../packages/sim/src/bank/chemistries.ts";
import { lithium } from "../../../fixtures/stays.ts";

describe("lithium's last limit", () => {
  const model = bankModel(lithium, 25);
  const { from, end_C } = chemistries.lfp.endTaper!;
  const half_Ah = model.full_Ah / 2;
  const taken_A = (charge: number) => acceptance_A(model, half_Ah, charge);

  it("falls in a straight line from the bulk limit to its end at full", () => {
    expect(taken_A(from)).toBeCloseTo(model.bulk_A, 9);
    expect(taken_A((from + 1) / 2)).toBeCloseTo((model.bulk_A + end_C * lithium.capacity_Ah) / 2, 9);
    expect(taken_A(1)).toBeCloseTo(end_C * lithium.capacity_Ah, 9);
  });
  it.each([1.001, 1.01, 1.05, 2])("stands at its end at a charge of %d, past full", (charge) => {
    expect(taken_A(charge)).toBe(taken_A(1));
    expect(stored_A(model, half_Ah, charge, 1e6)).toBe(stored_A(model, half_Ah, 1, 1e6));
  });
});
