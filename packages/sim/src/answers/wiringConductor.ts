import { acceptanceAt_A, type BankModel } from "../bank/index.ts";
import {
  ampacity_A,
  ampacityTable,
  areaForAmps_mm2,
  awgAtLeast,
  awgName,
  fuseMargin,
  pathDrop_V,
  standardAreas_mm2,
  type Laying,
} from "../feed/index.ts";
import type { Feed, PathPiece } from "../study.ts";
import type { AmpacityRow, ConductorSize } from "./wiringTypes.ts";
import { amps } from "./words.ts";

/** A pair on its own, part of it beside the engine: how a charge run is laid. */
export const besideEngine: Laying = { bundle: 2, engineSpace: true };
/** A pair on its own inside the van. */
export const inside: Laying = { bundle: 2, engineSpace: false };

const thinnest_mm2 = standardAreas_mm2[0]!;
const thickest_mm2 = standardAreas_mm2.at(-1)!;

/** One way, all pieces together [m]. */
export const lengthOf_m = (path: readonly PathPiece[]): number =>
  path.reduce((sum, piece) => sum + (piece.kind === "cable" ? piece.length_m : 0), 0);

/** The thinnest conductor of a path; null where it has none [mm²]. */
export function thinnestOf_mm2(path: readonly PathPiece[]): number | null {
  const areas = path.flatMap((piece) => (piece.kind === "cable" ? [piece.area_mm2] : []));
  return areas.length > 0 ? Math.min(...areas) : null;
}

/** The same path with every cable of one size. */
export const allOf = (path: readonly PathPiece[], area_mm2: number): PathPiece[] =>
  path.map((piece) => (piece.kind === "cable" ? { ...piece, area_mm2 } : piece));

/**
 * The least copper, the same all along, that keeps a path's drop within `drop_V`; plugs and loads fed on the way counted.
 * Resistance falls as copper grows, so bisection finds it. Null where 240 mm² is too thin (or the plugs alone lose more).
 */
export function areaForDrop_mm2(path: readonly PathPiece[], amps_A: number, drop_V: number): number | null {
  const within = (area_mm2: number) => pathDrop_V(allOf(path, area_mm2), amps_A) <= drop_V;
  if (!within(thickest_mm2)) return null;
  if (within(thinnest_mm2)) return thinnest_mm2;
  let thin = thinnest_mm2;
  let thick = thickest_mm2;
  for (let i = 0; i < 50; i++) {
    const middle = (thin + thick) / 2;
    if (within(middle)) thick = middle;
    else thin = middle;
  }
  return thick;
}

/**
 * Amps that a charge run is sized on. A converter at full output is a constant power, so its input amps are taken at the
 * source's lowest volts less the drop allowed; a relay passes what a bank at its reserve takes at the source's volts less that
 * drop, up to the spare amps.
 */
export function sizingAmps_A(feed: Feed, model: BankModel, drop_V: number): number {
  if (feed.kind === "relay") {
    const reserve_Ah = model.reserve_Ah;
    return Math.min(feed.source.spare_A, acceptanceAt_A(model, reserve_Ah, feed.source.volts - drop_V));
  }
  const input_V = Math.max(1, lowest_V(feed) - drop_V);
  return (feed.rated_A * feed.count * model.absorption_V) / feed.efficiency / input_V;
}

/** What a feed's source is called, whatever the bank is: 12 or 24. Drops are shares of it. [V] */
export const sourceNominal_V = ({ source }: Feed): 12 | 24 => (source.volts > 18 ? 24 : 12);

/** The lowest that a feed's source stands at for any part of a drive. [V] */
export const lowest_V = ({ source }: Feed): number =>
  source.low_V === null || source.lowShare === 0 ? source.volts : source.low_V;

/** A size for a drop, as it is sold. */
export function sizeForDrop(
  purpose: ConductorSize["purpose"],
  path: readonly PathPiece[],
  amps_A: number,
  drop_V: number,
): ConductorSize {
  const area_mm2 = drop_V > 0 ? areaForDrop_mm2(path, amps_A, drop_V) : null;
  return sold(purpose, amps_A, drop_V, area_mm2, area_mm2 === null ? whyNone(path, amps_A, drop_V) : null);
}

function whyNone(path: readonly PathPiece[], amps_A: number, drop_V: number): string {
  if (drop_V <= 0) return "none: the source itself stands under it";
  const plugs = path.filter(({ kind }) => kind !== "cable");
  return pathDrop_V(plugs, amps_A) >= drop_V
    ? "none: plugs and sockets alone lose more than that, so they come first"
    : "more copper than is sold: two runs side by side, or a shorter way";
}

/** The size that carries a fuse's margin over the running current for good. */
export function sizeForAmps(amps_A: number, laying: Laying): ConductorSize {
  return sold("amps it carries", amps_A, null, areaForAmps_mm2(amps_A * fuseMargin, laying));
}

/** The thicker of two sizes: null copper (nothing will do) counts as thickest. */
export function thicker(a: ConductorSize, b: ConductorSize): ConductorSize {
  return (a.area_mm2 ?? Infinity) >= (b.area_mm2 ?? Infinity) ? a : b;
}

/** The size to pull: for 3 %, or 5 % where nothing keeps 3 %, and never less than carries the amps. */
export function sizeToUse(sizes: readonly ConductorSize[]): ConductorSize {
  const sizeFor = (purpose: ConductorSize["purpose"]) => sizes.find((size) => size.purpose === purpose)!;
  const [three, five] = [sizeFor("3 % drop"), sizeFor("5 % drop")];
  return thicker(three.area_mm2 === null && five.area_mm2 !== null ? five : three, sizeFor("amps it carries"));
}

export function sold(
  purpose: ConductorSize["purpose"],
  amps_A: number,
  drop_V: number | null,
  area_mm2: number | null,
  hopeless: string | null = area_mm2 === null ? "more copper than the table has: two runs side by side" : null,
): ConductorSize {
  const standard_mm2 = area_mm2 === null ? null : standardAtLeast(area_mm2);
  const gauge = area_mm2 === null ? null : awgAtLeast(area_mm2 * 0.999);
  const awg = gauge === null ? null : awgName(gauge);
  const size = { purpose, amps_A, drop_V, area_mm2, standard_mm2, awg, hopeless, forSetup: null };
  return { ...size, sentence: sizeSentence(size) };
}

const standardAtLeast = (area_mm2: number): number | null =>
  standardAreas_mm2.find((standard) => standard >= area_mm2 * 0.999) ?? null;

/** "35 mm² or 2 AWG". */
export function sizeName({ standard_mm2, awg, hopeless }: Omit<ConductorSize, "sentence">): string {
  if (standard_mm2 === null) return hopeless ?? "more copper than is sold";
  return awg === null ? `${standard_mm2} mm²` : `${standard_mm2} mm² or ${awg}`;
}

function sizeSentence(size: Omit<ConductorSize, "sentence">): string {
  const allowed = size.drop_V === null ? "" : ` losing at most ${Math.max(0, size.drop_V).toFixed(2)} V`;
  return `For ${size.purpose}: ${amps(size.amps_A)}${allowed} ${size.standard_mm2 === null ? ":" : "asks for"} ${sizeName(size)}.`;
}

/** What a conductor carries, by how it is laid. */
export function ampacityRows(area_mm2: number | null): AmpacityRow[] {
  const rows: [string, Laying][] = [
    ["a pair on its own, 30 °C", inside],
    ["a pair on its own, beside the engine", besideEngine],
    ["in a loom of 4 to 6 conductors", { bundle: 4, engineSpace: false }],
    ["in a loom of 4 to 6 conductors, beside the engine", { bundle: 4, engineSpace: true }],
  ];
  return rows.map(([laid, laying]) => ({ laid, amps_A: area_mm2 === null ? null : ampacity_A(area_mm2, laying) }));
}

export const ampacityCredit = {
  name: ampacityTable.name,
  source: ampacityTable.source,
  standing: `${ampacityTable.standing}. Much automotive cable is of 80 or 90 °C insulation and carries less: read its print`,
};
