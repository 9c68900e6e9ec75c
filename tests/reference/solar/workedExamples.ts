import { DEG } from "../../../packages/sim/src/numeric/angle.ts";
import { solarLead_h, equationOfTime_min, sunsetHourAngle_deg } from "../../../packages/sim/src/sun/index.ts";
import { beamRatio } from "../../../packages/sim/src/sun/beamRatio.ts";
import { cosBetween, directionOf, sunDirection, type Direction } from "../../../packages/sim/src/sun/direction.ts";
import { extraterrestrialBetween_Wh_m2 } from "../../../packages/sim/src/sun/extraterrestrial.ts";
import { hdkr, planeViews } from "../../../packages/sim/src/sun/hdkr.ts";
import { shareAt, totalShape } from "../../../packages/sim/src/sun/hourShares.ts";
import { sunAt, type SunDay } from "../../../packages/sim/src/sun/sunDay.ts";
import type { Check } from "../compare.ts";
import { cooperDeclination_deg, cosineDistance } from "./cooper.ts";
import { rowsOf, type Row } from "./fixture.ts";

const MJ = 0.0036; // a Wh in MJ
const degrees = (cosine: number): number => Math.acos(Math.min(1, cosine)) / DEG;
const sunFor = (latitude_deg: number, declination_deg: number, hour_deg: number): Direction =>
  sunDirection(sunAt(latitude_deg, declination_deg, 1367), hour_deg * DEG);
const bearing_deg = (sun: Direction): number => ((Math.atan2(sun.east, sun.north) / DEG + 360) % 360) - 180; // from south
const handbookDay = (latitude_deg: number, n: number): SunDay =>
  sunAt(latitude_deg, cooperDeclination_deg(n), 1367 * cosineDistance(n));
const whole_MJ = (day: SunDay): number => MJ * extraterrestrialBetween_Wh_m2(day, -day.sunset_rad, day.sunset_rad);
const between_MJ = (day: SunDay, from_deg: number, to_deg: number): number =>
  MJ * extraterrestrialBetween_Wh_m2(day, from_deg * DEG, to_deg * DEG);
const shareIn = (sunset_deg: number, hour_deg: number): number =>
  shareAt(totalShape(sunset_deg * DEG), sunset_deg * DEG, hour_deg * DEG);

/** Slope 45° facing 15° west of south, Madison, 10:30 solar on 13 February. */
const first = { sun: sunFor(43, -14, -22.5), plane: directionOf(45, 195) };
/** Slope 60° facing south, 40° N, 9 to 10 solar on 20 February. */
const second = {
  day: sunAt(40, -11.6, 1367 * cosineDistance(51)),
  sun: sunFor(40, -11.6, -37.5),
  plane: directionOf(60, 180),
};
const august = handbookDay(43, 235).sunset_rad / DEG;

/** What we compute of each example, by its id. Declinations are the handbook's own, rounded as it rounds them. */
const computed: Readonly<Record<string, () => number>> = {
  "DB-1.5.1a": () => equationOfTime_min(34),
  "DB-1.5.1b": () => 630 + 60 * solarLead_h({ longitude_deg: -89.4, utcOffset_h: -6 }, 34),
  "DB-1.8.1": () => beamRatio(first.sun, first.plane),
  "DB-1.6.2a": () => degrees(sunFor(43, -14, -37.5).up),
  "DB-1.6.2b": () => bearing_deg(sunFor(43, -14, -37.5)),
  "DB-1.6.2d": () => bearing_deg(sunFor(43, 23.1, 97.5)),
  "DB-1.6.3a": () => sunsetHourAngle_deg(43, -2.4),
  "DB-1.6.3b": () => degrees(sunFor(43, -2.4, 60).up),
  "DB-1.6.3d": () => profile_deg(sunFor(43, -2.4, 60), 25),
  "DB-1.8.2": () => beamRatio(sunFor(40, -13, -37.5), directionOf(30, 180)),
  "DB-1.10.1c": () => whole_MJ(handbookDay(43, 105)),
  "DB-1.10.2": () => between_MJ(handbookDay(43, 105), -30, -15),
  "DB-2.11.1b": () => 23.0 / whole_MJ(handbookDay(38.6, 246)),
  "DB-2.12.1b": () => 23.0 / whole_MJ(handbookDay(43, 162)),
  "DB-2.13.1a": () => sunsetHourAngle_deg(-38, -20.9),
  "DB-2.13.2a": () => shareIn(august, 22.5),
  "DB-2.13.2b": () => 31.4 * shareIn(august, 22.5),
  "DB-2.13.3a": () => shareIn(113.4, -22.5),
  "DB-2.15.1a": () => between_MJ(second.day, -45, -30),
  "DB-2.15.1b": () => 1.04 / between_MJ(second.day, -45, -30),
  "DB-2.15.1e": () => beamRatio(second.sun, second.plane),
  "DB-2.15.1f": () => 0.244 * 1.71 + 0.796 * planeViews(60).sky + 1.04 * planeViews(60, 0.6).ground,
  "DB-2.16.1a": () => (hdkr(1.04, 0.796, 2.34, 1, { sky: 0, ground: 0, horizon: 0 }) - 0.244) / 0.796,
  "DB-2.16.2a": () => degrees(cosBetween(second.sun, second.plane)),
  "DB-2.16.2b": () => degrees(second.sun.up),
  "FAO56-8d": () => whole_MJ(sunAt(-20, 0.12 / DEG, (0.082e6 / 60) * 0.985)),
  "FAO56-9": () => (2 / 15) * sunsetHourAngle_deg(-20, 0.12 / DEG),
  "KAL-2.7": () => degrees(cosBetween(sunFor(35, 23.35, 30), directionOf(45, 190))),
  "SIM-2.14.1": () => degrees(sunFor(45, -7.15, -82.5).up),
  "GOS-2.7b": () => degrees(cosBetween(sunFor(-35.3, -17.51, -4.2), directionOf(30, 350))),
  ...Object.fromEntries(
    [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344].map((n, month) => [
      `DB-H0-43N-${String(month + 1).padStart(2, "0")}`,
      () => whole_MJ(handbookDay(43, n)),
    ]),
  ),
};

/** Rows we do not compute, and why. Together with those above they must be all rows. */
const notOurs: readonly { readonly id: RegExp; readonly why: string }[] = [
  { id: /^(DB-1\.6\.1a|DB-1\.10\.1a|Klein-\d+|FAO56-8b)$/, why: "declination by Cooper's formula; ours is Spencer's" },
  { id: /^FAO56-8a$/, why: "distance by a cosine (0.985); ours is Spencer's (0.982; the sun itself 0.983)" },
  { id: /^DB-2\.8\.1/, why: "a clear-sky model; our skies come from measured irradiation" },
  {
    id: /^DB-2\.12\.1c$|^DB-2\.19\.1-HT/,
    why: "monthly diffuse and a monthly even sky; ours is by day and hour, HDKR",
  },
  { id: /^DB-2\.15\.1c$/, why: "hourly diffuse correlation; ours is the daily one" },
  { id: /^DB-2\.16\.2[cefgi]$/, why: "air mass and Perez's model" },
  { id: /^FAO56-(10|2)$/, why: "sunshine hours and air pressure" },
];

function profile_deg(sun: Direction, westOfSouth_deg: number): number {
  const along = directionOf(90, 180 + westOfSouth_deg);
  return Math.atan2(sun.up, cosBetween(sun, along)) / DEG;
}

/** "Quoted" rows were seen in print or in public tests, the others are remembered. */
const standing = (row: Row): Check["standing"] =>
  row.text("provenance").includes("quoted") ? "published" : "from memory";

const examples = rowsOf("worked_examples").flatMap((row): Check[] => {
  const got = computed[row.text("id")];
  if (got === undefined) {
    if (notOurs.some(({ id }) => id.test(row.text("id")))) return [];
    throw new Error(`worked example ${row.text("id")} is neither computed nor named as not ours`);
  }
  return [
    {
      id: row.text("id"),
      quantity: "worked examples",
      unit: "as printed",
      source: row.text("source"),
      standing: standing(row),
      expected: row.number("published"),
      tolerance: { abs: row.number("tolerance") },
      got,
    },
  ];
});

/** Of the monthly tilted example, the steps before its monthly sky. */
const madison = rowsOf("db_example_2_19_1").flatMap((row): Check[] => {
  const day = handbookDay(43, row.number("n"));
  const check = (quantity: string, column: string, got: () => number): Check => ({
    id: `month ${row.number("month")}`,
    quantity: `Madison, ${quantity}`,
    unit: "as printed",
    source: "Duffie & Beckman, Ex 2.19.1 (4th ed.)",
    standing: "own computation from the published equation",
    expected: row.number(column),
    tolerance: { rel: 1e-5 }, // seven figures are given
    got,
  });
  return [
    check("H0 of the mean day", "H0", () => whole_MJ(day)),
    check("clearness of the month", "KT", () => row.number("H") / whole_MJ(day)),
    check("sunset hour angle", "ws", () => day.sunset_rad / DEG),
  ];
});

export const workedExampleChecks: readonly Check[] = [...examples, ...madison];
