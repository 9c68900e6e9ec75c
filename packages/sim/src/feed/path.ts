import { hundredth } from "../numeric/hundredth.ts";
import type { PathPiece } from "../study.ts";
import { cableResistance_Ohm } from "./cable.ts";
import { mustLie } from "../numeric/must.ts";

/** Resistance of one piece of a path: cable there and back, a plug's contacts; a fuse is taken as none. [ohm] */
export function pieceResistance_Ohm(piece: PathPiece): number {
  if (piece.kind === "cable") return cableResistance_Ohm(piece);
  if (piece.kind !== "plug") return 0;
  mustLie("resistance_mOhm", piece.resistance_mOhm, 0, 1000);
  return piece.resistance_mOhm / 1000;
}

/** Resistance of a whole path, source to bank or converter, there and back. [ohm] */
export function pathResistance_Ohm(path: readonly PathPiece[]): number {
  return path.reduce((sum, piece) => sum + pieceResistance_Ohm(piece), 0);
}

/** Amps that loads fed on the way take through each piece, besides the charge: those of every load after it. [A] */
export function onTheWayThrough_A(path: readonly PathPiece[]): number[] {
  return path.map((_, at) => path.slice(at).reduce((sum, piece) => sum + (piece.kind === "load" ? piece.amps : 0), 0));
}

/** What a piece lets through for good: the rating of a fuse or a plug, null for the rest. [A] */
export function pieceLimit_A(piece: PathPiece): number | null {
  if (piece.kind === "fuse") return piece.rated_A;
  return piece.kind === "plug" ? piece.limit_A : null;
}

/** How a piece is named to a person. */
export function pieceName(piece: PathPiece): string {
  if (piece.name) return piece.name;
  switch (piece.kind) {
    case "fuse":
      return `${hundredth(piece.rated_A)} A fuse`;
    case "plug":
      return `${hundredth(piece.limit_A)} A plug`;
    case "cable":
      return `${hundredth(piece.length_m)} m of ${hundredth(piece.area_mm2)} mm²`;
    case "load":
      return `${hundredth(piece.amps)} A load`;
  }
}
