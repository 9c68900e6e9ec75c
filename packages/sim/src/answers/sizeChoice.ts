import type { Skies } from "../stay/index.ts";
import type { Setup, Study } from "../study.ts";
import { pairOf, pointOf, worstOf, type KnownLadder, type Pair } from "./sizeLadder.ts";
import type { SizeRequest } from "./sizeTypes.ts";
import type { Trial } from "./trial.ts";
import type { SizePoint } from "./types.ts";

/** A pair by its place on its ladder. */
export interface Place {
  readonly ladder: KnownLadder;
  readonly b: number;
  readonly a: number;
  readonly pair: Pair;
}

/** A ladder walked: for each bank the smallest array that does, one past the end where none does. */
export interface Walked {
  readonly ladder: KnownLadder;
  readonly smallest: readonly number[];
}

/** What an answer is made of. */
export interface Sizing {
  readonly study: Study;
  readonly setup: Setup;
  readonly request: SizeRequest;
  readonly skies: Skies;
  readonly trials: readonly Trial[];
  readonly walked: readonly Walked[];
}

export const withinBudget = ({ price }: Pair, { budget }: SizeRequest): boolean =>
  budget === null || (price ?? Infinity) <= budget;

export const withinPayload = ({ mass_kg }: Pair, { payload_kg, removed_kg }: SizeRequest): boolean =>
  payload_kg === null || (mass_kg ?? Infinity) - removed_kg <= payload_kg;

export const fits = (pair: Pair, request: SizeRequest): boolean =>
  withinBudget(pair, request) && withinPayload(pair, request);

/** Cheapest first; where prices are not known, lightest; then the smaller bank. */
export const byPreference = (a: Pair, b: Pair): number =>
  compareKnown(a.price, b.price) ||
  compareKnown(a.mass_kg, b.mass_kg) ||
  a.bank_Ah - b.bank_Ah ||
  a.array_W - b.array_W;

const largerFirst = (a: Pair, b: Pair): number => b.bank_Ah - a.bank_Ah || b.array_W - a.array_W || byPreference(a, b);

const compareKnown = (a: number | null, b: number | null): number => {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return a - b;
};

/** Every pair that lasts: above the staircase no run is needed. */
export const allThatLast = (walked: readonly Walked[]): Place[] =>
  walked.flatMap(({ ladder, smallest }) =>
    ladder.banks.flatMap((_, b) =>
      ladder.arrays.flatMap((_, a) => (a < smallest[b]! ? [] : [{ ladder, b, a, pair: pairOf(ladder, b, a) }])),
    ),
  );

/** The one preferred of all that last and fit: a list's prices need not rise with size, so it may be no corner. */
export const preferred = (lasting: readonly Place[], request: SizeRequest): Place | null =>
  lasting.filter(({ pair }) => fits(pair, request)).sort((a, b) => byPreference(a.pair, b.pair))[0] ?? null;

/**
 * Of all pairs within roof, payload and budget, the one with the best chance: only the outer edge can hold it. Where none
 * lasts under any sky, the largest: it is flat last.
 */
export function nearestMiss(ladders: readonly KnownLadder[], request: SizeRequest): Place | null {
  const edge = ladders.flatMap((ladder) =>
    ladder.banks.flatMap((_, b) => {
      const a = ladder.arrays.findLastIndex((_, i) => fits(pairOf(ladder, b, i), request));
      return a < 0 ? [] : [{ ladder, b, a, pair: pairOf(ladder, b, a), chance: worstOf(ladder, b, a).chance }];
    }),
  );
  const nearer = edge.some(({ chance }) => chance > 0) ? byPreference : largerFirst;
  return edge.sort((x, y) => y.chance - x.chance || nearer(x.pair, y.pair))[0] ?? null;
}

export const pointAt = ({ ladder, b, a }: Place): SizePoint => pointOf(ladder, b, a);
