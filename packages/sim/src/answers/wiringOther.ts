import { hundredth } from "../numeric/hundredth.ts";
import { restedVolts_V, type BankModel } from "../bank/index.ts";
import { ampacity_A, class5Plain, pathResistance_Ohm, relayOverruns, type Laying } from "../feed/index.ts";
import { inverterRunningLoss_W } from "../loads/index.ts";
import type { CompressorFridge, Inverter, PathPiece, Setup, WireRun } from "../study.ts";
import {
  ampacityCredit,
  ampacityRows,
  inside,
  lengthOf_m,
  sizeForAmps,
  sizeForDrop,
  sizeName,
  sizeToUse,
  thinnestOf_mm2,
} from "./wiringConductor.ts";
import { fault_A, fuseAdvice } from "./wiringFuse.ts";
import { walk } from "./wiringMoments.ts";
import { inverterLow_V, lowestCharge, peakBank, underLoad, type PeakBank } from "./wiringPeaks.ts";
import type { FridgeRunAnswer, FuseAdvice, RunAnswer } from "./wiringTypes.ts";
import { amps } from "./words.ts";

/** Lengths taken where the job does not give a run, one way. Common practice, no source. [m] */
export const usualLength_m = { inverter: 1.5, solar: 5, "fridge-feed": 6 } as const;

/** Where a fridge stops if its maker's setting is not known, for each 12 V. Source: five compressor-fridge manuals. */
const fridgeStops_V = 10.4;

/** A panel's working volts for each 12 V of bank: of 36 cells at their best power. Common practice, no source. */
const panel_V = 18;

/** Wires from panels are sized a quarter above their current, for bright cloud edges. Common practice (from memory). */
const sunMargin = 1.25;

interface RunCase {
  readonly kind: WireRun["kind"];
  readonly name: string;
  readonly run: WireRun | null;
  readonly from: string;
  readonly from_V: number;
  readonly nominal_V: number;
  readonly running_A: number;
  readonly basis: string;
  readonly fuses: (ampacity_A: number | null) => FuseAdvice[];
  readonly laying: Laying;
}

/** Inverter leads, panels to charger, and each fridge's feed, as the job gives them or of a usual length. */
export function otherRuns(setup: Setup, model: BankModel): RunAnswer[] {
  const { inverter, arrays } = setup;
  const runsOf = (kind: WireRun["kind"]): (WireRun | null)[] => {
    const given = setup.runs?.filter((run) => run.kind === kind) ?? [];
    return given.length > 0 ? given : [null];
  };
  return [
    ...(inverter ? runsOf("inverter").map((run) => inverterRun(inverter, model, run)) : []),
    ...(arrays.length > 0 ? runsOf("solar").map((run) => solarRun(setup, model, run)) : []),
  ];
}

function inverterRun(inverter: Inverter, model: BankModel, run: WireRun | null): RunAnswer {
  const { nominal_V } = model.bank;
  const lowest_V = Math.max(model.cutOff_V, (inverterLow_V * nominal_V) / 12);
  const full_W = inverter.rated_W + inverter.idle_W + inverterRunningLoss_W(inverter, inverter.rated_W);
  const running_A = full_W / lowest_V;
  return builtRun({
    kind: "inverter",
    name: "Bank to inverter",
    run,
    from: "bank",
    from_V: lowest_V,
    nominal_V,
    running_A,
    basis: `${inverter.rated_W} W of load and the inverter's losses at ${lowest_V.toFixed(1)} V, the lowest it runs at`,
    fuses: (ampacity_A) => [atBank(model, running_A, ampacity_A)],
    laying: inside,
  });
}

function solarRun({ arrays, solarCharger }: Setup, model: BankModel, run: WireRun | null): RunAnswer {
  const { nominal_V } = model.bank;
  const from_V = (panel_V * nominal_V) / 12;
  const watts = arrays.reduce((sum, array) => sum + array.watts, 0);
  return builtRun({
    kind: "solar",
    name: "Panels to solar charger",
    run,
    from: "panels",
    from_V,
    nominal_V: from_V,
    running_A: (sunMargin * watts) / from_V,
    basis: `${watts} W at ${from_V} V, all panels in parallel, a quarter over for bright cloud edges; in series less`,
    fuses: () => (solarCharger ? [atBank(model, solarCharger.rated_A, null, "the bank, from the solar charger")] : []),
    laying: inside,
  });
}

const atBank = (model: BankModel, running_A: number, ampacity_A: number | null, end = "the bank"): FuseAdvice =>
  fuseAdvice({
    end,
    running_A,
    ampacity_A,
    fault_A: fault_A(restedVolts_V(model, 1), model.resistance_Ohm),
    nominal_V: model.bank.nominal_V,
  });

/** A branch stands behind the bank's main fuse, which is the one to open a dead short. */
const atFuseBlock = ({ bank: { nominal_V } }: BankModel, running_A: number, ampacity_A: number | null): FuseAdvice =>
  fuseAdvice({ end: "the fuse block, behind the main fuse", running_A, ampacity_A, fault_A: null, nominal_V });

/** A run of a usual length, for sizing where the job gives none. */
const usualPath = (kind: WireRun["kind"]): PathPiece[] => [
  {
    kind: "cable",
    length_m: usualLength_m[kind],
    area_mm2: class5Plain.rows[0]!.area_mm2,
    conductorClass: 5,
    temp_C: 40,
  },
];

function builtRun(given: RunCase): RunAnswer {
  const { run, from, from_V, nominal_V, running_A, laying } = given;
  const path = run?.path ?? usualPath(given.kind);
  const points = run ? walk(from, run.path, from_V, running_A) : [];
  const drop_V = run ? from_V - points.at(-1)!.volts_V : null;
  const three = sizeForDrop("3 % drop", path, running_A, 0.03 * nominal_V);
  const carries = sizeForAmps(running_A, laying);
  const thinnest_mm2 = run ? thinnestOf_mm2(run.path) : null;
  const sizes = [three, sizeForDrop("5 % drop", path, running_A, 0.05 * nominal_V), carries];
  const use = sizeToUse(sizes);
  const conductor_mm2 = thinnest_mm2 ?? use.standard_mm2;
  const answer = {
    kind: given.kind,
    name: run?.name ?? given.name,
    given: run !== null,
    length_m: lengthOf_m(path),
    thinnest_mm2,
    running_A,
    basis: given.basis,
    points,
    drop_V,
    dropShare: drop_V === null ? null : drop_V / nominal_V,
    sizes,
    use,
    overruns: relayOverruns(run?.path ?? [], running_A),
    fuses: given.fuses(conductor_mm2 === null ? null : ampacity_A(conductor_mm2, laying)),
    ampacity: ampacityRows(conductor_mm2),
    ampacityTable: ampacityCredit,
  };
  return { ...answer, sentences: runSentences(answer) };
}

function runSentences(run: Omit<RunAnswer, "sentences">): string[] {
  const drops =
    run.drop_V === null ? "" : `, losing ${run.drop_V.toFixed(2)} V (${(100 * run.dropShare!).toFixed(1)} %)`;
  const length_m = hundredth(run.length_m);
  const length = run.given ? `${length_m} m` : `${length_m} m (a usual length; the job gives none)`;
  return [
    `${run.name}: ${amps(run.running_A)} over ${length}${drops}. It rests on ${run.basis}.`,
    `Conductor for 3 %: ${sizeName(run.use!)}; for 5 %: ${sizeName(run.sizes[1]!)}.`,
    ...run.fuses.map(({ sentence }) => sentence),
  ];
}

/** Each compressor fridge on dc, at the end of its feed. */
export function fridgeRuns(setup: Setup, model: BankModel): FridgeRunAnswer[] {
  return setup.loads
    .filter((load) => load.kind === "compressor-fridge" && load.supply === "dc")
    .map((fridge) => fridgeRun(fridge as CompressorFridge, setup, model));
}

/**
 * The volts at a fridge at its running current, which is what its cut-out sees, and not at its mean current.
 * From a rested bank with nothing else on: kinder than life.
 */
function fridgeRun(fridge: CompressorFridge, setup: Setup, model: BankModel): FridgeRunAnswer {
  const run = setup.runs?.find((one) => one.kind === "fridge-feed" && (one.load ?? fridge.id) === fridge.id) ?? null;
  const bank = peakBank(model);
  const cutOut_V = fridge.cutOut_V ?? (fridgeStops_V * bank.nominal_V) / 12;
  const half = atFridge(fridge, bank, run ? pathResistance_Ohm(run.path) : 0, 0.5);
  const built = builtRun({
    kind: "fridge-feed",
    name: `Feed of ${fridge.name}`,
    run,
    from: "bank",
    from_V: bank.rested_V(0.5) - half.draw_A * bank.resistance_Ohm(0.5),
    nominal_V: bank.nominal_V,
    running_A: half.draw_A,
    basis: `${fridge.compressor_W} W running, the bank half charged`,
    fuses: (ampacity_A) => [atFuseBlock(model, half.draw_A, ampacity_A)],
    laying: inside,
  });
  const stops = fridgeStops(fridge, bank, cutOut_V, run);
  const answer = {
    ...built,
    kind: "fridge-feed" as const,
    load: fridge.id,
    cutOut_V,
    atFridge_V: run ? half.volts_V : null,
    ...stops,
  };
  return { ...answer, sentences: [...built.sentences, ...fridgeSentences(answer, fridge)] };
}

const atFridge = (fridge: CompressorFridge, bank: PeakBank, feed_Ohm: number, charge: number) =>
  underLoad(bank.rested_V(charge), bank.resistance_Ohm(charge) + feed_Ohm, fridge.compressor_W);

/** A feed is called the cause where it stops the fridge this much charge sooner than bank or fridge would (chosen). */
const clearlySooner = 0.1;

function fridgeStops(fridge: CompressorFridge, bank: PeakBank, cutOut_V: number, run: WireRun | null) {
  const runsFrom = (feed_Ohm: number) =>
    lowestCharge((charge) => {
      const { volts_V, carried } = atFridge(fridge, bank, feed_Ohm, charge);
      return carried && volts_V >= cutOut_V;
    });
  const bankDropsBelow =
    lowestCharge((charge) => {
      const { volts_V } = atFridge(fridge, bank, 0, charge);
      return volts_V >= bank.cutOff_V;
    }) ?? 0;
  const stopsBelow = run ? runsFrom(pathResistance_Ohm(run.path)) : null;
  const stopsBelowWithoutFeed = runsFrom(0);
  const otherwise = Math.max(bankDropsBelow, stopsBelowWithoutFeed ?? 0);
  const feedIsTheCause = stopsBelow !== null && stopsBelow > otherwise + clearlySooner;
  return { stopsBelow, stopsBelowWithoutFeed, bankDropsBelow, feedIsTheCause };
}

const pct = (share: number): string => `${Math.round(share * 100)} %`;

function fridgeSentences(answer: Omit<FridgeRunAnswer, "sentences">, { name }: CompressorFridge): string[] {
  const { atFridge_V, cutOut_V, stopsBelow, bankDropsBelow, stopsBelowWithoutFeed, feedIsTheCause } = answer;
  if (atFridge_V === null)
    return [`${name} stops at ${cutOut_V.toFixed(1)} V at its own terminals: measure there, with it running.`];
  const at = `At ${name}, running, bank half charged: ${atFridge_V.toFixed(2)} V against a cut-out of ${cutOut_V.toFixed(1)} V.`;
  if (!feedIsTheCause) return [at];
  const better = Math.max(bankDropsBelow, stopsBelowWithoutFeed ?? 0);
  const when = stopsBelow! >= 1 ? "even with the bank full" : `below ${pct(stopsBelow!)} charge`;
  const could =
    better > 0.005
      ? `the bank itself would carry it down to ${pct(better)}`
      : "the bank itself would carry it to the end";
  return [at, `${name} trips ${when} on the drop in its own feed; ${could}.`];
}
