import type { Load } from "@stayput/sim";
import type { AbsorptionFridgeRow, CompressorFridgeRow } from "./fridges.ts";
import type { ApplianceRow } from "./appliances.ts";
import type { LoadRow } from "./searchAppliances.ts";

/** A load to put in a job, from a row of the catalogue, to be changed from there. The id is the row's unless given. */
export function loadFrom(row: LoadRow, id: string = row.id): Load {
  switch (row.kind) {
    case "appliance":
      return applianceFrom(row, id);
    case "compressor-fridge":
      return compressorFrom(row, id);
    case "absorption-fridge":
      return absorptionFrom(row, id);
  }
}

function applianceFrom(row: ApplianceRow, id: string): Load {
  const { kind, name, supply, watts, standby_W, surgeFactor, use, outside, only } = row;
  const surge_W = surgeFactor === null ? null : Math.round(surgeFactor * watts);
  return { id, name, kind, supply, watts, count: 1, standby_W, surge_W, use, outside, only };
}

function compressorFrom(row: CompressorFridgeRow, id: string): Load {
  const { kind, name, rated_Wh_day, ratedAt_C, inside_C, compressor_W, volume_L, restock_kg_day, freezerShare } = row;
  const rating = { rated_Wh_day, ratedAt_C, inside_C, compressor_W, volume_L, restock_kg_day, freezerShare };
  return { id, name, kind, supply: "dc", ...rating, only: null };
}

function absorptionFrom(row: AbsorptionFridgeRow, id: string): Load {
  const { kind, name, element_dc_W, element_ac_W, gas_g_day, controls_A, volume_L, thermostat } = row;
  return { id, name, kind, burns: "gas", element_dc_W, element_ac_W, gas_g_day, controls_A, volume_L, thermostat };
}
