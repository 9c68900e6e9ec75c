import { drawCount, type Skies } from "../stay/index.ts";
import { mustLie } from "../numeric/must.ts";
import type { Bank, ChemistryId, Setup, Study } from "../study.ts";
import { defaultSkies } from "./explain.ts";
import { atOnce, type InParts } from "./inParts.ts";
import { reasonForPick, whatStandsInTheWay } from "./sizeReason.ts";
import type { ArrayChoice, BankChoice, SizeAnswer, SizeRequest, SizeStep } from "./sizeTypes.ts";
import { chanceIn, knownPairs, makeTrial, reaches, type KnownPairs, type Trial } from "./trial.ts";
import type { SizeGrid, SizePoint } from "./types.ts";

/** A chemistry's ladder within the roof, smallest first. */
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
  const ladders = laddersOf(request).map((ladder) => knowLadder(trials, setup, ladder));
  const staircases: { chemistry: ChemistryId; corners: SizePoint[] }[] = [];
  for (const ladder of ladders) {
    staircases.push({ chemistry: ladder.chemistry, corners: walkDown(ladder, request.chance) });
    yield { progress: 0.3 + (0.6 * staircases.length) / ladders.length };
  }
  const fitting = staircases
    .flatMap(({ corners }) => corners)
    .filter((point) => fits(point, request))
    .sort(byPreference);
  const pick = fitting[0] ?? null;
  const nearest = pick === null ? nearestMiss(ladders, request) : null;
  const steps = pick === null ? [] : stepsFrom(ladders, pick);
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

/** A ladder with what is known of its pairs in each month's trial. */
interface KnownLadder extends Ladder {
  readonly months: readonly KnownPairs[];
}

function knowLadder(trials: readonly Trial[], setup: Setup, ladder: Ladder): KnownLadder {
  const pairs = {
    banks: ladder.banks.map(({ chemistry, capacity_Ah }) => newBank(setup, chemistry, capacity_Ah)),
    arrays_W: ladder.arrays.map(({ watts }) => watts),
  };
  return { ...ladder, months: trials.map((trial) => knownPairs(trial, pairs)) };
}

const worstChance = ({ months }: KnownLadder, b: number, a: number): number =>
  Math.min(...months.map((known) => chanceIn(known, b, a)));

function pointOf(ladder: KnownLadder, b: number, a: number): SizePoint {
  return { ...untried(ladder.banks[b]!, ladder.arrays[a]!), chance: worstChance(ladder, b, a) };
}

const untried = (bank: BankChoice, array: ArrayChoice): Omit<SizePoint, "chance"> => ({
  chemistry: bank.chemistry,
  bank_Ah: bank.capacity_Ah,
  array_W: array.watts,
  price: bank.price === null || array.price === null ? null : bank.price + array.price,
  mass_kg: bank.mass_kg === null || array.mass_kg === null ? null : bank.mass_kg + array.mass_kg,
});

/** From the smallest bank with the largest array: while it lasts, a smaller array; when it does not, a larger bank. */
function walkDown(ladder: KnownLadder, chance: number): SizePoint[] {
  const corners: SizePoint[] = [];
  let smallest = ladder.arrays.length;
  for (let b = 0; b < ladder.banks.length; b++) {
    const before = smallest;
    while (smallest > 0 && ladder.months.every((known) => reaches(known, b, smallest - 1, chance))) smallest--;
    if (smallest < before) corners.push(pointOf(ladder, b, smallest));
  }
  return corners;
}

function fits({ price, mass_kg }: Omit<SizePoint, "chance">, { budget, payload_kg, removed_kg }: SizeRequest): boolean {
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
function nearestMiss(ladders: readonly KnownLadder[], request: SizeRequest): SizePoint | null {
  const edge = ladders.flatMap((ladder) =>
    ladder.banks.flatMap((bank, b) => {
      const a = ladder.arrays.findLastIndex((array) => fits(untried(bank, array), request));
      return a < 0 ? [] : [pointOf(ladder, b, a)];
    }),
  );
  return edge.sort((a, b) => b.chance - a.chance || byPreference(a, b))[0] ?? null;
}

function stepsFrom(ladders: readonly KnownLadder[], pick: SizePoint): SizeStep[] {
  const ladder = ladders.find(({ chemistry }) => chemistry === pick.chemistry)!;
  const b = ladder.banks.findIndex(({ capacity_Ah }) => capacity_Ah === pick.bank_Ah);
  const a = ladder.arrays.findIndex(({ watts }) => watts === pick.array_W);
  const tried = [
    ["smaller-bank", b - 1, a],
    ["larger-bank", b + 1, a],
    ["smaller-array", b, a - 1],
    ["larger-array", b, a + 1],
  ] as const;
  return tried
    .filter(([, bank, array]) => ladder.banks[bank] !== undefined && ladder.arrays[array] !== undefined)
    .map(([change, bank, array]) => ({ change, point: pointOf(ladder, bank, array) }));
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
  const ladders = laddersOf(request).map((ladder) => knowLadder(trials, setup, ladder));
  const rows = ladders.reduce((sum, { banks }) => sum + banks.length, 0);
  const grids: SizeGrid[] = [];
  let done = 0;
  for (const ladder of ladders) {
    const chance: number[][] = [];
    for (let b = 0; b < ladder.banks.length; b++) {
      chance.push(ladder.arrays.map((_, a) => worstChance(ladder, b, a)));
      yield { progress: ++done / rows };
    }
    grids.push({
      chemistry: ladder.chemistry,
      banks_Ah: ladder.banks.map(({ capacity_Ah }) => capacity_Ah),
      arrays_W: ladder.arrays.map(({ watts }) => watts),
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
