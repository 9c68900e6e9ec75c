import { panels as sold } from "@stayput/catalogue";
import type { ArrayChoice } from "@stayput/sim";
import type { Job } from "../schema/job.ts";

type Sizing = NonNullable<Job["sizing"]>;
type Panel = Sizing["panels"][number];

/** Arrays offered where the job names none: so many watts of framed panels. Chosen. */
const usual_W = [0, 100, 150, 200, 300, 400, 500, 600, 800];
/** Most arrays that a ladder may hold. */
const MOST = 100;

/** The ladder of arrays: the job's own, or made of its panels, or the usual sizes at the mass of panels that are sold. */
export function arrayLadder(sizing: Sizing | null, perWatt: number | null): readonly ArrayChoice[] {
  if (sizing !== null && sizing.arrays.length > 0) return sizing.arrays;
  if (sizing !== null && sizing.panels.length > 0) return madeOf(sizing.panels);
  return usual_W.map((watts) => ({
    watts,
    price: perWatt === null ? null : Math.round(watts * perWatt),
    mass_kg: Math.round(watts * framed_kg_W()),
  }));
}

/** What a framed panel weighs for each watt, over those that are sold [kg/W]. */
export function framed_kg_W(): number {
  const framed = sold.filter(({ mount }) => mount === "flush");
  return sum(framed.map(({ mass_kg }) => mass_kg)) / sum(framed.map(({ watts }) => watts));
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * Every array that so many of each panel make up, the cheapest of each size, smallest first; thinned out where they are
 * more than a ladder holds. The roof is held to by the search, which can then say what a larger roof would do.
 */
function madeOf(panels: readonly Panel[]): ArrayChoice[] {
  let made: ArrayChoice[] = [{ watts: 0, price: 0, mass_kg: 0 }];
  for (const panel of panels) made = thinned(cheapest(made.flatMap((array) => withMore(array, panel))), 10 * MOST);
  return thinned(made, MOST);
}

/** So many at most, evenly taken, the smallest and the largest among them. */
function thinned(arrays: readonly ArrayChoice[], most: number): ArrayChoice[] {
  if (arrays.length <= most) return [...arrays];
  return Array.from({ length: most }, (_, i) => arrays[Math.round((i * (arrays.length - 1)) / (most - 1))]!);
}

function withMore(array: ArrayChoice, panel: Panel): ArrayChoice[] {
  return Array.from({ length: panel.most + 1 }, (_, count) => ({
    watts: array.watts + count * panel.watts,
    price: plus(array.price, panel.price, count),
    mass_kg: plus(array.mass_kg, panel.mass_kg, count),
  }));
}

/** What is not known stays not known, except of none. */
function plus(have: number | null, each: number | null, count: number): number | null {
  if (count === 0) return have;
  return have === null || each === null ? null : have + count * each;
}

function cheapest(arrays: readonly ArrayChoice[]): ArrayChoice[] {
  const bySize = new Map<number, ArrayChoice>();
  for (const array of arrays) {
    const known = bySize.get(array.watts);
    if (known === undefined || (array.price ?? Infinity) < (known.price ?? Infinity)) bySize.set(array.watts, array);
  }
  return [...bySize.values()].sort((a, b) => a.watts - b.watts);
}
