import { awgName } from "./awg.ts";

/**
 * Conductor for a volt drop the way boats are wired: circular mils = K I L / E. Kept as a second opinion beside the
 * resistance table, being the one that a printed chart will show.
 * Source: ABYC E-11 (formula and the SAE minimum areas), as reproduced on public marine pages.
 */
export const dropTable = {
  source: "ABYC E-11 volt-drop formula, SAE minimum conductor areas",
  standing: "published, met through public reproductions",
  /** ohm circular mil per foot */
  K: 10.75,
  /** SAE minimum circular mils, thinnest first; 2/0 is -1. The reproductions met have no 3/0: it stands as 4/0. */
  rows: [
    [18, 1537],
    [16, 2336],
    [14, 3702],
    [12, 5833],
    [10, 9343],
    [8, 14810],
    [6, 24538],
    [4, 37360],
    [2, 62450],
    [1, 77790],
    [0, 98980],
    [-1, 125100],
    [-3, 205500],
  ] as readonly (readonly [gauge: number, circularMils: number])[],
} as const;

/**
 * The gauge for a volt drop, by circular mils.
 * @param roundTrip_ft there and back [ft]
 * @returns null where even 4/0 is too thin
 */
export function gaugeByDrop(amps_A: number, roundTrip_ft: number, drop_V: number): number | null {
  const needed = (dropTable.K * amps_A * roundTrip_ft) / drop_V;
  return dropTable.rows.find(([, circularMils]) => circularMils >= needed)?.[0] ?? null;
}

/** As {@link gaugeByDrop}, in metres one way and as it is written; null where even 4/0 is too thin. */
export function gaugeNameByDrop(amps_A: number, oneWay_m: number, drop_V: number): string | null {
  const gauge = gaugeByDrop(amps_A, (2 * oneWay_m) / 0.3048, drop_V);
  return gauge === null ? null : awgName(gauge);
}
