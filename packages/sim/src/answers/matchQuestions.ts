import { compressorNumbers } from "../loads/compressorCop.ts";
import type { Load, Setup } from "../study.ts";
import type { MatchExplanation } from "./matchTypes.ts";

/** One thing that may be other than stated: the values tried, evenly spread (chosen), and how to put one in. */
export interface Question {
  readonly id: MatchExplanation["id"];
  readonly name: string;
  readonly unit: string;
  readonly values: readonly number[];
  readonly stated: (setup: Setup) => number;
  /** leaves arrays and solar charger as they are, so that the sun is worked out once */
  readonly putIn: (setup: Setup, value: number) => Setup;
  /** share of the sun's output that the value leaves */
  readonly keeps: (value: number) => number;
}

const spread = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((i + 0.5) * (to - from)) / count);

const questions: readonly Question[] = [
  {
    id: "condition",
    name: "the bank's real condition",
    unit: "of rated capacity",
    values: spread(0.2, 1, 40),
    stated: ({ bank }) => bank.condition,
    putIn: (setup, condition) => ({ ...setup, bank: { ...setup.bank, condition } }),
    keeps: () => 1,
  },
  {
    id: "fridge",
    name: "the fridge's real consumption",
    unit: "times rated",
    values: spread(0.5, 2.5, 40),
    stated: () => 1,
    putIn: (setup, times) => ({ ...setup, loads: setup.loads.map((load) => thirstier(load, times)) }),
    keeps: () => 1,
  },
  {
    id: "shade",
    name: "shade or dirt on the panels",
    unit: "of the sun lost",
    values: spread(0, 1, 40),
    stated: () => 0,
    putIn: (setup) => setup,
    keeps: (lost) => 1 - lost,
  },
];

/** Hardly more than the controls of a fridge take by themselves. */
const least_Wh_day = 1.01 * 24 * compressorNumbers.controls_W;

/** A compressor fridge that takes so many times its rating, and whose compressor can. */
function thirstier(load: Load, times: number): Load {
  if (load.kind !== "compressor-fridge") return load;
  const rated_Wh_day = Math.max(least_Wh_day, load.rated_Wh_day * times);
  return { ...load, rated_Wh_day, compressor_W: Math.max(load.compressor_W, (rated_Wh_day / 24) * 1.05) };
}

/** What can be asked of a setup: no fridge without a compressor fridge, no shade without panels that charge. */
export const questionsFor = ({ loads, arrays, solarCharger }: Setup): Question[] =>
  questions.filter(({ id }) => {
    if (id === "fridge") return loads.some(({ kind }) => kind === "compressor-fridge");
    return id !== "shade" || (solarCharger !== null && arrays.some(({ watts }) => watts > 0));
  });
