import type { PathPiece } from "../study.ts";
import type { FeedCircuit } from "./circuit.ts";
import { onTheWayThrough_A, pieceLimit_A, pieceName } from "./path.ts";

/** A piece that a relay runs over its rating. */
export interface Overrun {
  readonly by: "fuse" | "plug";
  readonly name: string;
  readonly rated_A: number;
  /** the charge and what loads fed on the way take */
  readonly carried_A: number;
}

/** Every fuse and plug that a charge of so many amps takes over its rating. */
export function relayOverruns(path: readonly PathPiece[], charge_A: number): Overrun[] {
  const onTheWay_A = onTheWayThrough_A(path);
  return path.flatMap((piece, i) => {
    const rated_A = pieceLimit_A(piece);
    const carried_A = charge_A + onTheWay_A[i]!;
    if (rated_A === null || carried_A <= rated_A) return [];
    return [
      { by: piece.kind === "fuse" ? ("fuse" as const) : ("plug" as const), name: pieceName(piece), rated_A, carried_A },
    ];
  });
}

/**
 * Amps that a relay passes into a bank standing at `bank_V` behind `bank_Ohm`, before the bank's acceptance is asked.
 * @param bank_V rested volts and the charging overvoltage together [V]
 */
export function relayAmps_A(circuit: FeedCircuit, source_V: number, bank_V: number, bank_Ohm: number): number {
  const total_Ohm = circuit.resistance_Ohm + bank_Ohm;
  const lead_V = source_V - bank_V;
  if (!(lead_V > 0)) return 0;
  return total_Ohm > 0 ? Math.min(lead_V / total_Ohm, circuit.spare_A) : circuit.spare_A;
}
