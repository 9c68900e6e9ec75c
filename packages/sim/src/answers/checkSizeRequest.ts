import { mostCapacity_Ah } from "../bank/bankModel.ts";
import { chemistries } from "../bank/chemistries.ts";
import { mustBeOneOf, mustBeWhole, mustLie } from "../numeric/must.ts";
import type { ChemistryId } from "../study.ts";
import type { SizeRequest } from "./sizeTypes.ts";

/** @throws RangeError naming the field, what was given and what is accepted */
export const checkChemistry = (name: string, given: ChemistryId): void =>
  mustBeOneOf(name, given, Object.keys(chemistries) as ChemistryId[]);

/** @throws RangeError naming the field, what was given and what is accepted */
export function checkSizeRequest(request: SizeRequest): void {
  const { nights, chance, months, banks, arrays, chemistries: tried } = request;
  mustBeWhole("nights", nights, 1, 60);
  mustLie("chance", chance, 0.001, 1);
  for (const [name, list] of Object.entries({ months, banks, arrays, chemistries: tried })) {
    if (list.length === 0) throw new RangeError(`${name} must name at least one, got none`);
  }
  for (const month of months) mustBeWhole("months", month, 1, 12);
  for (const chemistry of tried) checkChemistry("chemistries", chemistry);
  banks.forEach(({ capacity_Ah }, i) => mustLie(`banks[${i}].capacity_Ah`, capacity_Ah, 1, mostCapacity_Ah));
  arrays.forEach(({ watts }, i) => mustLie(`arrays[${i}].watts`, watts, 0, 100_000));
  [...banks, ...arrays].forEach(({ price, mass_kg }) => {
    if (price !== null) mustLie("price", price, 0, 1e12);
    if (mass_kg !== null) mustLie("mass_kg", mass_kg, 0, 1e6);
  });
  checkLimits(request);
}

function checkLimits({ roof_W, budget, payload_kg, removed_kg }: SizeRequest): void {
  if (roof_W !== null) mustLie("roof_W", roof_W, 0, 1e6);
  if (budget !== null) mustLie("budget", budget, 0, 1e12);
  if (payload_kg !== null) mustLie("payload_kg", payload_kg, -1e6, 1e6);
  mustLie("removed_kg", removed_kg, 0, 1e6);
}
