import type { StationNear } from "./stations.ts";

/** Fall of temperature with height [°C/km]; a kilometre of height counts as `heightAsDistance` km of distance. */
const recipe = { lapse_C_km: 5.5, heightAsDistance: 200, near_km: 5 } as const;

/**
 * Mean daily maximum and minimum by month at a point, from stations around it:
 * T = Σ wᵢ (Tᵢ + 5.5 °C/km (zᵢ - z)) / Σ wᵢ, wᵢ = 1/(√(dᵢ² + (200 km per km of height difference)²) + 5 km)².
 * Source: the climate tables' own recipe (shared/climate/SOURCES.md); chosen there by predicting each station from its
 * neighbours: root mean square error 1.8 °C.
 *
 * @param near the stations to use with their distances, eight by the recipe
 * @param elev_m the point's height [m]
 */
export function temperatureFrom(near: readonly StationNear[], elev_m: number): { tmax_C: number[]; tmin_C: number[] } {
  const weights = near.map(({ station, distance_km }) => {
    const rise_km = (station.elev_m - elev_m) / 1000;
    return 1 / (Math.hypot(distance_km, recipe.heightAsDistance * rise_km) + recipe.near_km) ** 2;
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (of: "tmax_C" | "tmin_C", month: number) =>
    near.reduce((sum, { station }, i) => {
      const atHeight = station[of][month]! + (recipe.lapse_C_km * (station.elev_m - elev_m)) / 1000;
      return sum + weights[i]! * atHeight;
    }, 0) / total;
  const months = Array.from({ length: 12 }, (_, month) => month);
  return { tmax_C: months.map((m) => mean("tmax_C", m)), tmin_C: months.map((m) => mean("tmin_C", m)) };
}
