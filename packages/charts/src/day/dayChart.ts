import { scaleLinear, type ScaleLinear } from "d3";
import { nothing, svg, type SVGTemplateResult } from "lit";
import { hatchDefs, hatchFill } from "../paper/hatches.ts";
import { bold, fitText, overlaps, textWidth_px, type Box } from "../paper/labels.ts";
import { clamp, nearest, px, sizeOf } from "../paper/numbers.ts";
import { emptyNote, rectAt, ruleAt, sheetOf, textAt, type Part } from "../paper/parts.ts";
import type { ChartGeometry, ChartOptions } from "../paper/picture.ts";
import { sayClock, sayNumber, sayWh } from "../paper/words.ts";
import { daySummary } from "./dayFacts.ts";
import { dayLayers, runsOf, type DayLayer } from "./dayLayers.ts";
import type { DayPicture } from "./dayPicture.ts";

const left_px = 44;
const axis_px = 24;
const keyRow_px = 20;
const leastPlot_px = 150;

interface DayLayout {
  readonly layers: readonly DayLayer[];
  readonly width_px: number;
  readonly height_px: number;
  readonly box: { left: number; top: number; right: number; bottom: number };
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly wide: boolean;
  readonly options: ChartOptions;
}

const highest = (layers: readonly DayLayer[]): number =>
  Math.max(0, ...layers.flatMap((layer) => layer.Wh.map((value, h) => value + (layer.from[h] ?? 0))));

/** One scale for both sides; neither gets under a seventh of the height, so that an empty side still shows its name. */
function mirrored(layers: readonly DayLayer[]): [number, number] {
  const up = highest(layers.filter((layer) => layer.side === "in"));
  const down = highest(layers.filter((layer) => layer.side === "out"));
  const least = Math.max(up, down, 1) / 6;
  return [Math.max(up, least) * 1.04, -Math.max(down, least) * 1.04];
}

function dayLayout(picture: DayPicture, options: ChartOptions): DayLayout {
  const [width_px, asked_px] = sizeOf(options);
  const layers = dayLayers(picture);
  const wide = width_px >= 520;
  const keyRows = wide ? 0 : Math.ceil(layers.length / 2);
  const below_px = axis_px + (keyRows ? keyRows * keyRow_px + 10 : 0);
  const least_px = wide ? Math.max(leastPlot_px, layers.length * keyRow_px + 12) : leastPlot_px;
  const height_px = Math.max(asked_px, 10 + least_px + below_px);
  const right = width_px - (wide ? keyWidth_px(layers, width_px, options) : 10);
  const box = { left: left_px, top: 10, right, bottom: height_px - below_px };
  const x = scaleLinear([0, 24], [box.left, box.right]);
  const y = scaleLinear(mirrored(layers), [box.top, box.bottom]);
  return { layers, width_px, height_px, box, x, y, wide, options };
}

const sayAmount = ({ total_Wh }: DayLayer, { locale, format }: ChartOptions): string =>
  format ? format(total_Wh) : sayWh(total_Wh, locale);

/** Room beside the plot for the longest name in the key, within reason. */
function keyWidth_px(layers: readonly DayLayer[], width_px: number, options: ChartOptions): number {
  const rows = layers.map((layer) => textWidth_px(layer.name) + textWidth_px(sayAmount(layer, options)));
  return clamp(Math.max(0, ...rows) + 50, 170, width_px * 0.4);
}

/** 24 hours about a line: what comes in above it, hatched by kind; what goes out below, a flat tone a load. */
export function dayChart(picture: DayPicture, options: ChartOptions): SVGTemplateResult {
  const layout = dayLayout(picture, options);
  const id = options.id ?? "day";
  const body = svg`${hatchDefs(id)}${nights(picture, layout)}${grid(layout)}${layout.layers.map((layer) => drawLayer(layer, layout, id))}${ruleAt(
    layout.box.left,
    layout.y(0),
    layout.box.right,
    layout.y(0),
    "plain",
  )}${layout.layers.map((layer) => nameOn(layer, layout))}${hourAxis(layout)}${sideNames(layout)}${key(layout, id)}${cursor(layout)}${
    layout.layers.length === 0
      ? emptyNote(layout.width_px, layout.height_px - 40, "Nothing comes in or goes out")
      : nothing
  }`;
  return sheetOf(layout, daySummary(picture, options), body);
}

function nights({ dark }: DayPicture, { box, x }: DayLayout): Part {
  if (!dark) return nothing;
  const { from_h, to_h } = dark;
  const spans = from_h >= to_h ? [[0, to_h] as const, [from_h, 24] as const] : [[from_h, to_h] as const];
  return svg`<g>${spans.map(([from, to]) => rectAt(x(from), box.top, x(to) - x(from), box.bottom - box.top, "night"))}</g>`;
}

function grid({ box, y, options }: DayLayout): SVGTemplateResult {
  const say = options.format ?? ((value: number) => sayNumber(value, options.locale));
  return svg`<g>${y
    .ticks(clamp(Math.floor((box.bottom - box.top) / 40), 2, 8))
    .filter((value) => value !== 0)
    .map(
      (value) =>
        svg`${ruleAt(box.left, y(value), box.right, y(value), "grid")}${textAt(box.left - 6, y(value) + 4, say(Math.abs(value)), "note end")}`,
    )}</g>`;
}

/** Hours far enough apart for their figures; beside the key there is room to set the last one in the middle of its tick. */
function hourAxis({ box, x, wide }: DayLayout): SVGTemplateResult {
  const step = wide && box.right - box.left >= 330 ? 3 : 6;
  const hours = Array.from({ length: 24 / step + 1 }, (_, i) => i * step);
  return svg`<g>${ruleAt(box.left, box.bottom, box.right, box.bottom, "thin")}${hours.map(
    (hour) =>
      svg`${ruleAt(x(hour), box.bottom, x(hour), box.bottom + 4, "thin")}${textAt(
        x(hour),
        box.bottom + 17,
        hour === 24 ? "24:00" : sayClock(hour),
        hour === 24 && !wide ? "label end" : "label middle",
      )}`,
  )}</g>`;
}

const sideNames = (layout: DayLayout): SVGTemplateResult =>
  svg`${sideBoxes(layout).map(({ x, y, text }) => textAt(x, y + 12, text, "strong halo"))}`;

/** The names of the two sides at the left edge, which a load's own name keeps clear of. */
const sideBoxes = ({ box, y }: DayLayout): (Box & { readonly text: string })[] =>
  [
    { text: "in, Wh each hour", top: box.top + 2 },
    { text: "out", top: Math.max(y(0) + 4, box.bottom - 19) },
  ].map(({ text, top }) => ({ text, x: box.left + 6, y: top, width: textWidth_px(text) * bold, height: 16 }));

/** A layer's outline over one stretch of hours: out along its far edge and back along its near one. */
function runPath({ Wh, from, side }: DayLayer, [first, end]: [number, number], { x, y }: DayLayout): string {
  const sign = side === "in" ? 1 : -1;
  const edge = (h: number, far: boolean) => px(y(sign * ((from[h] ?? 0) + (far ? (Wh[h] ?? 0) : 0))));
  const hours = Array.from({ length: end - first }, (_, i) => first + i);
  const out = hours.map((h) => `V${edge(h, true)}H${px(x(h + 1))}`);
  const back = [...hours].reverse().map((h) => `V${edge(h, false)}H${px(x(h))}`);
  return `M${px(x(first))} ${edge(first, false)}${out.join("")}${back.join("")}Z`;
}

function drawLayer(layer: DayLayer, layout: DayLayout, id: string): SVGTemplateResult {
  const d = runsOf(layer.Wh)
    .map((run) => runPath(layer, run, layout))
    .join("");
  return "hatch" in layer.look
    ? svg`<path class="edge" fill=${hatchFill(layer.look.hatch, id)} d=${d}></path>`
    : svg`<path class=${layer.look.classes} d=${d}></path>`;
}

/** The largest box of whole hours a line of text fits in, if any. */
function roomFor(layer: DayLayer, { x, y }: DayLayout): { x: number; y: number } | null {
  const sign = layer.side === "in" ? 1 : -1;
  const width_px = textWidth_px(layer.name) * bold + 4;
  const span = Math.ceil(width_px / (x(1) - x(0)));
  let best: { x: number; y: number; height: number } | null = null;
  for (let h = 0; h + span <= 24; h++) {
    const hours = Array.from({ length: span }, (_, i) => h + i);
    const near = Math.max(...hours.map((hour) => layer.from[hour] ?? 0));
    const far = Math.min(...hours.map((hour) => (layer.from[hour] ?? 0) + (layer.Wh[hour] ?? 0)));
    const height = Math.abs(y(far) - y(near));
    if (far > near && height >= 16 && height > (best?.height ?? 0))
      best = { x: x(h + span / 2), y: (y(sign * near) + y(sign * far)) / 2, height };
  }
  return best;
}

function nameOn(layer: DayLayer, layout: DayLayout): Part {
  const room = roomFor(layer, layout);
  if (!room) return nothing;
  const width = textWidth_px(layer.name) * bold;
  const own = { x: room.x - width / 2, y: room.y - 8, width, height: 16 };
  if (sideBoxes(layout).some((side) => overlaps(own, side))) return nothing;
  const hatched = "hatch" in layer.look || layer.id === "sunUnused";
  return textAt(room.x, room.y + 4, layer.name, hatched ? "strong middle halo" : "strong middle");
}

/** Swatch, name and the day's energy of each layer in the order of the pile: beside it, or under it on a phone. */
function key(layout: DayLayout, id: string): SVGTemplateResult {
  const { layers, wide, box, width_px, options, y } = layout;
  const inside = layers.filter((layer) => layer.side === "in").reverse();
  const ordered = [...inside, ...layers.filter((layer) => layer.side === "out")];
  if (wide) {
    const start = clamp(y(0) - inside.length * keyRow_px - 3, box.top, box.bottom - ordered.length * keyRow_px - 6);
    return svg`<g>${ordered.map((layer, i) =>
      keyRow(
        layer,
        box.right + 18,
        start + i * keyRow_px + (i >= inside.length ? 6 : 0),
        width_px - box.right - 18,
        id,
        options,
      ),
    )}</g>`;
  }
  const half = Math.ceil(ordered.length / 2);
  const column_px = (width_px - 16) / 2;
  return svg`<g>${ordered.map((layer, i) =>
    keyRow(
      layer,
      4 + (i >= half ? column_px + 8 : 0),
      box.bottom + axis_px + 10 + (i % half) * keyRow_px,
      column_px,
      id,
      options,
    ),
  )}</g>`;
}

function keyRow(
  layer: DayLayer,
  x: number,
  top: number,
  width_px: number,
  id: string,
  options: ChartOptions,
): SVGTemplateResult {
  const amount = sayAmount(layer, options);
  const room = width_px - 24 - textWidth_px(amount) - 6;
  const swatch =
    "hatch" in layer.look
      ? rectAt(x, top + 2, 18, 14, "edge", hatchFill(layer.look.hatch, id))
      : rectAt(x, top + 2, 18, 14, layer.look.classes);
  return svg`${swatch}${textAt(x + 24, top + 13, fitText(layer.name, room), "label")}${textAt(x + width_px, top + 13, amount, "note end")}`;
}

function cursor({ box, x, options }: DayLayout): Part {
  const { at } = options;
  if (at === null || at === undefined || !(at >= 0 && at < 24)) return nothing;
  const hour = Math.floor(at);
  return rectAt(x(hour), box.top, x(1) - x(0), box.bottom - box.top, "cursor");
}

/** Positions are clock hours, 0 to 23. */
export function dayGeometry(picture: DayPicture, options: ChartOptions): ChartGeometry {
  const { width_px, height_px, box, x } = dayLayout(picture, options);
  const stops = Array.from({ length: 24 }, (_, h) => h);
  return { width_px, height_px, plot: box, stops, positionAt: (x_px) => nearest(stops, x.invert(x_px) - 0.5) };
}
