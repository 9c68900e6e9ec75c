import { scaleLinear, type ScaleLinear } from "d3";
import type { Days } from "@stayput/sim";
import { nothing, svg, type SVGTemplateResult } from "lit";
import { toneClass } from "../paper/hatches.ts";
import { fitText, textWidth_px } from "../paper/labels.ts";
import { clamp, nearest, px, sizeOf } from "../paper/numbers.ts";
import { emptyNote, rectAt, ruleAt, sheetOf, textAt, type Part } from "../paper/parts.ts";
import type { ChartGeometry, ChartOptions } from "../paper/picture.ts";
import { sayDays, sayDaysShort, sayWh } from "../paper/words.ts";
import { usesSummary } from "./usesFacts.ts";
import type { UseRow, UsesPicture } from "./usesPicture.ts";
import { usesRows } from "./usesRows.ts";

interface UsesLayout {
  readonly picture: UsesPicture;
  readonly options: ChartOptions;
  readonly rows: readonly UseRow[];
  readonly width_px: number;
  readonly height_px: number;
  readonly top: number;
  readonly row_px: number;
  readonly wide: boolean;
  readonly bar: ScaleLinear<number, number>;
  readonly days: ScaleLinear<number, number>;
  readonly most_days: number;
}

/** Days drawn to: twice the days as it is, or the longest that ended, whichever is more. */
function mostDays({ days, rows }: UsesPicture): number {
  const ended = [days, ...rows.map((row) => row.without_days)].filter((d): d is number => typeof d === "number");
  return Math.max(1, (days ?? 0) * 2, ...ended) * 1.08;
}

function usesLayout(picture: UsesPicture, options: ChartOptions): UsesLayout {
  const [width_px, asked_px] = sizeOf(options);
  const rows = usesRows(picture);
  const wide = width_px >= 560;
  const top = wide ? 44 : 26;
  const row_px = clamp((asked_px - top - 8) / Math.max(1, rows.length), wide ? 26 : 44, wide ? 40 : 52);
  const height_px = rows.length === 0 ? asked_px : top + rows.length * row_px + 8;
  const most_Wh = Math.max(1, ...rows.map((row) => row.Wh_day));
  const [from, to] = wide ? [width_px * 0.26, width_px * 0.52] : [0, width_px * 0.56];
  const most_days = mostDays(picture);
  return {
    picture,
    options,
    rows,
    width_px,
    height_px,
    top,
    row_px,
    wide,
    bar: scaleLinear([0, most_Wh], [from, to]),
    days: scaleLinear([0, most_days], [width_px * 0.66, width_px - 52]),
    most_days,
  };
}

/** The loads in order, watt-hours a day, and beside each the days without it. */
export function usesChart(picture: UsesPicture, options: ChartOptions): SVGTemplateResult {
  const layout = usesLayout(picture, options);
  const body =
    layout.rows.length === 0
      ? emptyNote(layout.width_px, layout.height_px, "No loads yet")
      : svg`${layout.wide ? wideHead(layout) : narrowHead(layout)}${layout.rows.map((row, i) =>
          layout.wide ? wideRow(row, i, layout) : narrowRow(row, i, layout),
        )}${cursor(layout)}`;
  return sheetOf(layout, usesSummary(picture, options), body);
}

const sayUse = (row: UseRow, { locale, format }: ChartOptions): string =>
  format ? format(row.Wh_day) : sayWh(row.Wh_day, locale);

function wideHead(layout: UsesLayout): SVGTemplateResult {
  const { picture, width_px, bar, days, top, height_px, options } = layout;
  const said = `now ${sayDays(picture.days, picture.horizon_days, options.locale)}`;
  const now = picture.days === null ? null : days(picture.days);
  const left = days(0);
  return svg`${textAt(bar(0), 14, "a day", "note")}${textAt(left, 14, "days without it", "note")}${
    now === null
      ? textAt(left, 34, said, "strong")
      : svg`${ruleAt(now, 38, now, height_px - 6, "asked")}${textAt(clamp(now, left, width_px - textWidth_px(said)), 34, said, "strong halo")}`
  }${ruleAt(0, top - 2, width_px, top - 2, "thin")}`;
}

function wideRow(row: UseRow, i: number, layout: UsesLayout): SVGTemplateResult {
  const { top, row_px, bar, width_px, options } = layout;
  const y = top + i * row_px;
  const middle = y + row_px / 2;
  const bar_px = Math.min(18, row_px - 8);
  return svg`${ruleAt(0, y + row_px, width_px, y + row_px, "grid")}${textAt(0, middle + 4, fitText(row.name, bar(0) - 10), "label")}${rectAt(
    bar(0),
    middle - bar_px / 2,
    bar(row.Wh_day) - bar(0),
    bar_px,
    toneFor(row, i),
  )}${textAt(bar(row.Wh_day) + 6, middle + 4, sayUse(row, options), "strong")}${stretch(row.without_days, middle, layout)}`;
}

const toneFor = (row: UseRow, i: number): string =>
  row.id.startsWith("loss:") || row.id === "others" ? "toneRest" : toneClass(i);

/** From the days as it is to the days without it: a line with a point at its end, or an arrow where there is no end. */
function stretch(without: Days | undefined, y: number, { picture, days, options, width_px }: UsesLayout): Part {
  if (without === undefined) return nothing;
  const said = sayDaysShort(without, picture.horizon_days, options.locale);
  const from = picture.days === null ? days(0) : days(picture.days);
  if (without === null) {
    const tip = px(width_px - 44);
    return svg`${ruleAt(from, y, tip - 6, y, "plain")}<path class="dot" d=${`M${tip} ${px(y)}l-9 -5v10Z`}></path>${textAt(tip + 4, y + 4, said, "strong")}`;
  }
  const to = days(without);
  return svg`${ruleAt(from, y, to, y, "plain")}<circle class="dot" cx=${px(to)} cy=${px(y)} r="5"></circle>${textAt(
    to + 9,
    y + 4,
    said,
    "strong halo",
  )}`;
}

function narrowHead({ picture, options, width_px, top }: UsesLayout): SVGTemplateResult {
  const said = `now ${sayDays(picture.days, picture.horizon_days, options.locale)}`;
  return svg`${textAt(0, 14, "a day", "note")}${textAt(width_px, 14, `days without it (${said})`, "note end")}${ruleAt(0, top - 4, width_px, top - 4, "thin")}`;
}

const shortDays = (days: Days, horizon_days: number, locale: string | undefined): string =>
  days === null ? `${sayDaysShort(days, horizon_days, locale)}\u00a0days` : sayDays(days, horizon_days, locale);

function narrowRow(row: UseRow, i: number, layout: UsesLayout): SVGTemplateResult {
  const { top, row_px, bar, width_px, picture, options } = layout;
  const y = top + i * row_px;
  const days = row.without_days === undefined ? "" : shortDays(row.without_days, picture.horizon_days, options.locale);
  return svg`${textAt(0, y + 14, fitText(row.name, width_px * 0.66), "label")}${rectAt(
    bar(0),
    y + 20,
    bar(row.Wh_day) - bar(0),
    14,
    toneFor(row, i),
  )}${textAt(bar(row.Wh_day) + 6, y + 31, sayUse(row, options), "strong")}${textAt(width_px, y + 31, days, "strong end")}${ruleAt(
    0,
    y + row_px - 3,
    width_px,
    y + row_px - 3,
    "grid",
  )}`;
}

function cursor({ options, rows, top, row_px, width_px }: UsesLayout): Part {
  const { at } = options;
  if (at === null || at === undefined || !rows[at]) return nothing;
  return rectAt(-3, top + at * row_px + 1, width_px + 6, row_px - 2, "cursor");
}

/** Positions are rows, from 0. */
export function usesGeometry(picture: UsesPicture, options: ChartOptions): ChartGeometry {
  const { rows, width_px, height_px, top, row_px } = usesLayout(picture, options);
  const stops = rows.map((_, i) => i);
  return {
    width_px,
    height_px,
    plot: { left: 0, top, right: width_px, bottom: height_px },
    stops,
    positionAt: (_x_px, y_px) => (stops.length === 0 ? 0 : nearest(stops, (y_px - top) / row_px - 0.5)),
  };
}
