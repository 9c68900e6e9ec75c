import { bankLadder, inventedPrices } from "@stayput/catalogue";
import type { ChemistryId, Setup, SizeRequest, Skies } from "@stayput/sim";
import type { Read } from "./protocol.ts";

/** Fewer skies than the bench draws: a picture of chances to the nearest twentieth does not need more. */
export const sizeSkies: Skies = { seed: 1, draws: 100 };

/** Chosen: a choice of two chemistries answers most questions at a counter. */
const usual: readonly ChemistryId[] = ["agm", "lfp"];
const arrays_W = [0, 100, 150, 200, 300, 400, 500, 600, 800];
const most_Ah = 600;
/** what a panel weighs on a roof, per watt; typical data sheets, from memory [kg/W] */
const panel_kg_W = 0.06;

/** What to size for: the job's own wishes and price list where it has them, else the catalogue's ladder. */
export function sizeRequest({ job, study }: Read, setup: Setup): SizeRequest {
  const { sizing } = job;
  const chemistries = sizing !== null && sizing.chemistries.length > 0 ? sizing.chemistries : usual;
  const systems = setup.bank.nominal_V / 12;
  const banks =
    sizing !== null && sizing.banks.length > 0
      ? sizing.banks
      : chemistries.flatMap((chemistry) => ladder(chemistry, job.currency, systems));
  return {
    nights: sizing?.nights ?? study.trip.nights,
    chance: sizing?.chance ?? 0.9,
    months: sizing !== null && sizing.months.length > 0 ? sizing.months : [study.trip.month],
    chemistries: chemistries.filter((chemistry) => banks.some((bank) => bank.chemistry === chemistry)),
    banks,
    arrays: sizing !== null && sizing.arrays.length > 0 ? sizing.arrays : arrays(job.currency),
    roof_W: sizing?.roof_W ?? null,
    payload_kg: job.payload_kg,
    removed_kg: 0,
    budget: sizing?.budget ?? null,
  };
}

/** Prices are invented, and only in the list's own currency; elsewhere there are none. */
const priced = (currency: string | null, amount: number): number | null =>
  currency === inventedPrices.currency ? Math.round(amount) : null;

const ladder = (chemistry: ChemistryId, currency: string | null, systems: number): SizeRequest["banks"] =>
  bankLadder(chemistry, most_Ah)
    .filter(({ capacity_Ah }) => capacity_Ah % 50 === 0)
    .map(({ capacity_Ah, mass_kg }) => ({
      chemistry,
      capacity_Ah,
      price: priced(currency, capacity_Ah * systems * inventedPrices.bank_per_Ah[chemistry]),
      mass_kg: mass_kg * systems,
    }));

const arrays = (currency: string | null): SizeRequest["arrays"] =>
  arrays_W.map((watts) => ({
    watts,
    price: priced(currency, watts * inventedPrices.panel_per_W),
    mass_kg: Math.round(watts * panel_kg_W),
  }));
