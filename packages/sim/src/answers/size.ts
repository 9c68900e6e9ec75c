import { drawCount, type Skies } from "../stay/index.ts";
import { mustLie } from "../numeric/must.ts";
import type { Bank, ChemistryId, Setup, Study } from "../study.ts";
import { defaultSkies } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { reasonForPick, whatStandsInTheWay } from "./sizeReason.ts";
import type { ArrayChoice, BankChoice, SizeAnswer, SizeRequest, SizeStep } from "./sizeTypes.ts";
import { chanceIn, makeTrial, reaches, type Candidate, type Trial } from "./trial.ts";
import type { SizeGrid, SizePoint } from "./types.ts";

/** A chemistry's ladder within the roof, smallest first, and the trials of the asked months. */
export interface Ladder {
  readonly chemistry: ChemistryId;
  readonly banks: readonly BankChoice[];
  readonly arrays: readonly ArrayChoice[];
}

/**
 * The smallest banks and arrays that last the nights with the chance asked, in the worst of the months asked. Survival
 * grows with both, so the walk goes down the staircase between "lasts" and "does not", and tries no pair twice.
 * @param setup whose loads, feed, volts and mounting the candidates take over
 * @throws RangeError naming the field, what was given and what is accepted
 */
export const size = (study: Study, setup: Setup, request: SizeRequest, skies: Skies = defaultSkies): SizeAnswer =>
  atOnce(sizeInParts(study, setup, request, skies));

export function* sizeInParts(
  study: Study,
  setup: Setup,
  request: SizeRequest,
  skies: Skies = defaultSkies,
): InParts<SizeAnswer> {
  checkRequest(request);
  const trials: Trial[] = [];
  for (const month of request.months) {
    trials.push(makeTrial(study, setup, month, request.nights, skies));
    yield { progress: (0.3 * trials.length) / request.months.length };
  }
  const ladders = laddersOf(request);
  const staircases: { chemistry: ChemistryId; corners: SizePoint[] }[] = [];
  for (const ladder of ladders) {
    staircases.push({ chemistry: ladder.chemistry, corners: walkDown(trials, setup, ladder, request.chance) });
    yield { progress: 0.3 + (0.6 * staircases.length) / ladders.length };
  }
  const fitting = staircases
    .flatMap(({ corners }) => corners)
    .filter((point) => fits(point, request))
    .sort(byPreference);
  const pick = fitting[0] ?? null;
  const nearest = pick === null ? nearestMiss(trials, setup, ladders, request) : null;
  const steps = pick === null ? [] : stepsFrom(trials, setup, ladders, pick);
  const pairs = ladders.reduce((sum, { banks, arrays }) => sum + banks.length * arrays.length, 0);
  return {
    nights: request.nights,
    chance: request.chance,
    months: request.months,
    staircases,
    fitting,
    pick,
    reason: pick === null ? whatStandsInTheWay(request, staircases, nearest) : reasonForPick(request, pick, fitting),
    steps,
    nearest,
    bankRuns: trials.reduce((sum, trial) => sum + trial.count.runs, 0),
    gridRuns: pairs * trials.length * drawCount(skies),
  };
}

function checkRequest({ nights, chance, months, banks, arrays, chemistries }: SizeRequest): void {
  mustLie("nights", nights, 1, 60);
  mustLie("chance", chance, 0.001, 1);
  for (const month of months) mustLie("months", month, 1, 12);
  for (const [name, list] of Object.entries({ months, banks, arrays, chemistries })) {
    if (list.length === 0) throw new RangeError(`${name} must name at least one, got none`);
  }
}

export function laddersOf({ chemistries, banks, arrays, roof_W }: SizeRequest): Ladder[] {
  const onRoof = arrays.filter(({ watts }) => roof_W === null || watts <= roof_W);
  return chemistries.map((chemistry) => ({
    chemistry,
    banks: banks.filter((bank) => bank.chemistry === chemistry).sort((a, b) => a.capacity_Ah - b.capacity_Ah),
    arrays: [...onRoof].sort((a, b) => a.watts - b.watts),
  }));
}

/** A new bank of a size, where the setup's stands, at its volts. */
export const newBank = ({ bank }: Setup, chemistry: ChemistryId, capacity_Ah: number): Bank => ({
  chemistry,
  nominal_V: bank.nominal_V,
  capacity_Ah,
  condition: 1,
  where: bank.where,
  reserve: null,
  cutOff_V: null,
  absorption_V: null,
  restedVolts: null,
});

const candidateOf = (setup: Setup, bank: BankChoice, array: ArrayChoice): Candidate => ({
  bank: newBank(setup, bank.chemistry, bank.capacity_Ah),
  array_W: array.watts,
});

const worstChance = (trials: readonly Trial[], candidate: Candidate): number =>
  Math.min(...trials.map((trial) => chanceIn(trial, candidate)));

function pointOf(trials: readonly Trial[], setup: Setup, bank: BankChoice, array: ArrayChoice): SizePoint {
  return {
    chemistry: bank.chemistry,
    bank_Ah: bank.capacity_Ah,
    array_W: array.watts,
    chance: worstChance(trials, candidateOf(setup, bank, array)),
    price: bank.price === null || array.price === null ? null : bank.price + array.price,
    mass_kg: bank.mass_kg === null || array.mass_kg === null ? null : bank.mass_kg + array.mass_kg,
  };
}

/** From the smallest bank with the largest array: while it lasts, a smaller array; when it does not, a larger bank. */
function walkDown(trials: readonly Trial[], setup: Setup, { banks, arrays }: Ladder, chance: number): SizePoint[] {
  const corners: SizePoint[] = [];
  let smallest = arrays.length;
  for (const bank of banks) {
    const before = smallest;
    while (
      smallest > 0 &&
      trials.every((trial) => reaches(trial, candidateOf(setup, bank, arrays[smallest - 1]!), chance))
    ) {
      smallest--;
    }
    if (smallest < before) corners.push(pointOf(trials, setup, bank, arrays[smallest]!));
  }
  return corners;
}

function fits({ price, mass_kg }: SizePoint, { budget, payload_kg, removed_kg }: SizeRequest): boolean {
  const dear = budget !== null && (price ?? Infinity) > budget;
  const heavy = payload_kg !== null && (mass_kg ?? Infinity) - removed_kg > payload_kg;
  return !dear && !heavy;
}

/** Cheapest first; where prices are not known, lightest; then the smaller bank. */
function byPreference(a: SizePoint, b: SizePoint): number {
  return (
    compareKnown(a.price, b.price) ||
    compareKnown(a.mass_kg, b.mass_kg) ||
    a.bank_Ah - b.bank_Ah ||
    a.array_W - b.array_W
  );
}

const compareKnown = (a: number | null, b: number | null): number =>
  a === null && b === null ? 0 : (a ?? Infinity) - (b ?? Infinity);

/** Of all pairs within roof, payload and budget, the one with the best chance: only the outer edge can hold it. */
function nearestMiss(
  trials: readonly Trial[],
  setup: Setup,
  ladders: readonly Ladder[],
  request: SizeRequest,
): SizePoint | null {
  const edge = ladders.flatMap(({ banks, arrays }) =>
    banks.flatMap((bank) => {
      const allowed = arrays.filter((array) => fits(pricedOnly(bank, array), request));
      const largest = allowed.at(-1);
      return largest === undefined ? [] : [{ bank, array: largest }];
    }),
  );
  const points = edge.map(({ bank, array }) => pointOf(trials, setup, bank, array));
  return points.sort((a, b) => b.chance - a.chance || byPreference(a, b))[0] ?? null;
}

const pricedOnly = (bank: BankChoice, array: ArrayChoice): SizePoint => ({
  chemistry: bank.chemistry,
  bank_Ah: bank.capacity_Ah,
  array_W: array.watts,
  chance: NaN,
  price: bank.price === null || array.price === null ? null : bank.price + array.price,
  mass_kg: bank.mass_kg === null || array.mass_kg === null ? null : bank.mass_kg + array.mass_kg,
});

function stepsFrom(trials: readonly Trial[], setup: Setup, ladders: readonly Ladder[], pick: SizePoint): SizeStep[] {
  const { banks, arrays } = ladders.find(({ chemistry }) => chemistry === pick.chemistry)!;
  const b = banks.findIndex(({ capacity_Ah }) => capacity_Ah === pick.bank_Ah);
  const a = arrays.findIndex(({ watts }) => watts === pick.array_W);
  const tried = [
    ["smaller-bank", b - 1, a],
    ["larger-bank", b + 1, a],
    ["smaller-array", b, a - 1],
    ["larger-array", b, a + 1],
  ] as const;
  return tried.flatMap(([change, bankAt, arrayAt]) => {
    const bank = banks[bankAt];
    const array = arrays[arrayAt];
    return bank && array ? [{ change, point: pointOf(trials, setup, bank, array) }] : [];
  });
}

/** The chance of lasting for every pair of a ladder, for the picture of sizes. */
export function* chanceGridInParts(
  study: Study,
  setup: Setup,
  request: SizeRequest,
  skies: Skies = defaultSkies,
): InParts<readonly SizeGrid[]> {
  checkRequest(request);
  const trials = request.months.map((month) => makeTrial(study, setup, month, request.nights, skies));
  const ladders = laddersOf(request);
  const rows = ladders.reduce((sum, { banks }) => sum + banks.length, 0);
  const grids: SizeGrid[] = [];
  let done = 0;
  for (const { chemistry, banks, arrays } of ladders) {
    const chance: number[][] = [];
    for (const bank of banks) {
      chance.push(arrays.map((array) => worstChance(trials, candidateOf(setup, bank, array))));
      yield { progress: ++done / rows };
    }
    grids.push({
      chemistry,
      banks_Ah: banks.map(({ capacity_Ah }) => capacity_Ah),
      arrays_W: arrays.map(({ watts }) => watts),
      chance,
    });
  }
  return grids;
}

/** @see chanceGridInParts */
export const chanceGrid = (
  study: Study,
  setup: Setup,
  request: SizeRequest,
  skies: Skies = defaultSkies,
): readonly SizeGrid[] => atOnce(chanceGridInParts(study, setup, request, skies));
