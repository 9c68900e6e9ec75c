import type { Load } from "@stayput/sim";
import { compressorDefaults as d } from "../defaults.ts";
import type { LoadInJob } from "../schema/load.ts";

/** What runs with one setup: the job's loads less those dropped, with those added. */
export function resolveLoads(
  loads: readonly LoadInJob[],
  change: { readonly drop: readonly string[]; readonly add: readonly LoadInJob[] },
): Load[] {
  return [...loads.filter(({ id }) => !change.drop.includes(id)), ...change.add].map(resolveLoad);
}

/** A load of the job is one and the same in all setups, so that the simulation works its hours out once. */
const known = new WeakMap<LoadInJob, Load>();

function resolveLoad(load: LoadInJob): Load {
  const found = known.get(load) ?? asSimulated(load);
  known.set(load, found);
  return found;
}

function asSimulated(load: LoadInJob): Load {
  if (load.kind === "compressor-fridge") return { ...load, compressor_W: load.compressor_W ?? compressor_W(load) };
  if (load.kind === "appliance") return load;
  const { supply: _, ...fridge } = load;
  return fridge;
}

/** Running draw of a compressor by its fridge's volume, but enough for its rating. */
function compressor_W({ volume_L, rated_Wh_day }: { volume_L: number; rated_Wh_day: number }): number {
  const byVolume = volume_L < d.largeFrom_L ? d.small_W : d.large_W;
  return Math.max(byVolume, Math.ceil(rated_Wh_day / 24 / d.mostRun));
}
