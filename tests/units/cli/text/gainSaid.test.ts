import { expect, it } from "vitest";
import type { ComparedSetup, PairedGain } from "../../../../packages/sim/src/answers/compareTypes.ts";
import { gainSaid } from "../../../../apps/cli/src/text/gainSaid.ts";

const none: PairedGain = { p10_days: 0, p50_days: 0, p90_days: 0, mean_days: 0, least_days: 0, atLeast: false };
const said = (gain: Partial<PairedGain>) =>
  gainSaid({ name: "B", price: 0, gain: { ...none, ...gain } } as ComparedSetup, "A (Now)", 60, null);

it.each([
  [{}, "B: no longer than A (Now) under any sky."],
  [{ atLeast: true }, "B: no different from A (Now) in the 60 days looked at; beyond them it may be."],
  [
    { p50_days: 2.1, p90_days: 4, least_days: 0.8 },
    "B: 2.1 days more than A (Now) under the middle sky, never fewer than 0.8.",
  ],
  [
    { p50_days: -0.02, p90_days: 4, least_days: -0.03 },
    "B: 0.0 days more than A (Now) under the middle sky, never fewer than 0.0.",
  ],
])("says a gain of %j", (gain, words) => expect(said(gain)).toBe(words));
