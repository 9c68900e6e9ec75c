import type { ChemistryId } from "@stayput/sim";
import type { Row } from "../row.ts";

/** A battery as it is sold, 12 V. */
export interface BankRow extends Row {
  readonly chemistry: ChemistryId;
  readonly nominal_V: 12;
  /** at the 20 h rate */
  readonly capacity_Ah: number;
  readonly mass_kg: number;
  /** in the job's currency; none is known here, the workshop's own list has it */
  readonly price: null;
}

const names: Readonly<Record<ChemistryId, string>> = {
  agm: "AGM",
  gel: "gel",
  flooded: "flooded deep-cycle",
  lfp: "lithium iron phosphate",
};

/** Sizes that are sold, with the mass that goes with them: [Ah, kg]. Typical data sheets, from memory. */
const ladders: Readonly<Record<ChemistryId, readonly (readonly [capacity_Ah: number, mass_kg: number])[]>> = {
  agm: [
    [75, 23],
    [100, 29],
    [120, 35],
    [150, 43],
    [200, 59],
    [250, 73],
  ],
  gel: [
    [60, 20],
    [90, 28],
    [110, 34],
    [140, 44],
    [200, 66],
  ],
  flooded: [
    [75, 19],
    [100, 25],
    [120, 31],
    [150, 40],
    [200, 55],
  ],
  lfp: [
    [50, 7],
    [100, 12],
    [120, 14],
    [150, 17],
    [200, 23],
    [300, 33],
    [400, 45],
  ],
};

/** Single 12 V batteries on sale by chemistry and size, smallest first within a chemistry. */
export const banks: readonly BankRow[] = (Object.keys(ladders) as ChemistryId[]).flatMap((chemistry) =>
  ladders[chemistry].map(([capacity_Ah, mass_kg]) => ({
    id: `${chemistry}-${capacity_Ah}`,
    name: `${capacity_Ah} Ah ${names[chemistry]}, 12 V`,
    chemistry,
    nominal_V: 12 as const,
    capacity_Ah,
    mass_kg,
    price: null,
    source: "typical data sheets of 12 V batteries of this kind",
    standing: "from memory" as const,
  })),
);

/** A bank that can be put together from what is sold: so many alike, side by side. */
export interface BankChoice {
  readonly chemistry: ChemistryId;
  readonly count: number;
  readonly battery: BankRow;
  readonly capacity_Ah: number;
  readonly mass_kg: number;
}

/**
 * Every bank of one chemistry up to a size that is so many of one battery side by side, the lightest for each size,
 * smallest first. More than four in parallel share current badly (common practice), so none is offered.
 *
 * @param most_Ah largest bank wanted, 12 V
 */
export function bankLadder(chemistry: ChemistryId, most_Ah = 800): BankChoice[] {
  const bySize = new Map<number, BankChoice>();
  for (const battery of banks.filter((row) => row.chemistry === chemistry))
    for (let count = 1; count <= 4; count++) {
      const [capacity_Ah, mass_kg] = [count * battery.capacity_Ah, count * battery.mass_kg];
      const known = bySize.get(capacity_Ah);
      if (capacity_Ah > most_Ah || (known && known.mass_kg <= mass_kg)) continue;
      bySize.set(capacity_Ah, { chemistry, count, battery, capacity_Ah, mass_kg });
    }
  return [...bySize.values()].sort((a, b) => a.capacity_Ah - b.capacity_Ah);
}
