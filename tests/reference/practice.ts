import { bankModel, shownCharge } from "../../packages/sim/src/bank/index.ts";
import { explain } from "../../packages/sim/src/answers/explain.ts";
import { climateOf, findPlace } from "../../packages/catalogue/src/places/index.ts";
import { newFound, newLedger, run } from "../../packages/sim/src/stay/index.ts";
import type { Bank, ChemistryId, Load, Setup, Study, Trip } from "../../packages/sim/src/study.ts";
import { familyFridge, threeWay } from "../fixtures/loads.ts";
import { lithium, openCamp, ordinaryLoads, setup, study, tiredAgm, twoAgm } from "../fixtures/stays.ts";
import type { Check } from "./compare.ts";
import { onCharger } from "./stayAlone.ts";

/*
 * What people of the trade would hold the whole to. Common practice, no source: ranges, given as their middle and half their
 * width, for ordinary jobs at real places in the tropics, through the answer that a customer gets.
 */

const source = "what the trade expects";
const standing = "common practice, no source";
const skies = { seed: 1, draws: 100 };

const between = (id: string, quantity: string, unit: string, low: number, high: number, got: () => number): Check => ({
  id,
  quantity,
  unit,
  source,
  standing,
  expected: (low + high) / 2,
  tolerance: { abs: (high - low) / 2 },
  got,
});

const hotPlaces = ["au-townsville", "au-mount-isa", "au-port-hedland"] as const;
const hot: Trip = { ...openCamp, month: 1 };
/** Trees from noon on. */
const partShade: Trip = { ...hot, shade: [{ from: 12, to: 18, lost: 0.5 }] };
/** Half a kilowatt-hour or so besides the fridge. */
const family: readonly Load[] = [familyFridge, ...ordinaryLoads];

const jobAt = (place: string, trip: Trip, one: Setup): Study => study([one], trip, climateOf(findPlace(place)!));
const horizon_days = 60;

/** Median days; the horizon where it does not run down. */
function median(place: string, trip: Trip, bank: Bank, watts: number): number {
  const answer = explain(jobAt(place, trip, setup(bank, watts, family)), { skies, horizon_days, without: false });
  return answer.setups[0]!.days.drawn.p50 ?? horizon_days;
}

const days: readonly Check[] = hotPlaces.flatMap((place) => [
  between(`${place}, 250 W, part shade`, "two AGMs with a family fridge, hot and in part shade", "days", 2.2, 4.5, () =>
    median(place, partShade, twoAgm, 250),
  ),
  between(`${place}, 300 W, part shade`, "two AGMs with a family fridge, hot and in part shade", "days", 2.2, 4.5, () =>
    median(place, partShade, twoAgm, 300),
  ),
  between(`${place}, 250 W, tired, open`, "the same, tired or in part shade", "days", 1, 3.5, () =>
    median(place, hot, tiredAgm, 250),
  ),
  between(`${place}, 400 W, open`, "200 Ah of lithium with 400 W carries it", "days", 14, 60, () =>
    median(place, hot, lithium, 400),
  ),
]);

const step_h = 0.1;

/** Hours on a charger from one shown charge to another, in steps of six minutes. */
function hoursOnCharger(bank: Bank, amps: number, from: number, to: number): number {
  const hours = 24;
  const model = bankModel(bank, 25, step_h);
  const held_Ah = new Float64Array(hours / step_h + 1);
  run(onCharger(model, hours, from, amps), newFound(), { held_Ah });
  const reached = held_Ah.findIndex((held) => shownCharge(model, held) >= to);
  return reached < 0 ? hours : reached * step_h;
}

/** Share of what a charger puts into a bank, from half on, that does not stay in it. */
function lostOnCharger(bank: Bank): number {
  const ledger = newLedger(12);
  run(onCharger(bankModel(bank, 25), ledger.hours, 0.5, 40), newFound(), { ledger });
  const sum = (column: Float64Array): number => column.reduce((total, each) => total + each, 0);
  return sum(ledger.chargeLoss_Wh) / sum(ledger.bankIn_Wh);
}

/** Amp-hours put back, for each taken out, to bring a bank from half to full: one over the efficiency, along the way. */
function putBack(chemistry: ChemistryId): number {
  const { efficiency } = bankModel({ ...twoAgm, chemistry }, 25);
  const pieces = 1000;
  let sum = 0;
  for (let i = 0; i < pieces; i++) sum += 1 / efficiency.at(0.5 + (0.5 * (i + 0.5)) / pieces) / pieces;
  return sum;
}

const charging: readonly Check[] = [
  between("flooded, half to full", "amp-hours put back for each taken out", "1", 1.1, 1.2, () => putBack("flooded")),
  between("AGM, half to full", "amp-hours put back for each taken out", "1", 1.03, 1.1, () => putBack("agm")),
  between("lithium, half to full", "amp-hours put back for each taken out", "1", 1, 1.02, () => putBack("lfp")),
  between("AGM", "share lost in charging from half", "1", 0.1, 0.25, () => lostOnCharger(twoAgm)),
  between("lithium", "share lost in charging from half", "1", 0.005, 0.05, () => lostOnCharger(lithium)),
  between("AGM over lithium, 60 A", "hours on charge from half to 98 %, times that of lithium", "1", 1.5, 3, () => {
    const slow_h = hoursOnCharger(twoAgm, 60, 0.5, 0.98);
    return slow_h / hoursOnCharger(lithium, 60, 0.5, 0.98);
  }),
  between("AGM, 60 A to 80 A", "what a charger a third larger saves, from 70 % to full", "min", 0, 30, () => {
    const hours = (amps: number): number => hoursOnCharger(twoAgm, amps, 0.7, 0.99);
    return 60 * (hours(60) - hours(80));
  }),
];

/** On 12 V while camped, its element never off, in the dark of a night. */
const threeWayOn12V: Load = { ...threeWay, burns: "dc", element_dc_W: 170 };
const elements: readonly Check[] = [
  between("two AGMs, full, 170 W", "a three-way fridge left on 12 V empties the bank", "h", 5, 15, () => {
    const one = setup(twoAgm, 0, [threeWayOn12V]);
    return 24 * explain(jobAt("au-townsville", hot, one), { skies, without: false }).setups[0]!.days.dark!;
  }),
];

export const checks: readonly Check[] = [...days, ...charging, ...elements];
