import { line, scaleLinear } from "d3";
import type { Days } from "@stayput/sim";
import { nothing, svg, type SVGTemplateResult } from "lit";
import { clamp, finite, px } from "../paper/numbers.ts";
import { ruleAt } from "../paper/parts.ts";

/** The median charge of one setup over the trip. */
export interface Sketch {
  /** share of charge, 0 to 1, hour by hour from arrival */
  readonly charge: readonly number[];
  readonly nights: number;
  /** median days until loads drop */
  readonly cutOff_days: Days;
  /** 0 to 1; null rules none */
  readonly reserve: number | null;
}

/**
 * A small picture without words for a row of a table: charge over the trip, always 0 to 100 %, reserve ruled, a square
 * where the loads drop. The row beside it says the same in figures, so it is hidden from screen readers.
 */
export function daySketch(sketch: Sketch, { width_px = 96, height_px = 24 } = {}): SVGTemplateResult {
  const span_h = Math.max(1, finite("nights", sketch.nights) * 24);
  const x = scaleLinear([0, span_h], [3, finite("width_px", width_px) - 3]);
  const y = scaleLinear([0, 1], [finite("height_px", height_px) - 3, 3]);
  const level = (hour: number) => clamp(finite(`charge[${hour}]`, sketch.charge[hour] ?? 0), 0, 1);
  const hours = Array.from({ length: Math.min(sketch.charge.length, Math.floor(span_h) + 1) }, (_, hour) => hour);
  const path = line<number>()
    .x((hour) => x(hour))
    .y((hour) => y(level(hour)))
    .digits(1);
  const end_h = (sketch.cutOff_days ?? Infinity) * 24;
  const mark =
    end_h <= span_h && hours.length > 0
      ? svg`<path class="alarmMark" d=${`M${px(x(end_h) - 4)} ${px(y(level(Math.min(Math.round(end_h), hours.length - 1))) - 4)}h8v8h-8Z`}></path>`
      : nothing;
  return svg`<svg class="picture" viewBox=${`0 0 ${px(width_px)} ${px(height_px)}`} width=${px(width_px)} height=${px(height_px)} aria-hidden="true">${ruleAt(
    3,
    y(0),
    width_px - 3,
    y(0),
    "thin",
  )}${sketch.reserve === null ? nothing : ruleAt(3, y(sketch.reserve), width_px - 3, y(sketch.reserve), "reserve")}<path class="leader" d=${
    path(hours) ?? ""
  }></path>${mark}</svg>`;
}
