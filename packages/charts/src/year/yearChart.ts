import { scaleBand, scaleSqrt, type ScaleBand, type ScalePower } from "d3";
import type { Days } from "@stayput/sim";
import { nothing, svg, type SVGTemplateResult } from "lit";
import { bold, dodge, wrapText } from "../paper/labels.ts";
import { dashOf, pointMark } from "../paper/lineStyles.ts";
import { clamp, finite, nearest, px, sizeOf } from "../paper/numbers.ts";
import { emptyNote, rectAt, ruleAt, sheetOf, textAt, type Part } from "../paper/parts.ts";
import type { ChartGeometry, ChartOptions } from "../paper/picture.ts";
import { sayMonth, sayNumber } from "../paper/words.ts";
import { yearSummary } from "./yearFacts.ts";
import type { YearPicture } from "./yearPicture.ts";

const left_px = 64;
const axis_px = 26;
const rungs = [0, 1, 2, 3, 5, 7, 10, 14, 21, 30, 45, 60, 90, 180, 365];

interface YearLayout {
  readonly picture: YearPicture;
  readonly options: ChartOptions;
  readonly width_px: number;
  readonly height_px: number;
  readonly box: { left: number; top: number; right: number; bottom: number };
  readonly x: ScaleBand<number>;
  readonly y: ScalePower<number, number>;
  readonly top_days: number;
  readonly wide: boolean;
}

type Setup = YearPicture["setups"][number];
const everyDays = ({ setups }: YearPicture): Days[] =>
  setups.flatMap(({ months }) => months.flatMap(({ drawn }) => [drawn.p10, drawn.p50, drawn.p90]));

/** The first rung at or above every figure; the horizon where any did not run down. */
function topOf(picture: YearPicture): number {
  const all = everyDays(picture);
  if (all.includes(null)) return Math.max(1, picture.horizon_days);
  const most = Math.max(1, picture.nights ?? 0, ...all.map((days) => finite("days", days as number)));
  return rungs.find((rung) => rung >= most) ?? most;
}

function yearLayout(picture: YearPicture, options: ChartOptions): YearLayout {
  const [width_px, asked_px] = sizeOf(options);
  const wide = width_px >= 520;
  const keyRows = wide ? 0 : picture.setups.length;
  const height_px = Math.max(asked_px, 150 + axis_px + keyRows * 20, picture.setups.length * 34 + axis_px + 24);
  const below_px = axis_px + (keyRows ? keyRows * 20 + 8 : 0);
  const box = { left: left_px, top: 18, right: width_px - (wide ? 170 : 6), bottom: height_px - below_px };
  const months = Array.from({ length: 12 }, (_, i) => i + 1);
  const top_days = topOf(picture);
  return {
    picture,
    options,
    width_px,
    height_px,
    box,
    wide,
    top_days,
    x: scaleBand(months, [box.left, box.right]).paddingInner(0.24).paddingOuter(0.12),
    y: scaleSqrt([0, top_days], [box.bottom, box.top]),
  };
}

/**
 * Days for each month: a whisker from P10 to P90 and a mark at the median for each setup, medians joined in the setup's
 * line style. Days stand on a square-root scale, so that two days and three can be told apart under a month or more.
 */
export function yearChart(picture: YearPicture, options: ChartOptions): SVGTemplateResult {
  const layout = yearLayout(picture, options);
  const body = svg`${monthShade(layout)}${ground(layout)}${picture.setups.map((setup, i) => whiskers(setup, i, layout))}${picture.setups.map(
    (setup, i) => medians(setup, i, layout),
  )}${layout.wide ? endLabels(layout) : keyBelow(layout)}${cursor(layout)}${
    picture.setups.length === 0
      ? emptyNote(layout.width_px, layout.box.top + layout.box.bottom, "No setup yet")
      : nothing
  }`;
  return sheetOf(layout, yearSummary(picture, options), body);
}

function monthShade({ picture, x, box }: YearLayout): Part {
  const from = picture.month ? x(picture.month) : undefined;
  if (from === undefined) return nothing;
  const pad = (x.step() - x.bandwidth()) / 2;
  return rectAt(from - pad, box.top, x.step(), box.bottom - box.top, "night");
}

/** Rungs of the day ladder that stand at least a line of text apart, from the top down, and clear of the nights asked. */
function shownRungs({ y, top_days, picture }: YearLayout): number[] {
  const asked = askedNights(picture, top_days);
  const clear = (days: number) => asked === null || Math.abs(y(days) - y(asked)) >= 13;
  const shown = [top_days]; // the top rung holds its place even where the nights asked take over its words
  for (const rung of rungs.filter((days) => days > 0 && days < top_days && clear(days)).reverse())
    if (y(rung) - y(shown.at(-1) as number) >= 15 && y(0) - y(rung) >= 15) shown.push(rung);
  return [...shown.filter(clear), 0];
}

const askedNights = ({ nights }: YearPicture, top_days: number): number | null =>
  nights && nights <= top_days ? nights : null;

function ground(layout: YearLayout): SVGTemplateResult {
  const { picture, box, x, y, top_days, options } = layout;
  const beyond = everyDays(picture).includes(null);
  const say = options.format ?? ((days: number) => sayNumber(days, options.locale));
  const width = x.step() > 34 ? "short" : "narrow";
  const nights = askedNights(picture, top_days);
  return svg`<g>${shownRungs(layout).map(
    (days) =>
      svg`${ruleAt(box.left, y(days), box.right, y(days), days === 0 ? "axis" : "grid")}${textAt(
        box.left - 6,
        y(days) + 4,
        `${say(days)}${beyond && days === top_days ? "+" : ""}`,
        "note end",
      )}`,
  )}${x
    .domain()
    .map((month) =>
      textAt(
        (x(month) ?? 0) + x.bandwidth() / 2,
        box.bottom + 17,
        sayMonth(month, options.locale, width),
        month === picture.month ? "strong middle" : "label middle",
      ),
    )}${textAt(0, 11, "days, few spread wide", "note")}${
    nights === null
      ? nothing
      : svg`${ruleAt(box.left, y(nights), box.right, y(nights), "asked")}${textAt(box.left - 6, y(nights) + 4, nights === 1 ? "1 night" : `${say(nights)} nights`, "label end")}`
  }</g>`;
}

/** Where setup i of n stands in its month's slot. */
const slotX = ({ x, picture }: YearLayout, month: number, i: number): number =>
  (x(month) ?? 0) + ((i + 0.5) / Math.max(1, picture.setups.length)) * x.bandwidth();

const level = ({ y, top_days }: YearLayout, days: Days): number => y(clamp(days ?? top_days, 0, top_days));

/** An arrow standing on the horizon's line: it goes on. */
const beyondMark = (at: number, top: number): SVGTemplateResult =>
  svg`<path class="thin" d=${`M${px(at - 3)} ${px(top - 4)}L${px(at)} ${px(top - 10)}L${px(at + 3)} ${px(top - 4)}M${px(at)} ${px(top)}V${px(top - 10)}`}></path>`;

function whiskers(setup: Setup, i: number, layout: YearLayout): SVGTemplateResult {
  return svg`<g>${setup.months.map(({ month, drawn }) => {
    const at = slotX(layout, month, i);
    const from = level(layout, drawn.p10);
    const to = level(layout, drawn.p90);
    const stem = drawn.p10 === null ? nothing : ruleAt(at, from, at, to, "leader");
    const goesOn = drawn.p90 === null && drawn.p50 !== null; // a median on that line says it by itself
    return svg`${stem}${goesOn ? beyondMark(at, layout.box.top) : nothing}`;
  })}</g>`;
}

function medians(setup: Setup, i: number, layout: YearLayout): SVGTemplateResult {
  const points = setup.months.map(({ month, drawn }) => [slotX(layout, month, i), level(layout, drawn.p50)] as const);
  const d = points.map(([x, y], p) => `${p ? "L" : "M"}${px(x)} ${px(y)}`).join("");
  return svg`<path class="thin" d=${d} stroke-dasharray=${dashOf(i) || nothing}></path>${points.map(([x, y]) => pointMark(i, x, y))}`;
}

function endLabels(layout: YearLayout): SVGTemplateResult {
  const { picture, box, width_px } = layout;
  const x = box.right + 30;
  const texts = picture.setups.map((setup) => wrapText(setup.name, (width_px - x) / bold, 2));
  const wants = picture.setups.map((setup) => level(layout, setup.months.at(-1)?.drawn.p50 ?? null));
  const middles = dodge(
    texts.map((lines, i) => ({ want: wants[i] as number, size: lines.length * 14 + 6 })),
    box.top - 6,
    box.bottom,
  );
  return svg`<g>${texts.map((lines, i) => {
    const middle = middles[i] as number;
    const last = picture.setups[i]?.months.at(-1)?.month ?? 12;
    const from = slotX(layout, last, i) + 6;
    return svg`${ruleAt(from, wants[i] as number, x - 14, middle, "thin", dashOf(i))}${pointMark(i, x - 9, middle)}${lines.map(
      (text, l) => textAt(x, middle - lines.length * 7 + 11 + l * 14, text, "strong"),
    )}`;
  })}</g>`;
}

function keyBelow({ picture, box, width_px }: YearLayout): SVGTemplateResult {
  return svg`<g>${picture.setups.map((setup, i) => {
    const y = box.bottom + axis_px + 16 + i * 20;
    return svg`${ruleAt(0, y - 4, 34, y - 4, "thin", dashOf(i))}${pointMark(i, 17, y - 4)}${textAt(42, y, wrapText(setup.name, (width_px - 46) / bold, 1)[0] ?? "", "strong")}`;
  })}</g>`;
}

function cursor({ options, x, box }: YearLayout): Part {
  const from = options.at ? x(options.at) : undefined;
  if (from === undefined) return nothing;
  return rectAt(from - 2, box.top - 12, x.bandwidth() + 4, box.bottom - box.top + 12, "cursor");
}

/** Positions are months, 1 to 12. */
export function yearGeometry(picture: YearPicture, options: ChartOptions): ChartGeometry {
  const { width_px, height_px, box, x } = yearLayout(picture, options);
  const stops = x.domain();
  const month = (x_px: number) => (x_px - box.left) / ((box.right - box.left) / 12) + 0.5;
  return { width_px, height_px, plot: box, stops, positionAt: (x_px) => nearest(stops, month(x_px)) };
}
