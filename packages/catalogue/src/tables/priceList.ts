import type { ChemistryId } from "@stayput/sim";
import type { Row } from "../row.ts";

/** What things cost by size, to price a ladder where the job has no list of its own. */
export interface PriceList extends Row {
  readonly currency: string;
  readonly bank_per_Ah: Readonly<Record<ChemistryId, number>>;
  readonly panel_per_W: number;
  readonly solarCharger_per_A: number;
  readonly converter_per_A: number;
}

/** Invented figures for demonstrations. No shop asks these; say so wherever they are shown. */
export const inventedPrices: PriceList = {
  id: "invented",
  name: "Invented prices, for demonstration",
  currency: "ZAR",
  bank_per_Ah: { agm: 42, gel: 55, flooded: 30, lfp: 80 },
  panel_per_W: 14,
  solarCharger_per_A: 110,
  converter_per_A: 190,
  source: "invented",
  standing: "invented for demonstration",
};
