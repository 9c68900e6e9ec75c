import { nothing, svg, type SVGTemplateResult } from "lit";
import { bold, fitText, rowsFor, textWidth_px } from "../paper/labels.ts";
import { clamp } from "../paper/numbers.ts";
import { ruleAt, textAt } from "../paper/parts.ts";
import { sayHourOf, sayMoment } from "../paper/words.ts";
import type { ChargePicture, ChargeSetup } from "./chargePicture.ts";
import { diamond, flatOnes } from "./chargePlot.ts";
import type { PlotBox } from "./chargeScale.ts";

const row_px = 16;

/** Words hung over a moment, with a leader down to the mark. */
interface Flag {
  readonly days: number;
  readonly lines: readonly { readonly text: string; readonly classes: string }[];
  readonly alarm: boolean;
}

function cutOffFlag(setup: ChargeSetup, named: boolean, arrival_h: number, room_px: number): Flag {
  const days = setup.days.p50 as number;
  const moment = `flat ${sayMoment(days, arrival_h)}`;
  const name = named ? `${fitText(setup.name, Math.max(60, room_px / bold - textWidth_px(`: ${moment}`)))}: ` : "";
  const food = setup.foodPasses5C_days;
  return {
    days,
    lines: [
      { text: `${name}${moment}`, classes: "alarm" },
      ...(food === null ? [] : [{ text: `food past 5 °C at ${sayHourOf(food, arrival_h)}`, classes: "label" }]),
    ],
    alarm: true,
  };
}

const tripFlag = (nights: number): Flag => ({
  days: nights,
  lines: [{ text: nights === 1 ? "1 night" : `${nights} nights`, classes: "label" }],
  alarm: false,
});

/** The moments worth words: each cut-off inside the span, and the end of the trip. */
export function chargeFlags(picture: ChargePicture, span_days: number, named: boolean, room_px: number): Flag[] {
  const trip = picture.nights <= span_days ? [tripFlag(picture.nights)] : [];
  const flat = flatOnes(picture.setups, span_days);
  return [...flat.map((setup) => cutOffFlag(setup, named, picture.arrival_h ?? 15, room_px)), ...trip];
}

export interface PlacedFlag extends Flag {
  readonly x: number;
  readonly width: number;
  /** top of its first line, above the plot's top edge [px] */
  readonly up: number;
  readonly at: number;
}

/** Flags set out over the plot so that none overlap; their words start at the moment, or run up to the right edge. */
export function placeFlags(flags: readonly Flag[], x: (days: number) => number, right: number): PlacedFlag[] {
  const lineRows = flags.flatMap((flag, f) =>
    flag.lines.map((line, l) => {
      const width = textWidth_px(line.text) * (flag.alarm && l === 0 ? bold : 1) + (l === 0 ? 8 : 22);
      return { f, width };
    }),
  );
  const widths = flags.map((_, f) => Math.max(...lineRows.filter((line) => line.f === f).map((line) => line.width)));
  const starts = flags.map((flag, f) => clamp(x(flag.days), 0, Math.max(0, right - (widths[f] as number))));
  const rows = rowsFor(
    flags.map((_, f) => ({ from: starts[f] as number, to: (starts[f] as number) + (widths[f] as number) })),
  );
  const heights = rowHeights(flags, rows);
  return flags.map((flag, f) => ({
    ...flag,
    x: starts[f] as number,
    width: widths[f] as number,
    at: x(flag.days),
    up: heights.slice(0, (rows[f] as number) + 1).reduce((total, height) => total + height, 4),
  }));
}

function rowHeights(flags: readonly Flag[], rows: readonly number[]): number[] {
  const heights: number[] = [];
  flags.forEach((flag, f) => {
    const row = rows[f] as number;
    heights[row] = Math.max(heights[row] ?? 0, flag.lines.length * row_px);
  });
  return heights;
}

/** Room the flags need above the plot [px]. */
export const flagsHeight_px = (placed: readonly PlacedFlag[]): number =>
  Math.max(0, ...placed.map((flag) => flag.up)) + 4;

/** Leaders first, words over them on a halo of paper. */
export function drawFlags(placed: readonly PlacedFlag[], box: PlotBox): SVGTemplateResult {
  return svg`<g>${placed.map((flag) => {
    const beside = flag.x >= flag.at - 1; // else the words hang over the leader, which starts under them
    const top = box.top - flag.up + (beside ? 0 : flag.lines.length * row_px + 2);
    return ruleAt(flag.at, top, flag.at, box.bottom, flag.alarm ? "alarmLine" : "asked");
  })}${placed.map((flag) =>
    flag.lines.length < 2
      ? nothing
      : svg`<path class="foodMark" d=${diamond(flag.x + 11, box.top - flag.up + 8 + row_px, 4.5)}></path>`,
  )}${placed.map((flag) =>
    flag.lines.map(({ text, classes }, l) =>
      textAt(flag.x + (l === 0 ? 5 : 20), box.top - flag.up + 12 + l * row_px, text, `${classes} halo`),
    ),
  )}</g>`;
}
