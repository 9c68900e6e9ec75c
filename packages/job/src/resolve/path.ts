import { awgArea_mm2, soldByDiameter, type PathPiece } from "@stayput/sim";
import type { PathInJob } from "../schema/path.ts";

type PieceInJob = PathInJob[number];
type CableInJob = Extract<PieceInJob, { kind: "cable" }>;

/** A path with every cable in copper. `note` is told of sizes that hold less than they sound. */
export function resolvePath(path: PathInJob, note: (text: string) => void): PathPiece[] {
  return path.map((piece) => (piece.kind === "cable" ? resolveCable(piece, note) : piece));
}

function resolveCable(cable: CableInJob, note: (text: string) => void): PathPiece {
  const { kind, length_m, temp_C, name } = cable;
  return { kind, length_m, area_mm2: area_mm2(cable, note), conductorClass: cable.class, temp_C, name };
}

function area_mm2({ area_mm2, awg, autoSize_mm }: CableInJob, note: (text: string) => void): number {
  if (area_mm2 !== undefined) return area_mm2;
  if (awg !== undefined) return awgArea_mm2(gaugeOf(awg));
  const sold = soldByDiameter(autoSize_mm ?? NaN);
  if (sold === null) throw new RangeError("a cable without a size reached the simulation");
  note(
    `cable sold as ${sold.diameter_mm} mm by its diameter is taken as ${sold.area_mm2} mm² of copper ` +
      `(${sold.standing}); measure it or ask`,
  );
  return sold.area_mm2;
}

/** "4/0" is -3, "1/0" is 0, "10" is 10. */
const gaugeOf = (awg: string): number => (awg.endsWith("/0") ? 1 - Number(awg[0]) : Number(awg));
