import { bankModel, chargeWhenShown_Ah } from "../bank/bankModel.ts";
import { mustLie } from "../numeric/must.ts";
import { newFound, run, together, type SetupPlan } from "../stay/index.ts";

/** Hours of driving, without sun, from the reserve to a shown charge; null where two days of driving do not reach it. */
export interface RefillHours {
  readonly to80: number | null;
  /** to 99 % shown: the last hundredth takes as long as one cares to wait */
  readonly toFull: number | null;
}

/** Hours of driving looked at, and the step that they are looked at by. */
const longest_h = 48;
const step_h = 0.1;

/** Charge counted as full. */
const full = 0.99;

/**
 * What the vehicle alone puts back: driving from the reserve on, the loads of a drive running, the sun left out.
 * Both null where nothing feeds the bank.
 */
export function refillHours({ plan, setup, demands, bank, feed }: SetupPlan): RefillHours {
  if (feed === null) return { to80: null, toFull: null };
  const hours = Math.min(longest_h, plan.hours);
  const shown = new Float32Array(hours / step_h + 1);
  const ones = new Float64Array(hours).fill(1);
  const none = new Float64Array(hours);
  const driving = together(plan, demands, setup.inverter, "driving");
  const model = bankModel(setup.bank, bank.temp_C, step_h);
  run(
    {
      bank: model,
      hours,
      startCharge: Math.max(0, chargeWhenShown_Ah(model, model.reserve) / model.full_Ah),
      load_W: driving.load_W,
      element_W: driving.element_W,
      sun: none,
      sunTracks: true,
      sunMost_A: 0,
      kept: ones,
      mixed: {
        parked: none,
        driving: ones,
        mains: none,
        drivingLoad_W: driving.load_W,
        drivingElement_W: driving.element_W,
        mainsLoad_W: none,
        mainsElement_W: null,
        feed,
        mainsMost_A: 0,
      },
    },
    newFound(),
    { shown },
  );
  return { to80: firstReach_h(shown, 0.8), toFull: firstReach_h(shown, full) };
}

function firstReach_h(shown: Float32Array, level: number): number | null {
  mustLie("level", level, 0, 1);
  const i = shown.findIndex((value) => value >= level);
  if (i < 0) return null;
  if (i === 0) return 0;
  const before = shown[i - 1]!;
  return (i - 1 + (level - before) / (shown[i]! - before)) * step_h;
}
