import { describe, expect, it } from "vitest";
import { upgrades } from "../../../../packages/sim/src/answers/upgrades.ts";
import { sayUpgrades } from "../../../../packages/sim/src/answers/upgradesSaid.ts";
import { lithium, setup, study, tiredAgm, twoAgm } from "../../../fixtures/stays.ts";

const skies = { seed: 1, draws: 40 };
const ask = (from: ReturnType<typeof setup>, to: ReturnType<typeof setup>) =>
  upgrades(study([]), from, { ...to, id: "to" }, skies);

describe("upgrades", () => {
  it("says what each change does alone, all together, and whose the gain is", () => {
    const answer = ask(setup(twoAgm, 200), setup(lithium, 300));
    expect(answer.changes.map(({ id }) => id)).toEqual(["bank", "panels"]);
    expect(answer.measure).toBe("days");
    expect(answer.said).toMatch(
      /^As it is: [\d.]+ days\. Bank: 200 Ah AGM to 200 Ah lithium iron phosphate alone: [\d.]+ days; panels: 200 W to 300 W alone: [\d.]+ days\. All together: [\d.]+ days\. Of the [\d.]+ days gained, [\d.]+ are owed to the bank and [\d.]+ to the panels \(fair shares\)\.$/,
    );
  });

  it("shows that with hardly any panel a bigger bank only puts the end off", () => {
    const { days } = ask(setup(tiredAgm, 50), setup({ ...twoAgm, capacity_Ah: 300 }, 600));
    expect(days.alone[0]!).toBeLessThan(5);
    expect(days.alone[1]!).toBeGreaterThan(2 * days.alone[0]!);
  });

  it("tells setups apart on dull trips where both outlast the horizon on a middling one", () => {
    const answer = ask(setup(twoAgm, 600), setup(lithium, 600));
    expect(answer.days).toMatchObject({ before: 60, after: 60 });
    expect(answer.measure).toBe("dullDays");
    expect(answer.dullDays.after).toBeGreaterThan(answer.dullDays.before);
    expect(answer.said).toContain("On a middling trip both outlast 60 days; on the dullest tenth of trips they do not");
  });

  it("says so where nothing that it works out tells them apart", () => {
    const answer = ask(setup({ ...lithium, capacity_Ah: 400 }, 1500), setup({ ...lithium, capacity_Ah: 600 }, 1500));
    expect(answer.measure).toBe("chance");
    expect(answer.said).toBe(
      "Both outlast 60 days parked, and last on 100 of 100 trips as described: what is worked out here does not tell them apart.",
    );
    expect(ask(setup(twoAgm, 100), setup(twoAgm, 100)).said).toBe("The two setups do not differ.");
  });

  it("shares out no gain whose every part is too small to tell", () => {
    const changes = [
      { id: "bank", text: "bank" },
      { id: "panels", text: "panels" },
    ] as const;
    const small = { before: 2, after: 2.06, alone: [2.03, 2.03], shares: [0.03, 0.03] };
    expect(sayUpgrades(changes, { days: small, dullDays: small, chance: small }, 60)).toBe(
      "As it is: 2 days. Bank alone: 2 days; panels alone: 2 days. All together: 2.1 days.",
    );
  });
});
