import type { AbsorptionFridge } from "../study.ts";
import { mustLie } from "../numeric/must.ts";
import { cabinetCapacity_Wh_K, hoursToPass, relaxed_C } from "./lumped.ts";
import { requireAbove, requireShares, requireTemperatures } from "./require.ts";

/** Numbers of a three-way fridge. Chosen together: they give 8 °C inside at 32 °C, 13 at 35 and 20 at 40, flat out on gas. */
export const absorptionNumbers = {
  /** heat moved by a watt of heat at 25 °C; small units reach 0.15 to 0.25 in practice, from memory */
  cop: 0.2,
  copFalls_per_K: 0.02,
  ambient_C: 25,
  thermostat_C: 5,
  /** the coldest a cabinet gets: cooling falls away to nothing from 5 °C down to here */
  coldest_C: -18,
  /** full burner over the rated consumption */
  fullBurner: 1.4,
  /** propane, lower heating value: 46 MJ/kg */
  gas_Wh_g: 12.8,
} as const;

/** A three-way fridge hour by hour. */
export interface AbsorptionFridgeHours {
  /** share of the camped part of each hour that the dc element is on, at its nominal watts, 0 to 1 */
  readonly campedElement: Float64Array;
  /** the same for the driving part; 0 in hours without driving */
  readonly drivingElement: Float64Array;
  /** share of each hour that the ac element is on, 0 to 1 */
  readonly elementAcShare: Float64Array;
  /** draw of the controls, mean over each hour: while camped on gas, already times the camped share [A] */
  readonly controls_A: Float64Array;
  /** burnt in each hour, already times the camped share [g] */
  readonly gas_g: Float64Array;
  /** cabinet at the end of each hour [°C] */
  readonly inside_C: Float64Array;
}

/** Heat put into the unit: what a source gives when on, and whether a thermostat rules it. */
interface Heat {
  readonly watts: number;
  readonly ruled: boolean;
}

interface Cabinet {
  readonly ua_W_K: number;
  readonly capacity_Wh_K: number;
}

/**
 * A three-way (absorption) fridge: what it draws, what it burns and how cold it stays. On gas the 12 V element runs while
 * driving only; on dc or ac the element is on always. Without a thermostat in the mode, a source is flat out and the
 * cabinet's temperature is an outcome; with one it is held at 5 °C as far as the heat allows. It arrives at 5 °C.
 * Cooling = heat × 0.2 × (1 − 0.02 (bay − 25)) × min(1, (inside + 18)/23); UA from gas watts × 0.2 = UA (25 − 5).
 *
 * @param bay_C air around the fridge, one value an hour [°C]
 * @param drivingShare of each hour that is driven, 0 to 1, as long as `bay_C`; null: camped throughout
 * @throws RangeError naming the field that is out of range
 */
export function absorptionFridge(
  fridge: AbsorptionFridge,
  bay_C: Float64Array,
  drivingShare: Float64Array | null,
): AbsorptionFridgeHours {
  requireAbsorption(fridge, bay_C, drivingShare);
  const hours = emptyHours(bay_C.length);
  const cabinet = cabinetOf(fridge);
  const camped = campedHeat(fridge);
  const driving = drivingHeat(fridge);
  let inside_C: number = absorptionNumbers.thermostat_C;
  for (let i = 0; i < bay_C.length; i++) {
    const driven = drivingShare === null ? 0 : drivingShare[i]!;
    const ruled_W = (camped.ruled ? camped.watts * (1 - driven) : 0) + (driving.ruled ? driving.watts * driven : 0);
    const free_W = camped.watts * (1 - driven) + driving.watts * driven - ruled_W;
    const duty = thermostatDuty(cabinet, inside_C, bay_C[i]!, free_W, ruled_W);
    inside_C = afterHour_C(cabinet, inside_C, bay_C[i]!, free_W + duty * ruled_W);
    hours.inside_C[i] = inside_C;
    record(hours, i, fridge, driven, camped.ruled ? duty : 1, driving.ruled ? duty : 1);
  }
  return hours;
}

function requireAbsorption(fridge: AbsorptionFridge, bay_C: Float64Array, drivingShare: Float64Array | null): void {
  mustLie(`${fridge.id}: element_dc_W`, fridge.element_dc_W, 0, 1e4);
  mustLie(`${fridge.id}: element_ac_W`, fridge.element_ac_W, 0, 1e4);
  requireAbove(`${fridge.id}: gas_g_day`, fridge.gas_g_day, 0); // the insulation is solved from it, whatever it runs on
  mustLie(`${fridge.id}: controls_A`, fridge.controls_A, 0, 100);
  mustLie(`${fridge.id}: volume_L`, fridge.volume_L, 1, 5000);
  requireTemperatures(`${fridge.id}: bay_C`, bay_C);
  if (drivingShare === null) return;
  if (drivingShare.length !== bay_C.length)
    throw new RangeError(`drivingShare must be as long as bay_C, ${bay_C.length}, got ${drivingShare.length}`);
  requireShares("drivingShare", drivingShare);
}

function emptyHours(length: number): AbsorptionFridgeHours {
  return {
    campedElement: new Float64Array(length),
    drivingElement: new Float64Array(length),
    elementAcShare: new Float64Array(length),
    controls_A: new Float64Array(length),
    gas_g: new Float64Array(length),
    inside_C: new Float64Array(length),
  };
}

function ratedGas_W({ gas_g_day }: AbsorptionFridge): number {
  return (gas_g_day * absorptionNumbers.gas_Wh_g) / 24;
}

function cabinetOf(fridge: AbsorptionFridge): Cabinet {
  const { cop, ambient_C, thermostat_C } = absorptionNumbers;
  const ua_W_K = (ratedGas_W(fridge) * cop) / (ambient_C - thermostat_C);
  return { ua_W_K, capacity_Wh_K: cabinetCapacity_Wh_K(fridge.volume_L) };
}

function campedHeat(fridge: AbsorptionFridge): Heat {
  if (fridge.burns === "dc") return { watts: fridge.element_dc_W, ruled: fridge.thermostat.dc };
  if (fridge.burns === "ac") return { watts: fridge.element_ac_W, ruled: fridge.thermostat.ac };
  return { watts: absorptionNumbers.fullBurner * ratedGas_W(fridge), ruled: fridge.thermostat.gas };
}

function drivingHeat(fridge: AbsorptionFridge): Heat {
  if (fridge.burns === "ac") return campedHeat(fridge);
  return { watts: fridge.element_dc_W, ruled: fridge.thermostat.dc };
}

function record(
  hours: AbsorptionFridgeHours,
  i: number,
  fridge: AbsorptionFridge,
  driven: number,
  campedDuty: number,
  drivingDuty: number,
): void {
  const { fullBurner } = absorptionNumbers;
  if (fridge.burns === "ac") hours.elementAcShare[i] = campedDuty;
  else if (driven > 0) hours.drivingElement[i] = drivingDuty;
  if (fridge.burns === "dc") hours.campedElement[i] = campedDuty;
  if (fridge.burns !== "gas") return;
  hours.controls_A[i] = fridge.controls_A * (1 - driven);
  hours.gas_g[i] = ((fridge.gas_g_day * fullBurner) / 24) * campedDuty * (1 - driven);
}

/** The share of what a thermostat rules that leaves the cabinet at its set temperature when the hour ends, 0 to 1. */
function thermostatDuty(cabinet: Cabinet, inside_C: number, bay_C: number, free_W: number, ruled_W: number): number {
  const over_K = (duty: number): number =>
    afterHour_C(cabinet, inside_C, bay_C, free_W + duty * ruled_W) - absorptionNumbers.thermostat_C;
  if (ruled_W === 0 || over_K(0) <= 0) return 0;
  if (over_K(1) >= 0) return 1;
  let low = 0;
  let high = 1;
  for (let halving = 0; halving < 40; halving++) {
    const middle = (low + high) / 2;
    if (over_K(middle) > 0) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * The cabinet an hour on, exactly: above 5 °C cooling does not depend on the cabinet, below it falls in a straight line to
 * nothing at −18 °C, and 5 °C is passed at most once in an hour of one bay temperature.
 */
function afterHour_C(cabinet: Cabinet, inside_C: number, bay_C: number, heat_W: number): number {
  const { thermostat_C: knee_C } = absorptionNumbers;
  const warm = heading(cabinet, bay_C, heat_W, true);
  const cold = heading(cabinet, bay_C, heat_W, false);
  const startsWarm = inside_C > knee_C || (inside_C === knee_C && warm.target_C >= knee_C);
  const [first, then] = startsWarm ? [warm, cold] : [cold, warm];
  const pass_h = inside_C === knee_C ? Infinity : hoursToPass(inside_C, knee_C, first.target_C, first.rate_per_h);
  if (pass_h >= 1) return relaxed_C(inside_C, first.target_C, first.rate_per_h, 1);
  return relaxed_C(knee_C, then.target_C, then.rate_per_h, 1 - pass_h);
}

/** Where the cabinet is heading, and how fast, on one side of 5 °C. */
function heading(
  { ua_W_K, capacity_Wh_K }: Cabinet,
  bay_C: number,
  heat_W: number,
  warm: boolean,
): { target_C: number; rate_per_h: number } {
  const cooling_W = heat_W * absorptionCop(bay_C);
  if (warm) return { target_C: bay_C - cooling_W / ua_W_K, rate_per_h: ua_W_K / capacity_Wh_K };
  const { thermostat_C, coldest_C } = absorptionNumbers;
  const slope_W_K = cooling_W / (thermostat_C - coldest_C);
  const all_W_K = ua_W_K + slope_W_K;
  return { target_C: (ua_W_K * bay_C + slope_W_K * coldest_C) / all_W_K, rate_per_h: all_W_K / capacity_Wh_K };
}

/** Heat moved by a watt of heat, for a cabinet at 5 °C or more: 0.2 at 25 °C, falling by 2 % of that for each kelvin. */
export function absorptionCop(bay_C: number): number {
  const { cop, copFalls_per_K, ambient_C } = absorptionNumbers;
  return cop * Math.max(0, 1 - copFalls_per_K * (bay_C - ambient_C));
}
