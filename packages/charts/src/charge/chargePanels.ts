import { nothing, svg, type SVGTemplateResult } from "lit";
import { bold, fitText, textWidth_px } from "../paper/labels.ts";
import { dashOf } from "../paper/lineStyles.ts";
import { nearest, sizeOf } from "../paper/numbers.ts";
import { emptyNote, ruleAt, sheetOf, textAt } from "../paper/parts.ts";
import type { ChartGeometry } from "../paper/picture.ts";
import { sayDays } from "../paper/words.ts";
import { axisTitle, cursorIn, hourStops, type ChargeOptions } from "./chargeChart.ts";
import { chargeSummary } from "./chargeFacts.ts";
import { chargeFlags, drawFlags, flagsHeight_px, placeFlags } from "./chargeFlags.ts";
import type { ChargePicture } from "./chargePicture.ts";
import {
  averageLine,
  chargeBand,
  dayAxis,
  medianLine,
  momentMarks,
  plotGround,
  pointsOf,
  reserveNames,
  reserveRules,
  type PlotFrame,
} from "./chargePlot.ts";
import { chargeScales, chargeSpan_days } from "./chargeScale.ts";

const left_px = 44;
const heading_px = 24;
const axis_px = 40;
const gap_px = 14;
const leastPlot_px = 72;

interface Panel extends PlotFrame {
  readonly top: number;
  readonly flags: ReturnType<typeof placeFlags>;
}

function panels(
  picture: ChargePicture,
  options: ChargeOptions,
): { list: Panel[]; width_px: number; height_px: number } {
  const [width_px, asked_px] = sizeOf(options);
  const span_days = chargeSpan_days(picture);
  const right = width_px - 12;
  const x = chargeScales({ left: left_px, right, top: 0, bottom: 1 }, span_days).x;
  const flags = picture.setups.map((setup) =>
    placeFlags(chargeFlags({ ...picture, setups: [setup] }, span_days, false, right - left_px), x, width_px),
  );
  const fixed_px = flags.reduce((total, own) => total + heading_px + flagsHeight_px(own) + gap_px, axis_px);
  const plot_px = Math.max(leastPlot_px, (asked_px - fixed_px) / Math.max(1, picture.setups.length));
  const list: Panel[] = [];
  let top = 0;
  for (const [i, setup] of picture.setups.entries()) {
    const own = flags[i] ?? [];
    const plotTop = top + heading_px + flagsHeight_px(own);
    const box = { left: left_px, right, top: plotTop, bottom: plotTop + plot_px };
    const one = { ...picture, setups: [setup] };
    list.push({
      picture: one,
      box,
      scales: chargeScales(box, span_days),
      span_days,
      locale: options.locale,
      top,
      flags: own,
    });
    top = box.bottom + gap_px;
  }
  return { list, width_px, height_px: list.length === 0 ? asked_px : top - gap_px + axis_px };
}

/** The same facts as `chargeChart`, one small plot a setup under one another on the same days: for a phone. */
export function chargePanels(picture: ChargePicture, options: ChargeOptions): SVGTemplateResult {
  const { list, width_px, height_px } = panels(picture, options);
  const last = list.at(-1);
  const body = svg`${list.map((panel, i) => drawPanel(panel, i, options))}${
    last ? dayAxis(last, axisTitle(picture)) : emptyNote(width_px, height_px, "No setup yet")
  }`;
  return sheetOf({ width_px, height_px }, chargeSummary(picture, options), body);
}

function drawPanel(panel: Panel, index: number, options: ChargeOptions): SVGTemplateResult {
  const { picture, box, scales, span_days, flags } = panel;
  const setup = picture.setups[0] as ChargePicture["setups"][number];
  const points = pointsOf(setup, panel);
  const at = options.at;
  return svg`<g>${panelHeading(panel, index, options.locale)}${plotGround(panel)}${chargeBand(points, scales)}${reserveRules([setup], panel)}${
    options.showAverage ? averageLine(points, scales) : nothing
  }${drawFlags(flags, box)}${medianLine(setup, points, scales, index)}${momentMarks(setup, [setup], panel)}${reserveNames([setup], panel)}${
    at !== null && at !== undefined && at >= 0 && at <= span_days ? cursorIn([setup], box, scales, at) : nothing
  }</g>`;
}

function panelHeading({ picture, box, top }: Panel, index: number, locale: string | undefined): SVGTemplateResult {
  const setup = picture.setups[0] as ChargePicture["setups"][number];
  const days = sayDays(setup.days.p50, picture.horizon_days, locale);
  const room = box.right - 36 - textWidth_px(days) - 12;
  return svg`${ruleAt(0, top + 11, 30, top + 11, "plain", dashOf(index))}${textAt(36, top + 15, fitText(setup.name, room / bold), "strong")}${textAt(
    box.right,
    top + 15,
    days,
    "label end",
  )}`;
}

/** As `chargeGeometry`, over all panels. */
export function chargePanelsGeometry(picture: ChargePicture, options: ChargeOptions): ChartGeometry {
  const { list, width_px, height_px } = panels(picture, options);
  const span_days = chargeSpan_days(picture);
  const stops = hourStops(span_days);
  const x = chargeScales({ left: left_px, right: width_px - 12, top: 0, bottom: 1 }, span_days).x;
  const plot = {
    left: left_px,
    right: width_px - 12,
    top: list[0]?.box.top ?? 0,
    bottom: list.at(-1)?.box.bottom ?? height_px,
  };
  return { width_px, height_px, plot, stops, positionAt: (x_px) => nearest(stops, x.invert(x_px)) };
}
