import { area, line } from "d3";
import { nothing, svg, type SVGTemplateResult } from "lit";
import { dashOf } from "../paper/lineStyles.ts";
import { px } from "../paper/numbers.ts";
import { firstFree, textWidth_px, type Box } from "../paper/labels.ts";
import { rectAt, ruleAt, textAt, type Part } from "../paper/parts.ts";
import { sayNumber, sayPercent } from "../paper/words.ts";
import type { ChargePicture, ChargeSetup } from "./chargePicture.ts";
import {
  chargeAt,
  chargePoints,
  nightSpans,
  type ChargePoint,
  type ChargeScales,
  type PlotBox,
} from "./chargeScale.ts";

export interface PlotFrame {
  readonly picture: ChargePicture;
  readonly box: PlotBox;
  readonly scales: ChargeScales;
  readonly span_days: number;
  readonly locale: string | undefined;
}

/** Nights shaded, quarters ruled, both axes numbered. */
export function plotGround({ picture, box, scales, span_days, locale }: PlotFrame): SVGTemplateResult {
  const night_px = scales.x(0.4) - scales.x(0);
  const nights = night_px < 2.5 ? [] : nightSpans(picture, span_days);
  return svg`<g>${nights.map(([from, to]) =>
    rectAt(scales.x(from), box.top, scales.x(to) - scales.x(from), box.bottom - box.top, "night"),
  )}${[0, 0.25, 0.5, 0.75, 1].map(
    (share) =>
      svg`${ruleAt(box.left, scales.y(share), box.right, scales.y(share), share === 0 ? "axis" : "grid")}${
        share === 0.25 || share === 0.75
          ? nothing
          : textAt(box.left - 6, scales.y(share) + 4, sayPercent(share, locale), "note end")
      }`,
  )}</g>`;
}

const dayStep = (span_days: number, width_px: number): number =>
  [1, 2, 5, 10, 20].find((step) => (width_px / span_days) * step >= 26) ?? 30;

/** Day numbers under the plot, counted in whole days from arrival. */
export function dayAxis({ box, scales, span_days, locale }: PlotFrame, title: string): SVGTemplateResult {
  const step = dayStep(span_days, box.right - box.left);
  const ticks = Array.from({ length: Math.floor(span_days / step) + 1 }, (_, i) => i * step);
  return svg`<g>${ticks.map(
    (day) =>
      svg`${ruleAt(scales.x(day), box.bottom, scales.x(day), box.bottom + 5, "axis")}${textAt(
        scales.x(day),
        box.bottom + 17,
        sayNumber(day, locale),
        "label middle",
      )}`,
  )}${textAt(box.left, box.bottom + 33, title, "note")}</g>`;
}

/** The P10 to P90 band of one setup with its edges drawn, so that it shows on a mono print. */
export function chargeBand(points: readonly ChargePoint[], { x, y }: ChargeScales): SVGTemplateResult {
  const shape = area<ChargePoint>()
    .x((p) => x(p.days))
    .digits(1);
  const edge = line<ChargePoint>()
    .x((p) => x(p.days))
    .digits(1);
  return svg`<path class="band" d=${shape.y0((p) => y(p.low)).y1((p) => y(p.high))(points) ?? ""}></path><path class="bandEdge" d=${
    edge.y((p) => y(p.low))(points) ?? ""
  }></path><path class="bandEdge" d=${edge.y((p) => y(p.high))(points) ?? ""}></path>`;
}

/** The median in the setup's own line style: full until the cut-off, faint after it. */
export function medianLine(
  setup: ChargeSetup,
  points: readonly ChargePoint[],
  { x, y }: ChargeScales,
  index: number,
): SVGTemplateResult {
  const path = line<ChargePoint>()
    .x((p) => x(p.days))
    .y((p) => y(p.mid))
    .digits(1);
  const end = setup.days.p50 ?? Infinity;
  const [before, after] = splitAt(points, end);
  const dash = dashOf(index) || nothing;
  return svg`<path class="plain" d=${path(before) ?? ""} stroke-dasharray=${dash}></path>${
    after.length > 1 ? svg`<path class="plain after" d=${path(after) ?? ""} stroke-dasharray=${dash}></path>` : nothing
  }`;
}

/** Cuts a series in two at a moment, with a point at the cut in both. */
function splitAt(points: readonly ChargePoint[], days: number): [ChargePoint[], ChargePoint[]] {
  const before = points.filter((p) => p.days < days);
  const after = points.filter((p) => p.days >= days);
  const [a, b] = [before.at(-1), after[0]];
  if (!a || !b) return [before, after];
  const share = (days - a.days) / (b.days - a.days);
  const cut = { ...a, days, mid: a.mid + (b.mid - a.mid) * share };
  return [
    [...before, cut],
    [cut, ...after],
  ];
}

/** The line of the average sky, thin, for one setup at a time. */
export function averageLine(points: readonly ChargePoint[], { x, y }: ChargeScales): SVGTemplateResult {
  const path = line<ChargePoint>()
    .x((p) => x(p.days))
    .y((p) => y(p.average))
    .digits(1);
  return svg`<path class="average" d=${path(points) ?? ""} stroke-dasharray="1 4"></path>`;
}

/** Those of the setups that go flat within the days drawn, in their order. */
export const flatOnes = (setups: readonly ChargeSetup[], span_days: number): ChargeSetup[] =>
  setups.filter(({ days: { p50 } }) => p50 !== null && p50 <= span_days);

/**
 * The height of a setup's own rail at the foot of the plot, on which its moment stands. Not on its line: half the skies
 * have it flat by its middle day, but the middle of their charges that day may be far above empty.
 */
export function rail_px(
  setup: ChargeSetup,
  setups: readonly ChargeSetup[],
  span_days: number,
  { y }: ChargeScales,
): number {
  const flat = flatOnes(setups, span_days);
  const apart_px = Math.min(10, (y(0) - y(0.2)) / flat.length);
  return y(0) - 6 - apart_px * flat.indexOf(setup);
}

/** Marks of a setup: a square on its rail when loads drop, a diamond on the top edge when the food passes 5 °C. */
export function momentMarks(setup: ChargeSetup, setups: readonly ChargeSetup[], frame: PlotFrame): Part {
  const { scales, span_days } = frame;
  const { x, y } = scales;
  const { p50 } = setup.days;
  if (p50 === null || p50 > span_days) return nothing;
  const [cx, cy] = [px(x(p50)), px(rail_px(setup, setups, span_days, scales))];
  const food = setup.foodPasses5C_days;
  return svg`${
    food === null || food > span_days
      ? nothing
      : svg`<path class="foodMark" d=${diamond(Math.max(x(food), cx + 9), y(1), 5)}></path>`
  }<path class="alarmMark" d=${`M${px(cx - 5)} ${px(cy - 5)}h10v10h-10Z`}></path>`;
}

/** The food's mark, on the plot and before the words that say its hour. */
export const diamond = (x: number, y: number, r: number): string =>
  `M${px(x)} ${px(y - r)}L${px(x + r)} ${px(y)}L${px(x)} ${px(y + r)}L${px(x - r)} ${px(y)}Z`;

/** How sure the moment is: P10 to P90 of the cut-off, level with its mark. */
export function cutOffRange(setup: ChargeSetup, setups: readonly ChargeSetup[], frame: PlotFrame): Part {
  const { scales, span_days } = frame;
  const { x } = scales;
  const { p10, p50, p90 } = setup.days;
  if (p10 === null || p50 === null || p50 > span_days) return nothing;
  const level = px(rail_px(setup, setups, span_days, scales));
  const [from, to] = [px(x(p10)), px(x(Math.min(p90 ?? span_days, span_days)))];
  const tick = (at: number) => `M${at} ${level - 4}v8`;
  const closed = p90 !== null && p90 <= span_days ? tick(to) : "";
  return svg`<path class="alarmLine" d=${`M${from} ${level}H${to}${tick(from)}${closed}`}></path>`;
}

const reserveLevels = (setups: readonly ChargeSetup[]): number[] => [
  ...new Set(setups.map((setup) => setup.reserve).filter((level): level is number => level !== null && level > 0)),
];

/** Each reserve ruled in once. */
export const reserveRules = (setups: readonly ChargeSetup[], { box, scales }: PlotFrame): SVGTemplateResult =>
  svg`<g>${reserveLevels(setups).map((level) => ruleAt(box.left, scales.y(level), box.right, scales.y(level), "reserve"))}</g>`;

/** The reserves' names, each over or under whichever stretch of its rule the medians keep furthest from. */
export function reserveNames(setups: readonly ChargeSetup[], frame: PlotFrame): SVGTemplateResult {
  const { box, locale } = frame;
  const taken: Box[] = [];
  const inside = { x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top };
  return svg`<g>${reserveLevels(setups).map((level) => {
    const text = `reserve ${sayPercent(level, locale)}`;
    const spot = firstFree(reserveSpots(setups, level, textWidth_px(text), frame), taken, inside);
    if (!spot) return nothing;
    taken.push(spot);
    return textAt(spot.x, spot.y + 11, text, "note halo");
  })}</g>`;
}

/** Places for a reserve's name, the clearest first; of places alike to a few percent, the leftmost and upper. */
function reserveSpots(setups: readonly ChargeSetup[], level: number, width: number, frame: PlotFrame): Box[] {
  const { box, scales } = frame;
  const room = box.right - box.left - width - 8;
  const starts = [0, 0.25, 0.5, 0.75, 1].map((share) => box.left + 4 + share * room);
  const clear = (x: number) => Math.round(clearance(setups, level, x, width, frame) * 25);
  const best = [...starts].sort((a, b) => clear(b) - clear(a) || a - b);
  const y = scales.y(level);
  return [y - 15, y + 2].flatMap((top) => best.map((x) => ({ x, y: top, width, height: 14 })));
}

/** The least distance in charge between any median and a level, over a stretch of pixels. */
function clearance(
  setups: readonly ChargeSetup[],
  level: number,
  from: number,
  width: number,
  { scales }: PlotFrame,
): number {
  const times = [0, 0.25, 0.5, 0.75, 1].map((share) => scales.x.invert(from + share * width));
  const gaps = setups.flatMap(({ charge }) =>
    times.map((days) => Math.abs((chargeAt(charge.p50, days) ?? 2) - level - 0.04)),
  );
  return Math.min(1, ...gaps);
}

export const pointsOf = (setup: ChargeSetup, { span_days, box }: PlotFrame): ChargePoint[] =>
  chargePoints(setup, span_days, box.right - box.left);
