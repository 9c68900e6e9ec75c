import { DEG } from "../../../packages/sim/src/numeric/angle.ts";
import { cosBetween, directionOf } from "../../../packages/sim/src/sun/direction.ts";
import { hdkr, planeViews } from "../../../packages/sim/src/sun/hdkr.ts";
import type { Check } from "../compare.ts";
import { rowsOf, sourceOf, type Row } from "./fixture.ts";

const OWN = "own computation from the published equation" as const;

/**
 * Of the four models tabled we compute one, HDKR (Reindl); its parts are the incidence angle, the sky and the ground seen.
 * The ratio of beams is taken without our 5° floor, which the fixture has not: that floor has its own unit test.
 */
export const planeChecks: readonly Check[] = rowsOf("transposition").flatMap((row): Check[] => {
  const sun = directionOf(row.number("solar_zenith"), row.number("solar_azimuth"));
  const facing = cosBetween(sun, directionOf(row.number("surface_tilt"), row.number("surface_azimuth")));
  const [ghi, dhi] = [row.number("ghi"), row.number("dhi")];
  const views = planeViews(row.number("surface_tilt"));
  const base = {
    id: named(row),
    source: sourceOf("transposition"),
    standing: OWN,
    unit: "W/m²",
    tolerance: { abs: 1e-3 },
  };
  return [
    {
      ...base,
      quantity: "irradiance of a tilted plane, HDKR",
      expected: row.number("poa_reindl"),
      got: () => hdkr(ghi, dhi, row.number("dni_extra") * sun.up, Math.max(0, facing) / sun.up, views),
    },
    {
      ...base,
      quantity: "irradiance of a tilted plane, beam part",
      expected: row.number("poa_beam"),
      got: () => row.number("dni") * Math.max(0, facing),
    },
    {
      ...base,
      quantity: "irradiance of a tilted plane, ground part",
      expected: row.number("poa_ground"),
      got: () => ghi * views.ground,
    },
    {
      ...base,
      quantity: "irradiance of a tilted plane, sky part were it even",
      expected: row.number("sky_isotropic"),
      got: () => dhi * views.sky,
    },
    {
      ...base,
      quantity: "angle of incidence",
      unit: "deg",
      expected: row.number("aoi_deg"),
      tolerance: { abs: 1e-5 },
      got: () => Math.acos(Math.min(1, facing)) / DEG,
    },
  ];
});

function named(row: Row): string {
  return `zenith ${row.number("solar_zenith")}, azimuth ${row.number("solar_azimuth")}, tilt ${row.number("surface_tilt")} to ${row.number("surface_azimuth")}, day ${row.number("doy")}`;
}
