import { alongLine } from "../numeric/line.ts";
import { mustLie } from "../numeric/must.ts";
import { chemistries } from "../bank/chemistries.ts";
import type { ChemistryId } from "../study.ts";

/**
 * The stand-alone PV arithmetic of IEEE 1013 (bank) and IEEE 1562 (array), also AS/NZS 4509.2: from memory, not from the
 * standards' text. A cross-check beside the simulation, never in its place.
 */
export interface HandbookInputs {
  readonly dc_Wh_day: number;
  readonly ac_Wh_day: number;
  readonly inverterEfficiency: number;
  readonly nominal_V: number;
  /** days to carry without any sun */
  readonly autonomy_days: number;
  /** share of the bank that may be drawn */
  readonly depth: number;
  /** capacity at the bank's temperature over that at 25 °C */
  readonly temperatureFactor: number;
  /** share of capacity left at the end of the bank's life; 1 leaves ageing out */
  readonly ageing: number;
  /** watt-hours out over watt-hours in, of the bank */
  readonly bankEfficiency: number;
  /** peak sun hours of the design month: kWh/m² a day on the plane of the array */
  readonly sun_h_day: number;
  /** array yield over load */
  readonly arrayToLoad: number;
  /** what is left after each loss of the array: mismatch, dirt, heat, wiring, charger … */
  readonly derates: readonly number[];
}

/** What the handbook arithmetic asks for. */
export interface HandbookSize {
  readonly load_Wh_day: number;
  readonly load_Ah_day: number;
  readonly bank_Ah: number;
  readonly array_W: number;
}

/** Least sun that an array is worked out for: with less, no array carries anything. Chosen. [h/day] */
export const handbookLeastSun_h = 0.01;

/** @throws RangeError naming the field, what was given and what is accepted */
export function handbookSize(inputs: HandbookInputs): HandbookSize {
  checkInputs(inputs);
  const load_Wh_day = inputs.dc_Wh_day + inputs.ac_Wh_day / inputs.inverterEfficiency;
  const load_Ah_day = load_Wh_day / inputs.nominal_V;
  const usable = inputs.depth * inputs.temperatureFactor * inputs.ageing;
  const yield_h_day =
    inputs.sun_h_day * inputs.derates.reduce((left, derate) => left * derate, 1) * inputs.bankEfficiency;
  return {
    load_Wh_day,
    load_Ah_day,
    bank_Ah: (load_Ah_day * inputs.autonomy_days) / usable,
    array_W: (load_Wh_day * inputs.arrayToLoad) / yield_h_day,
  };
}

function checkInputs(inputs: HandbookInputs): void {
  mustLie("dc_Wh_day", inputs.dc_Wh_day, 0, 1e12);
  mustLie("ac_Wh_day", inputs.ac_Wh_day, 0, 1e12);
  mustLie("nominal_V", inputs.nominal_V, 6, 120);
  mustLie("autonomy_days", inputs.autonomy_days, 0.1, 60);
  mustLie("sun_h_day", inputs.sun_h_day, handbookLeastSun_h, 24);
  mustLie("arrayToLoad", inputs.arrayToLoad, 0.1, 10);
  for (const name of ["inverterEfficiency", "depth", "temperatureFactor", "ageing", "bankEfficiency"] as const) {
    mustLie(name, inputs[name], 0.05, name === "temperatureFactor" ? 1.2 : 1);
  }
  for (const derate of inputs.derates) mustLie("derates", derate, 0.05, 1);
}

/** What the handbook's factors are for a chemistry, where the reader gives none. From memory. */
interface HandbookFigures {
  readonly depth: number;
  readonly bankEfficiency: number;
}

const leadFigures: HandbookFigures = { depth: 0.5, bankEfficiency: 0.85 };

/** Depth of discharge (0 to 1) and efficiency (0 to 1) by chemistry, as handbooks have them. From memory. */
export const handbookFigures: Readonly<Record<ChemistryId, HandbookFigures>> = {
  agm: leadFigures,
  gel: leadFigures,
  flooded: { depth: 0.5, bankEfficiency: 0.8 },
  lfp: { depth: 0.8, bankEfficiency: 0.97 },
};

/** Array-to-load ratio of IEEE 1562 for loads that should not drop: 1.3 to 1.4; from memory. */
export const handbookArrayToLoad = 1.3;

/** Share of capacity left at the end of the bank's life, to which the handbooks size it. From memory. */
export const handbookAgeing = 0.8;

/** Efficiency of an inverter, 0 to 1. From memory. */
export const handbookInverterEfficiency = 0.88;

/** What is left after mismatch, dirt, heat, wiring and charger, in turn, each 0 to 1. From memory. */
export const handbookDerates = [0.97, 0.95, 0.88, 0.97, 0.95] as const;

/** Capacity factor for slow discharge at a bank temperature, from the chemistry's own table. */
export const handbookTemperatureFactor = (chemistry: ChemistryId, temp_C: number): number =>
  alongLine(chemistries[chemistry].capacityByTemp, temp_C);
