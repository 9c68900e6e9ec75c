import type { Bank, ChemistryId, Setup } from "../study.ts";
import type { ArrayChoice, BankChoice, SizeRequest } from "./sizeTypes.ts";
import { chanceIn, knownPairs, type KnownPairs, type Trial } from "./trial.ts";
import type { SizePoint } from "./types.ts";

/** A chemistry's ladder within the roof, smallest first. */
export interface Ladder {
  readonly chemistry: ChemistryId;
  readonly banks: readonly BankChoice[];
  readonly arrays: readonly ArrayChoice[];
}

/** A pair before its chance is known. */
export type Pair = Omit<SizePoint, "chance">;

/** The banks and arrays to try, a ladder for each chemistry, smallest first. */
export function laddersOf({ chemistries, banks, arrays, roof_W }: SizeRequest): Ladder[] {
  const onRoof = arrays.filter(({ watts }) => roof_W === null || watts <= roof_W);
  return chemistries.map((chemistry) => ({
    chemistry,
    banks: banks
      .filter((bank) => bank.chemistry === chemistry)
      .sort((a, b) => a.capacity_Ah - b.capacity_Ah || cheaper(a, b)),
    arrays: [...onRoof].sort((a, b) => a.watts - b.watts || cheaper(a, b)),
  }));
}

const cheaper = (a: BankChoice | ArrayChoice, b: BankChoice | ArrayChoice): number =>
  (a.price ?? Number.MAX_VALUE) - (b.price ?? Number.MAX_VALUE);

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
export interface KnownLadder extends Ladder {
  readonly trials: readonly Trial[];
  readonly months: readonly KnownPairs[];
}

export function knowLadder(trials: readonly Trial[], setup: Setup, ladder: Ladder): KnownLadder {
  const pairs = {
    banks: ladder.banks.map(({ chemistry, capacity_Ah }) => newBank(setup, chemistry, capacity_Ah)),
    arrays_W: ladder.arrays.map(({ watts }) => watts),
  };
  return { ...ladder, trials, months: trials.map((trial) => knownPairs(trial, pairs)) };
}

/** The chance in the worst of the months, and which that is. */
export function worstOf({ trials, months }: KnownLadder, b: number, a: number): { month: number; chance: number } {
  return months
    .map((known, i) => ({ month: trials[i]!.month, chance: chanceIn(known, b, a) }))
    .reduce((worst, each) => (each.chance < worst.chance ? each : worst));
}

export const pairOf = ({ banks, arrays }: Ladder, b: number, a: number): Pair => {
  const [bank, array] = [banks[b]!, arrays[a]!];
  return {
    chemistry: bank.chemistry,
    bank_Ah: bank.capacity_Ah,
    array_W: array.watts,
    price: bank.price === null || array.price === null ? null : bank.price + array.price,
    mass_kg: bank.mass_kg === null || array.mass_kg === null ? null : bank.mass_kg + array.mass_kg,
  };
};

export const pointOf = (ladder: KnownLadder, b: number, a: number): SizePoint => ({
  ...pairOf(ladder, b, a),
  chance: worstOf(ladder, b, a).chance,
});
