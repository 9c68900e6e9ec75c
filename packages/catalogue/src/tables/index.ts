export { appliances, type ApplianceRow } from "./appliances.ts";
export { bankLadder, banks, type BankChoice, type BankRow } from "./banks.ts";
export {
  converters,
  inverters,
  mainsChargers,
  solarChargers,
  type ConverterRow,
  type InverterRow,
  type MainsChargerRow,
  type SolarChargerRow,
} from "./chargers.ts";
export {
  absorptionFridges,
  chamberTest,
  compressorFridges,
  portable_Wh_day,
  sizeExponent,
  type AbsorptionFridgeRow,
  type CompressorFridgeRow,
} from "./fridges.ts";
export { conductors, type ConductorRow } from "./conductors.ts";
export { loadFrom } from "./loadFrom.ts";
export { panels, type PanelRow } from "./panels.ts";
export { plugs, type PlugRow } from "./plugs.ts";
export { inventedPrices, type PriceList } from "./priceList.ts";
export { loadRows, searchAppliances, type LoadRow } from "./searchAppliances.ts";
