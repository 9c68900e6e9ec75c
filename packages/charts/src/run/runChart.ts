import { scaleLinear, type ScaleLinear } from "d3";
import { nothing, svg, type SVGTemplateResult } from "lit";
import { bold, fitText, textWidth_px, wrapText } from "../paper/labels.ts";
import { clamp, finite, nearest, px, sizeOf } from "../paper/numbers.ts";
import { emptyNote, rectAt, ruleAt, sheetOf, textAt, type Part } from "../paper/parts.ts";
import type { ChartGeometry, ChartOptions } from "../paper/picture.ts";
import { sayFixed, sayNumber, saySigned, withUnit } from "../paper/words.ts";
import { runSummary } from "./runFacts.ts";
import type { RunPicture, RunPlace } from "./runPicture.ts";

const axis_px = 24;
const dropWidth_px = 62;

interface RunLayout {
  readonly picture: RunPicture;
  readonly options: ChartOptions;
  readonly width_px: number;
  readonly height_px: number;
  readonly top: number;
  readonly row_px: number;
  readonly left: number;
  readonly x: ScaleLinear<number, number>;
  readonly head: readonly string[];
}

/** The volts in play with a little room, never under half a volt across: a small drop is not made to look like a cliff. */
function voltSpan({ points, minimum_V }: RunPicture): [number, number] {
  const volts = [
    ...points.map((point) => finite(`volts at ${point.label}`, point.volts)),
    ...(minimum_V === undefined ? [] : [minimum_V]),
  ];
  if (volts.length === 0) return [12, 14];
  const [low, high] = [Math.min(...volts), Math.max(...volts)];
  const pad = Math.max(0.1, (high - low) * 0.08, (0.8 - (high - low)) / 2);
  return [low - pad, high + pad];
}

function runLayout(picture: RunPicture, options: ChartOptions): RunLayout {
  const [width_px, asked_px] = sizeOf(options);
  const amps = withUnit(sayNumber(finite("amps", picture.amps), options.locale, 1), "A");
  const head = wrapText(`${amps} into the bank, held back by ${picture.limitedBy}`, width_px / bold, 3);
  const top = head.length * 16 + axis_px + (picture.minimum_V === undefined ? 8 : 24);
  const count = picture.points.length;
  const row_px = clamp((asked_px - top - 12) / Math.max(1, count), 46, 68);
  const height_px = count === 0 ? asked_px : top + count * row_px + 4;
  const left = clamp(width_px * 0.32, 92, 220);
  const x = scaleLinear(voltSpan(picture), [left + 76, width_px - dropWidth_px]);
  return { picture, options, width_px, height_px, top, row_px, left, x, head };
}

const rowY = ({ top, row_px }: RunLayout, i: number): number => top + (i + 0.5) * row_px;

/** Read down the page from the source to the bank: each place a row, its volts across, the drop of each piece between. */
export function runChart(picture: RunPicture, options: ChartOptions): SVGTemplateResult {
  const layout = runLayout(picture, options);
  const body =
    picture.points.length === 0
      ? emptyNote(layout.width_px, layout.height_px, "No charge run yet")
      : svg`${layout.head.map((text, i) => textAt(0, 13 + i * 16, text, "strong"))}${axis(layout)}${minimum(layout)}${picture.points.map(
          (point, i) => between(point, i, layout),
        )}${picture.points.map((point, i) => place(point, i, layout))}${cursor(layout)}`;
  return sheetOf(layout, runSummary(picture, options), body);
}

function axis(layout: RunLayout): SVGTemplateResult {
  const { x, height_px, options, head } = layout;
  const y = head.length * 16 + 18;
  const [from, to] = x.range() as [number, number];
  const wanted = x.ticks(Math.max(2, Math.floor((to - from) / 64)));
  const step_px = wanted.length > 1 ? x(wanted[1] as number) - x(wanted[0] as number) : to - from;
  const ticks = wanted.filter((_, i) => i % Math.ceil(48 / step_px) === 0); // d3 may give more than asked for
  const decimals = ticks.some((volts) => Math.abs(volts - Math.round(volts)) > 1e-9) ? 1 : 0;
  return svg`<g>${ticks.map(
    (volts) =>
      svg`${ruleAt(x(volts), y + 5, x(volts), height_px - 2, "grid")}${textAt(x(volts), y, withUnit(sayFixed(volts, options.locale, decimals), "V"), "note middle")}`,
  )}</g>`;
}

function minimum({ picture, x, height_px, width_px, top, options }: RunLayout): Part {
  const { minimum_V } = picture;
  if (minimum_V === undefined) return nothing;
  const text = `converter needs ${withUnit(sayFixed(minimum_V, options.locale, 1), "V")}`;
  const start = clamp(x(minimum_V) + 5, 0, width_px - textWidth_px(text));
  return svg`${ruleAt(x(minimum_V), top - 22, x(minimum_V), height_px - 2, "asked")}${textAt(start, top - 8, text, "label halo")}`;
}

/** The fall from the place before to this one, with its size in words and what lies there. */
function between(point: RunPlace, i: number, layout: RunLayout): Part {
  const before = layout.picture.points[i - 1];
  if (!before) return nothing;
  const { x, left, options, width_px } = layout;
  const [y1, y2] = [rowY(layout, i - 1), rowY(layout, i)];
  const middle = (y1 + y2) / 2;
  const drop = `${saySigned(Math.round((point.volts - before.volts) * 100) / 100, options.locale, 2)}\u00a0V`;
  const at = Math.min(Math.max(x(point.volts), x(before.volts)) + 10, width_px - textWidth_px(drop));
  const piece = point.piece ? textAt(14, middle + 4, fitText(point.piece, left - 18), "note") : nothing;
  return svg`${ruleAt(x(before.volts), y1, x(point.volts), y2, "plain")}${piece}${textAt(at, middle + 4, drop, "note halo")}`;
}

function place(point: RunPlace, i: number, layout: RunLayout): SVGTemplateResult {
  const { x, left, options, picture } = layout;
  const y = rowY(layout, i);
  const short = picture.minimum_V !== undefined && point.volts < picture.minimum_V;
  const lines = wrapText(point.label, left / bold, 2);
  const names = lines.map((text, l) => textAt(0, y + 4 - (lines.length - 1) * 6 + l * 13, text, "strong"));
  const falls = point.volts < (picture.points[i - 1]?.volts ?? -Infinity);
  const said = withUnit(sayFixed(point.volts, options.locale, 2), "V");
  const [dx, dy, side] = falls ? [-9, -4, " end"] : [10, 4, ""];
  return svg`${names}<circle class=${short ? "alarmMark" : "dot"} cx=${px(x(point.volts))} cy=${px(y)} r="5.5"></circle>${textAt(
    x(point.volts) + dx,
    y + dy,
    said,
    `${short ? "alarm" : "strong"} halo${side}`,
  )}`;
}

function cursor(layout: RunLayout): Part {
  const { at } = layout.options;
  if (at === null || at === undefined || !layout.picture.points[at]) return nothing;
  return rectAt(-3, layout.top + at * layout.row_px + 1, layout.width_px + 6, layout.row_px - 2, "cursor");
}

/** Positions are places, from 0 at the source. */
export function runGeometry(picture: RunPicture, options: ChartOptions): ChartGeometry {
  const { width_px, height_px, top, row_px, left } = runLayout(picture, options);
  const stops = picture.points.map((_, i) => i);
  return {
    width_px,
    height_px,
    plot: { left, top, right: width_px, bottom: height_px },
    stops,
    positionAt: (_x_px, y_px) => (stops.length === 0 ? 0 : nearest(stops, (y_px - top) / row_px - 0.5)),
  };
}
