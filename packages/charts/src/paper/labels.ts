import { clamp, sum } from "./numbers.ts";

const narrow = new Set(Array.from("iljtfrI.,:;'|!()[]- \u00a0"));
const wide = new Set(Array.from("mwMW@%—"));

function charWidth_em(char: string): number {
  if (narrow.has(char)) return 0.36;
  if (wide.has(char)) return 0.92;
  if (char >= "A" && char <= "Z") return 0.72;
  if (char >= "0" && char <= "9") return 0.64;
  return char > "\u2e80" ? 1.05 : 0.6;
}

/**
 * Room a line of text needs, estimated without a DOM and on the wide side: two common sans-serif faces come out at 78
 * to 101 % of it (a wide one 96 to 101, a narrow one 78 to 95), measured in a browser at 12 px.
 */
export const textWidth_px = (text: string, size_px = 12): number => sum(Array.from(text, charWidth_em)) * size_px;

/** Bold faces run wider by up to this. */
export const bold = 1.15;

/** Text cut to a width, with an ellipsis where something was lost. */
export function fitText(text: string, width_px: number, size_px = 12): string {
  if (textWidth_px(text, size_px) <= width_px) return text;
  const chars = Array.from(text);
  while (chars.length > 1 && textWidth_px(`${chars.join("")}…`, size_px) > width_px) chars.pop();
  return `${chars.join("").trimEnd()}…`;
}

/** Text broken at spaces into lines of a width; what does not fit the last line is cut. */
export function wrapText(text: string, width_px: number, maxLines: number, size_px = 12): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    const fits = last !== undefined && textWidth_px(longer, size_px) <= width_px;
    if (fits || lines.length === maxLines) lines[Math.max(lines.length - 1, 0)] = longer;
    else lines.push(word);
  }
  return lines.map((line) => fitText(line, width_px, size_px));
}

export interface Wanted {
  /** where the middle would like to be */
  readonly want: number;
  readonly size: number;
}

interface Cluster {
  readonly members: number[];
  size: number;
  /** sum over members of where each would start the cluster */
  wants: number;
}

const startOf = (cluster: Cluster, from: number, to: number): number =>
  clamp(cluster.wants / cluster.members.length, from, Math.max(from, to - cluster.size));

/**
 * Moves labels along one axis so that none overlap, each as near to where it wants to be as the rest allow (clusters
 * share the least squared displacement: pool adjacent violators). Keeps their order. When they cannot all fit between
 * `from` and `to` they run on past `to`, still without overlap.
 *
 * @returns middles, in the order given
 */
export function dodge(labels: readonly Wanted[], from: number, to: number): number[] {
  const order = labels.map((_, i) => i).sort((a, b) => at(labels, a).want - at(labels, b).want || a - b);
  const clusters: Cluster[] = [];
  for (const i of order) {
    const { want, size } = at(labels, i);
    let last: Cluster = { members: [i], size, wants: want - size / 2 };
    for (let before = clusters.at(-1); before; before = clusters.at(-1)) {
      if (startOf(before, from, to) + before.size <= startOf(last, from, to)) break;
      last = joined(before, last);
      clusters.pop();
    }
    clusters.push(last);
  }
  return spread(labels, clusters, from, to);
}

const joined = (a: Cluster, b: Cluster): Cluster => ({
  members: [...a.members, ...b.members],
  size: a.size + b.size,
  wants: a.wants + b.wants - a.size * b.members.length,
});

function spread(labels: readonly Wanted[], clusters: readonly Cluster[], from: number, to: number): number[] {
  const middles = new Array<number>(labels.length).fill(0);
  for (const cluster of clusters) {
    let edge = startOf(cluster, from, to);
    for (const i of cluster.members) {
      middles[i] = edge + at(labels, i).size / 2;
      edge += at(labels, i).size;
    }
  }
  return middles;
}

const at = (labels: readonly Wanted[], i: number): Wanted => labels[i] as Wanted;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const overlaps = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** The first place on a list that touches nothing already placed and stays inside; null where there is none. */
export const firstFree = (places: readonly Box[], taken: readonly Box[], inside: Box): Box | null =>
  places.find((place) => within(place, inside) && !taken.some((other) => overlaps(place, other))) ?? null;

const within = (a: Box, b: Box): boolean =>
  a.x >= b.x && a.y >= b.y && a.x + a.width <= b.x + b.width && a.y + a.height <= b.y + b.height;

/**
 * Rows for labels that hang over points along a line, so that none overlap. Row 0 is nearest the line. Taken from the
 * right, so that a label's own leader, dropped from its left end, passes beside those below it and not through them.
 */
export function rowsFor(spans: readonly { readonly from: number; readonly to: number }[]): number[] {
  const placed: { from: number; to: number; row: number; i: number }[] = [];
  const rightmostFirst = spans.map((span, i) => ({ ...span, i })).sort((a, b) => b.from - a.from || a.i - b.i);
  for (const span of rightmostFirst) {
    const under = placed.filter((other) => other.from < span.to && span.from < other.to);
    placed.push({ ...span, row: 1 + Math.max(-1, ...under.map((other) => other.row)) });
  }
  return placed.sort((a, b) => a.i - b.i).map(({ row }) => row);
}
