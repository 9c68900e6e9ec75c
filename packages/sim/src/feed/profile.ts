import type { PathPiece } from "../study.ts";
import { onTheWayThrough_A, pieceName, pieceResistance_Ohm } from "./path.ts";

/** What happens in one piece of a path. Energy closes: in = out + heat + aside. */
export interface PieceFlow {
  readonly name: string;
  readonly kind: PathPiece["kind"];
  /** through the piece, loads fed further on included [A] */
  readonly amps_A: number;
  readonly in_V: number;
  readonly out_V: number;
  readonly in_W: number;
  readonly out_W: number;
  readonly heat_W: number;
  /** given to a load fed at this point [W] */
  readonly aside_W: number;
}

/**
 * Walks a path from the source, piece by piece, at a charge current.
 * @param source_V volts at the start of the path, as they stand [V]
 * @param charge_A amps at the far end; loads fed on the way come on top [A]
 */
export function pathFlows(path: readonly PathPiece[], source_V: number, charge_A: number): PieceFlow[] {
  const onTheWay_A = onTheWayThrough_A(path);
  let in_V = source_V;
  return path.map((piece, i) => {
    const amps_A = charge_A + onTheWay_A[i]!;
    const drop_V = amps_A * pieceResistance_Ohm(piece);
    const out_V = in_V - drop_V;
    const aside_A = piece.kind === "load" ? piece.amps : 0;
    const flow: PieceFlow = {
      name: pieceName(piece),
      kind: piece.kind,
      amps_A,
      in_V,
      out_V,
      in_W: in_V * amps_A,
      out_W: out_V * (amps_A - aside_A),
      heat_W: drop_V * amps_A,
      aside_W: out_V * aside_A,
    };
    in_V = out_V;
    return flow;
  });
}

/** Volts lost over a path at a charge current [V]. */
export function pathDrop_V(path: readonly PathPiece[], charge_A: number): number {
  const onTheWay_A = onTheWayThrough_A(path);
  return path.reduce((sum, piece, i) => sum + (charge_A + onTheWay_A[i]!) * pieceResistance_Ohm(piece), 0);
}
