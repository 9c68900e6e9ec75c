import type { Feed, Inverter, Setup, SolarArray, SolarCharger, WireRun } from "@stayput/sim";
import { inverterDefaults, solarChargerDefaults, usualIdle_W, usualSource_V } from "../defaults.ts";
import type { LoadInJob } from "../schema/load.ts";
import type { SetupInJob } from "../schema/job.ts";
import { resolveLoads } from "./loads.ts";
import { resolvePath } from "./path.ts";

type Note = (text: string) => void;

/** A setup as the simulation takes it: what depends on another field filled in. `note` is told what was assumed. */
export function resolveSetup(setup: SetupInJob, loads: readonly LoadInJob[], latitude_deg: number, note: Note): Setup {
  const { id, name, bank, mainsCharger, price, mass_kg } = setup;
  return {
    id,
    name,
    bank,
    arrays: setup.arrays.map((array, i) => resolveArray(array, i, latitude_deg, note)),
    solarCharger: resolveCharger(setup, note),
    feed: setup.feed === null ? null : resolveFeed(setup.feed, bank.nominal_V, note),
    inverter: setup.inverter === null ? null : resolveInverter(setup.inverter),
    mainsCharger,
    runs: setup.runs.map((run): WireRun => ({ ...run, path: resolvePath(run.path, note) })),
    loads: resolveLoads(loads, setup.loads),
    price,
    mass_kg,
  };
}

function resolveArray(
  array: SetupInJob["arrays"][number],
  index: number,
  latitude_deg: number,
  note: Note,
): SolarArray {
  const name = array.name === "" ? `Array ${index + 1}` : array.name;
  const equator_deg = latitude_deg < 0 ? 0 : 180;
  if (array.azimuth_deg === null && array.tilt_deg > 0) {
    note(`${name} is taken to face ${equator_deg === 0 ? "north" : "south"}, since no azimuth_deg is given`);
  }
  return { ...array, name, azimuth_deg: array.azimuth_deg ?? equator_deg };
}

function resolveCharger({ arrays, solarCharger, bank }: SetupInJob, note: Note): SolarCharger | null {
  if (arrays.length === 0) return solarCharger ?? null;
  if (solarCharger === null) note("it has panels but no solar charger, so they charge nothing");
  if (solarCharger !== undefined) return solarCharger;
  const { kind, step_A, most_A } = solarChargerDefaults;
  const watts = arrays.reduce((sum, array) => sum + array.watts, 0);
  const unlimited_A = Math.ceil(watts / bank.nominal_V / step_A) * step_A;
  const rated_A = Math.min(unlimited_A, most_A);
  const why = rated_A === unlimited_A ? "large enough not to limit the panels" : "the largest there is";
  note(`an MPPT charger of ${rated_A} A is assumed, ${why}`);
  return { kind, rated_A };
}

function resolveFeed(feed: NonNullable<SetupInJob["feed"]>, nominal_V: number, note: Note): Feed {
  const volts = feed.source.volts ?? usualSource_V(feed.kind, nominal_V);
  if (feed.kind === "relay" && volts < nominal_V) {
    note(`a source of ${volts} V can never charge a ${nominal_V} V bank through a relay`);
  }
  return { ...feed, source: { ...feed.source, volts }, path: resolvePath(feed.path, note) };
}

function resolveInverter(inverter: NonNullable<SetupInJob["inverter"]>): Inverter {
  return {
    ...inverter,
    surge_W: inverter.surge_W ?? inverter.rated_W * inverterDefaults.surgePerRated,
    idle_W: inverter.idle_W ?? usualIdle_W(inverter.rated_W),
  };
}
