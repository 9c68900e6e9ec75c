import { bankLadder, inventedPrices } from "@stayput/catalogue";
import type { BankChoice, ChemistryId, Setup, SizeRequest, Trip } from "@stayput/sim";
import { sizingDefaults } from "../defaults.ts";
import type { Job } from "../schema/job.ts";
import { arrayLadder, framed_kg_W } from "./arrays.ts";

/** What is asked instead of what the job says. */
export interface SizeWishes {
  readonly nights?: number | undefined;
  /** over 0 to under 1 */
  readonly chance?: number | undefined;
  /** 1 to 12 */
  readonly months?: readonly number[] | undefined;
  readonly chemistries?: readonly ChemistryId[] | undefined;
}

export interface SizeAsked {
  readonly request: SizeRequest;
  /** what the bank and panels that come out weigh, by the catalogue [kg] */
  readonly fitted_kg: number;
  /** what was assumed, in sentences */
  readonly notes: readonly string[];
}

/** Chosen: a choice of two chemistries answers most questions at a counter. */
const usual: readonly ChemistryId[] = ["agm", "lfp"];
/** Largest 12 V bank offered from the catalogue, and the step of its sizes. Chosen. */
const most_Ah = 600;
const step_Ah = 50;

/**
 * What to size for: what is wished, else the job's own wishes and price list, else the catalogue's ladder. The catalogue's
 * prices are invented, and used only where the job is in their currency. Where no price is known a budget can be held
 * against nothing: it is left out, and that is said.
 *
 * @param setup whose loads, volts and chargers the candidates take over
 * @param fitted what comes out when a bank and an array go in
 */
export function sizeRequest(
  job: Job,
  trip: Trip,
  { setup, fitted }: { readonly setup: Setup; readonly fitted: Setup },
  wishes: SizeWishes = {},
): SizeAsked {
  const { sizing } = job;
  const prices = job.currency === inventedPrices.currency ? inventedPrices : null;
  const wanted = firstNotEmpty(wishes.chemistries, sizing?.chemistries);
  const own = sizing?.banks ?? [];
  const banks = own.length > 0 ? own : soldBanks(wanted ?? usual, setup.bank.nominal_V / 12, prices);
  const chemistries = [...new Set(banks.map(({ chemistry }) => chemistry))];
  const arrays = arrayLadder(sizing, prices?.panel_per_W ?? null);
  const priced = [...banks, ...arrays].some(({ price }) => price !== null && price > 0);
  const fitted_kg = fittedMass_kg(fitted);
  const removed_kg = job.payload_kg === null ? 0 : fitted_kg;
  const request: SizeRequest = {
    nights: wishes.nights ?? sizing?.nights ?? trip.nights,
    chance: wishes.chance ?? sizing?.chance ?? sizingDefaults.chance,
    months: firstNotEmpty(wishes.months, sizing?.months) ?? [trip.month],
    chemistries: wanted === null ? chemistries : chemistries.filter((one) => wanted.includes(one)),
    banks,
    arrays,
    roof_W: sizing?.roof_W ?? null,
    payload_kg: job.payload_kg,
    removed_kg,
    budget: priced ? (sizing?.budget ?? null) : null,
  };
  const notes = [
    ...(own.length > 0 ? [] : ["Sizes are the catalogue's usual ones; the job may name those that are on the shelf."]),
    ...(own.length === 0 && prices !== null ? ["Prices are invented: put the shop's own into the job."] : []),
    ...(typeof sizing?.budget === "number" && !priced ? ["The budget is left out, as no price is known."] : []),
    ...(removed_kg > 0 ? [`${fitted.name}: bank and panels are taken to weigh ${removed_kg} kg and to come out.`] : []),
  ];
  return { request, fitted_kg, notes };
}

/** What the bank and panels of a setup weigh, by the catalogue's batteries and panels of their kind [kg]. */
function fittedMass_kg({ bank, arrays }: Setup): number {
  const ladder = bankLadder(bank.chemistry);
  const far = ({ capacity_Ah }: { readonly capacity_Ah: number }) => Math.abs(capacity_Ah - bank.capacity_Ah);
  const [nearest] = ladder.toSorted((a, b) => far(a) - far(b));
  const perAh = nearest === undefined ? 0 : nearest.mass_kg / nearest.capacity_Ah;
  const panels_kg = arrays.reduce((sum, { watts }) => sum + watts * framed_kg_W(), 0);
  return Math.round(bank.capacity_Ah * (bank.nominal_V / 12) * perAh + panels_kg);
}

function firstNotEmpty<One>(...lists: readonly (readonly One[] | undefined)[]): readonly One[] | null {
  return lists.find((list) => list !== undefined && list.length > 0) ?? null;
}

/** @param systems 12 V batteries in series */
function soldBanks(
  chemistries: readonly ChemistryId[],
  systems: number,
  prices: typeof inventedPrices | null,
): BankChoice[] {
  return chemistries.flatMap((chemistry) =>
    bankLadder(chemistry, most_Ah)
      .filter(({ capacity_Ah }) => capacity_Ah % step_Ah === 0)
      .map(({ capacity_Ah, mass_kg }) => ({
        chemistry,
        capacity_Ah,
        price: prices === null ? null : Math.round(capacity_Ah * systems * prices.bank_per_Ah[chemistry]),
        mass_kg: mass_kg * systems,
      })),
  );
}
