import { DEG } from "../../../packages/sim/src/numeric/angle.ts";
import { DIFFUSE_SHAPE, shareAt, shareOver, totalShape } from "../../../packages/sim/src/sun/hourShares.ts";
import type { Check } from "../compare.ts";
import { rowsOf, sourceOf } from "./fixture.ts";

const OWN = "own computation from the published equation" as const;

const points = rowsOf("rt_rd").flatMap((row): Check[] => {
  const [sunset, hour] = [row.number("ws_deg") * DEG, row.number("w_mid_deg") * DEG];
  const base = {
    id: `ωs ${row.number("ws_deg")}°, ω ${row.number("w_mid_deg")}°`,
    unit: "1",
    source: sourceOf("rt_rd"),
    standing: OWN,
    tolerance: { abs: 1e-9 },
  };
  return [
    {
      ...base,
      quantity: "share of an hour in the total, r_t",
      expected: row.number("rt"),
      got: () => shareAt(totalShape(sunset), sunset, hour),
    },
    {
      ...base,
      quantity: "share of an hour in the diffuse, r_d",
      expected: row.number("rd"),
      got: () => shareAt(DIFFUSE_SHAPE, sunset, hour),
    },
  ];
});

const integrals = rowsOf("rt_rd_sums").flatMap((row): Check[] => {
  const degrees = row.number("ws_deg");
  const sunset = degrees * DEG;
  const whole = [{ from_rad: -sunset, to_rad: sunset }];
  const middles = Array.from({ length: 24 }, (_, h) => (h - 11.5) * 15 * DEG);
  const base = { id: `ωs ${degrees}°`, unit: "1", source: sourceOf("rt_rd_sums"), standing: OWN };
  const check = (quantity: string, column: string, got: () => number): Check => ({
    ...base,
    quantity,
    expected: row.number(column),
    tolerance: { abs: 1e-8 }, // nine figures are given
    got,
  });
  return [
    check("a of r_t", "a", () => totalShape(sunset).a),
    check("b of r_t", "b", () => totalShape(sunset).b),
    check("integral of r_t over the day", "rt_integral", () => shareOver(totalShape(sunset), sunset, whole)),
    check("integral of r_d over the day", "rd_integral", () => shareOver(DIFFUSE_SHAPE, sunset, whole)),
    check("sum of r_t at hours' middles", "rt_midpoint_sum", () =>
      middles.reduce((sum, w) => sum + shareAt(totalShape(sunset), sunset, w), 0),
    ),
    check("sum of r_d at hours' middles", "rd_midpoint_sum", () =>
      middles.reduce((sum, w) => sum + shareAt(DIFFUSE_SHAPE, sunset, w), 0),
    ),
  ];
});

export const shareChecks: readonly Check[] = [...points, ...integrals];
