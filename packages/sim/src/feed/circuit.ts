import type { ConverterFeed, Feed, PathPiece, Source } from "../study.ts";
import { mustLie } from "../numeric/must.ts";
import { converterHeld_W } from "./converter.ts";
import { onTheWayThrough_A, pathResistance_Ohm, pieceLimit_A, pieceName, pieceResistance_Ohm } from "./path.ts";

/** A part of each driving hour at one source voltage. */
export interface SourceShare {
  /** open-circuit volts that the charge sees: the source's, less the drop that loads fed on the way cause. [V] */
  readonly source_V: number;
  /** of the hour; the weights of a circuit sum to 1 */
  readonly weight: number;
  /** the most that a converter gives from it, its own rating left out [W]; 0 for a relay */
  readonly held_W: number;
}

/** The least of the amps that a path lets a charge take, and what sets it. */
export interface AmpLimit {
  readonly by: "fuse" | "plug" | "source";
  readonly name: string;
  readonly limit_A: number;
}

/** Converters in parallel, as one. */
export interface ConverterPart {
  /** output amps of all of them together */
  readonly rated_A: number;
  readonly efficiency: number;
  readonly minInput_V: number;
}

/** A feed worked out once, so that an hour costs no more than a few multiplications. */
export interface FeedCircuit {
  readonly kind: Feed["kind"];
  /** source to bank or converter, there and back */
  readonly resistance_Ohm: number;
  readonly shares: readonly SourceShare[];
  /** the same as numbers in a row, for the hourly loop: volts, weight and held watts of each */
  readonly sources: Float64Array;
  /**
   * The source's amps left for charging after loads fed on the way. All that holds a relay besides the bank and the
   * path's resistance: a fuse or a plug does not hold it back, it runs over them until one gives, and is flagged.
   */
  readonly spare_A: number;
  /** the least of fuses, plugs and the source's spare amps, loads fed on the way taken off */
  readonly limit: AmpLimit;
  /** null for a relay */
  readonly converter: ConverterPart | null;
}

/**
 * Works a feed out once.
 * @throws RangeError naming the field, what was given and what is accepted
 */
export function prepareFeed(feed: Feed): FeedCircuit {
  checkSource(feed.source);
  feed.path.forEach(checkPiece);
  const onTheWay_A = onTheWayThrough_A(feed.path);
  const spare_A = Math.max(0, feed.source.spare_A - (onTheWay_A[0] ?? 0));
  const circuit = {
    kind: feed.kind,
    resistance_Ohm: pathResistance_Ohm(feed.path),
    spare_A,
    limit: leastLimit(feed.path, onTheWay_A, spare_A),
    converter: feed.kind === "converter" ? converterPart(feed) : null,
  };
  const shares = sourceShares(feed.source, dropOnTheWay_V(feed.path, onTheWay_A)).map((share) => ({
    ...share,
    held_W: converterHeld_W(circuit, share.source_V),
  }));
  const sources = Float64Array.from(shares.flatMap(({ source_V, weight, held_W }) => [source_V, weight, held_W]));
  return { ...circuit, shares, sources };
}

/** The volts that a source stands at, and for what share of a drive: one row where it is fixed. */
export function sourceShares(source: Source, drop_V: number): Omit<SourceShare, "held_W">[] {
  const { volts, low_V, lowShare } = source;
  const share = (source_V: number, weight: number) => ({ source_V: Math.max(0, source_V - drop_V), weight });
  if (low_V === null) return [share(volts, 1)];
  return [share(low_V, lowShare), share(volts, 1 - lowShare)].filter(({ weight }) => weight > 0);
}

/** Volts lost to loads fed on the way before any charge flows. */
function dropOnTheWay_V(path: readonly PathPiece[], onTheWay_A: readonly number[]): number {
  return path.reduce((sum, piece, i) => sum + pieceResistance_Ohm(piece) * onTheWay_A[i]!, 0);
}

function leastLimit(path: readonly PathPiece[], onTheWay_A: readonly number[], spare_A: number): AmpLimit {
  let least: AmpLimit = { by: "source", name: "the source's spare amps", limit_A: spare_A };
  path.forEach((piece, i) => {
    const rated_A = pieceLimit_A(piece);
    if (rated_A === null) return;
    const limit_A = Math.max(0, rated_A - onTheWay_A[i]!);
    const by = piece.kind === "fuse" ? "fuse" : "plug";
    if (limit_A < least.limit_A) least = { by, name: pieceName(piece), limit_A };
  });
  return least;
}

function converterPart({ rated_A, count, efficiency, minInput_V }: ConverterFeed): ConverterPart {
  mustLie("feed.rated_A", rated_A, 0, 1000);
  if (!(Number.isInteger(count) && count >= 1 && count <= 8)) {
    throw new RangeError(`feed.count must be a whole number from 1 to 8, got ${String(count)}`);
  }
  mustLie("feed.efficiency", efficiency, 0.5, 1);
  mustLie("feed.minInput_V", minInput_V, 0, 60);
  return { rated_A: rated_A * count, efficiency, minInput_V };
}

function checkSource({ volts, low_V, lowShare, spare_A }: Source): void {
  mustLie("feed.source.volts", volts, 6, 60);
  if (low_V !== null) mustLie("feed.source.low_V", low_V, 6, volts);
  mustLie("feed.source.lowShare", lowShare, 0, 1);
  mustLie("feed.source.spare_A", spare_A, 0, 1000);
}

function checkPiece(piece: PathPiece, i: number): void {
  const at = `feed.path[${i}]`;
  if (piece.kind === "fuse") mustLie(`${at}.rated_A`, piece.rated_A, 0.1, 1000);
  if (piece.kind === "load") mustLie(`${at}.amps`, piece.amps, 0, 1000);
  if (piece.kind === "plug") {
    mustLie(`${at}.limit_A`, piece.limit_A, 0.1, 1000);
    mustLie(`${at}.resistance_mOhm`, piece.resistance_mOhm, 0, 1000);
  }
  if (piece.kind === "cable") {
    mustLie(`${at}.length_m`, piece.length_m, 0, 200);
    mustLie(`${at}.area_mm2`, piece.area_mm2, 0.1, 1000);
    mustLie(`${at}.temp_C`, piece.temp_C, -40, 150);
  }
}
