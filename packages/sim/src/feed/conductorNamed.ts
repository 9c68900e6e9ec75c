import { hundredth } from "../numeric/hundredth.ts";
import { awgArea_mm2, awgName } from "./awg.ts";
import { diameterCables, soldByDiameter } from "./byDiameter.ts";

/** A conductor as a label or a person names it, in copper. */
export interface NamedConductor {
  readonly name: string;
  readonly area_mm2: number;
  /** what the name hides, in words; null where it says what it holds */
  readonly trap: string | null;
}

const gauges: Readonly<Record<string, number>> = {
  "0": 0,
  "1/0": 0,
  "00": -1,
  "2/0": -1,
  "000": -2,
  "3/0": -2,
  "0000": -3,
  "4/0": -3,
};

/**
 * Reads what is printed on a drum: "16 mm2", "16 mm²", "16 sq mm", "6 AWG", "8 B&S" (the same gauge), "2/0", "6 mm auto".
 * A bare "6 mm" is refused: it may mean the copper or the diameter, and the two differ.
 * @throws RangeError saying what is accepted
 */
export function conductorNamed(text: string): NamedConductor {
  const said = text.trim().toLowerCase().replaceAll(/\s+/g, " ");
  const area = /^(\d+(?:\.\d+)?) ?(?:mm2|mm²|mm\^2|sq\.? ?mm|sqmm)$/.exec(said);
  if (area) return plain(Number(area[1]));
  const auto = /^(\d+(?:\.\d+)?) ?mm (?:auto|automotive)$/.exec(said);
  if (auto) return byDiameter(Number(auto[1]));
  const gauge = /^(\d+|[1-4]\/0) ?(?:awg|b&s|gauge|ga)?$/.exec(said);
  if (gauge && (said !== gauge[1] || said.includes("/"))) return byGauge(gauge[1]!);
  throw new RangeError(
    `a conductor must be given as copper ("16 mm2"), gauge ("6 AWG", "8 B&S", "2/0") or diameter ("6 mm auto"), got "${text}"`,
  );
}

function plain(area_mm2: number): NamedConductor {
  if (!(area_mm2 >= 0.1 && area_mm2 <= 1000)) {
    throw new RangeError(`a conductor's copper must be 0.1 to 1000 mm², got ${area_mm2}`);
  }
  return { name: `${hundredth(area_mm2)} mm²`, area_mm2, trap: null };
}

function byGauge(written: string): NamedConductor {
  const gauge = gauges[written] ?? Number(written);
  return { name: awgName(gauge), area_mm2: awgArea_mm2(gauge), trap: null };
}

function byDiameter(diameter_mm: number): NamedConductor {
  const row = soldByDiameter(diameter_mm);
  if (row === null) {
    const known = diameterCables.map((cable) => cable.diameter_mm).join(", ");
    throw new RangeError(`"mm auto" is known at ${known} mm, got ${diameter_mm}; give the copper in mm²`);
  }
  const trap = `sold as ${diameter_mm} mm by its outside; it holds about ${row.area_mm2} mm² of copper (${row.standing})`;
  return { name: `${diameter_mm} mm auto`, area_mm2: row.area_mm2, trap };
}
