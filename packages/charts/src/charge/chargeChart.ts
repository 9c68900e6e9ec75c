import { nothing, svg, type SVGTemplateResult } from "lit";
import { bold, dodge, textWidth_px, wrapText } from "../paper/labels.ts";
import { dashOf } from "../paper/lineStyles.ts";
import { nearest, sizeOf } from "../paper/numbers.ts";
import { emptyNote, ruleAt, sheetOf, textAt, type Part } from "../paper/parts.ts";
import type { ChartGeometry, ChartOptions } from "../paper/picture.ts";
import { sayDays, sayRange } from "../paper/words.ts";
import { chargeSummary } from "./chargeFacts.ts";
import { chargeFlags, drawFlags, flagsHeight_px, placeFlags } from "./chargeFlags.ts";
import type { ChargePicture, ChargeSetup } from "./chargePicture.ts";
import {
  averageLine,
  chargeBand,
  dayAxis,
  cutOffRange,
  medianLine,
  momentMarks,
  plotGround,
  pointsOf,
  reserveNames,
  reserveRules,
  type PlotFrame,
} from "./chargePlot.ts";
import { chargeAt, chargeScales, chargeSpan_days, type PlotBox } from "./chargeScale.ts";

/** How the picture of charge is drawn. */
export interface ChargeOptions extends ChartOptions {
  /** draws the average sky's line as well, thin and dotted */
  readonly showAverage?: boolean | undefined;
  /** with four setups or more, the id of the one whose band is drawn; the first when left out */
  readonly focus?: string | undefined;
}

const left_px = 44;
const axis_px = 40;
const leader_px = 22;
const leastPlot_px = 130;

interface EndLabel {
  readonly lines: readonly string[];
  readonly note: string;
  readonly height: number;
}

function endLabel(setup: ChargeSetup, picture: ChargePicture, width_px: number, locale: string | undefined): EndLabel {
  const lines = wrapText(setup.name, width_px / bold, 2);
  const { p10, p50, p90 } = setup.days;
  const middle = sayDays(p50, picture.horizon_days, locale);
  const range = sayRange(p10, p90, picture.horizon_days, locale);
  const both = range === middle ? middle : `${middle} (${range.replace(/\u00a0days?$/, "")})`;
  const note = textWidth_px(both) <= width_px ? both : middle;
  return { lines, note, height: lines.length * 14 + 16 + 4 };
}

/** Bands of four setups or more lie on one another until none can be read: then only the one in focus keeps its own. */
function bandShown({ setups }: ChargePicture, { focus }: ChargeOptions, { id }: ChargeSetup, i: number): boolean {
  if (setups.length <= 3) return true;
  return setups.some((setup) => setup.id === focus) ? id === focus : i === 0;
}

interface ChargeLayout extends PlotFrame {
  readonly width_px: number;
  readonly height_px: number;
  readonly flags: ReturnType<typeof placeFlags>;
  readonly ends: readonly EndLabel[];
}

function chargeLayout(picture: ChargePicture, options: ChargeOptions): ChargeLayout {
  const [width_px, asked_px] = sizeOf(options);
  const span_days = chargeSpan_days(picture);
  const labels_px = picture.setups.length === 0 ? 0 : Math.min(width_px * 0.3, 168);
  const right = width_px - (labels_px ? labels_px + leader_px : 12);
  const ends = picture.setups.map((setup) => endLabel(setup, picture, labels_px - 4, options.locale));
  const x = chargeScales({ left: left_px, right, top: 0, bottom: 1 }, span_days).x;
  const named = picture.setups.length > 1;
  const flags = placeFlags(chargeFlags(picture, span_days, named, right - left_px), x, width_px);
  const top = flagsHeight_px(flags) + 6;
  const needed_px = Math.max(leastPlot_px, ...[ends.reduce((total, end) => total + end.height, 0)]);
  const bottom = Math.max(asked_px - axis_px, top + needed_px);
  const box = { left: left_px, top, right, bottom };
  const scales = chargeScales(box, span_days);
  return {
    picture,
    box,
    scales,
    span_days,
    locale: options.locale,
    width_px,
    height_px: bottom + axis_px,
    flags,
    ends,
  };
}

/**
 * Charge against days from arrival, one line style a setup: P10 to P90 band, median, nights shaded, reserve ruled, the
 * cut-off and the food's 5 °C said in words. For two or more setups on a phone use `chargePanels`.
 */
export function chargeChart(picture: ChargePicture, options: ChargeOptions): SVGTemplateResult {
  const layout = chargeLayout(picture, options);
  const { box, scales } = layout;
  const series = picture.setups.map((setup) => pointsOf(setup, layout));
  const body = svg`${plotGround(layout)}${picture.setups.map((setup, i) => (bandShown(picture, options, setup, i) ? chargeBand(series[i] ?? [], scales) : nothing))}${reserveRules(picture.setups, layout)}${
    options.showAverage ? series.map((points) => averageLine(points, scales)) : nothing
  }${drawFlags(layout.flags, box)}${
    picture.setups.length > 1 ? picture.setups.map((setup) => cutOffRange(setup, picture.setups, layout)) : nothing
  }${picture.setups.map((setup, i) => medianLine(setup, series[i] ?? [], scales, i))}${picture.setups.map((setup) =>
    momentMarks(setup, picture.setups, layout),
  )}${reserveNames(picture.setups, layout)}${dayAxis(layout, axisTitle(picture))}${endLabels(layout)}${cursor(layout, options.at)}${
    picture.setups.length === 0
      ? emptyNote(layout.width_px, (box.top + box.bottom) / 2 + box.top, "No setup yet")
      : nothing
  }`;
  return sheetOf(layout, chargeSummary(picture, options), body);
}

export const axisTitle = ({ arrival_h = 15 }: ChargePicture): string =>
  `days from arrival at ${String(Math.floor(arrival_h)).padStart(2, "0")}:00; nights shaded`;

/** Names at the ends of their lines, moved apart, each tied to its line by a leader in the line's own style. */
function endLabels({ picture, box, scales, span_days, ends }: ChargeLayout): SVGTemplateResult {
  const wants = picture.setups.map((setup) => scales.y(chargeAt(setup.charge.p50, span_days) ?? 0));
  const middles = dodge(
    ends.map((end, i) => ({ want: wants[i] as number, size: end.height })),
    box.top,
    box.bottom,
  );
  return svg`<g>${ends.map((end, i) => {
    const top = (middles[i] as number) - end.height / 2;
    const x = box.right + leader_px;
    return svg`${ruleAt(box.right + 2, wants[i] as number, x - 3, middles[i] as number, "leader", dashOf(i))}${end.lines.map(
      (text, l) => textAt(x, top + 13 + l * 14, text, "strong halo"),
    )}${textAt(x, top + 13 + end.lines.length * 14, end.note, "note halo")}`;
  })}</g>`;
}

function cursor({ picture, box, scales, span_days }: ChargeLayout, at: number | null | undefined): Part {
  if (at === null || at === undefined || !(at >= 0 && at <= span_days)) return nothing;
  return cursorIn(picture.setups, box, scales, at);
}

/** A read-out line with a dot on each median. */
export function cursorIn(
  setups: readonly ChargeSetup[],
  box: PlotBox,
  scales: PlotFrame["scales"],
  at: number,
): SVGTemplateResult {
  return svg`<g>${ruleAt(scales.x(at), box.top, scales.x(at), box.bottom, "cursor")}${setups.map((setup) => {
    const level = chargeAt(setup.charge.p50, at);
    return level === null
      ? nothing
      : svg`<circle class="dot" cx=${scales.x(at).toFixed(1)} cy=${scales.y(level).toFixed(1)} r="4"></circle>`;
  })}</g>`;
}

/** Positions are days from arrival; arrow keys step by the hour. */
export function chargeGeometry(picture: ChargePicture, options: ChargeOptions): ChartGeometry {
  const { width_px, height_px, box, scales, span_days } = chargeLayout(picture, options);
  const stops = hourStops(span_days);
  return { width_px, height_px, plot: box, stops, positionAt: (x_px) => nearest(stops, scales.x.invert(x_px)) };
}

export const hourStops = (span_days: number): number[] =>
  Array.from({ length: Math.floor(span_days * 24) + 1 }, (_, hour) => hour / 24);
