import { nothing, svg, type SVGTemplateResult } from "lit";
import { scaleLinear } from "d3";
import { bold, firstFree, fitText, textWidth_px, type Box } from "../paper/labels.ts";
import { px } from "../paper/numbers.ts";
import { emptyNote, ruleAt, sheetOf, textAt, type Part } from "../paper/parts.ts";
import type { ChartOptions } from "../paper/picture.ts";
import { sayNumber, sayPercent } from "../paper/words.ts";
import { contourLevels, type ContourLevel, type Point } from "./contourLines.ts";
import { sayPoint, sizeSummary } from "./sizeFacts.ts";
import { sizeGeometry, type PlacedPoint, type SizeGeometry } from "./sizeGeometry.ts";
import type { SizePicture } from "./sizePicture.ts";

const usualLevels = [0.5, 0.8, 0.95];
const inside = ({ plot }: SizeGeometry): Box => ({
  x: plot.left,
  y: plot.top,
  width: plot.right - plot.left,
  height: plot.bottom - plot.top,
});

/** From steps of the ladders to pixels; the ladders need not be evenly spaced. */
function toPixels({ grid }: SizePicture, { x, y }: SizeGeometry): (point: Point) => Point {
  const steps = (values: readonly number[]) =>
    scaleLinear(
      values.map((_, i) => i),
      values,
    );
  const [array, bank] = [steps(grid?.arrays_W ?? []), steps(grid?.banks_Ah ?? [])];
  return ([a, b]) => [x(array(a)), y(bank(b))];
}

const pathOf = (points: readonly Point[], close: boolean): string =>
  points.map(([x, y], i) => `${i ? "L" : "M"}${px(x)} ${px(y)}`).join("") + (close ? "Z" : "");

interface PixelLevel {
  readonly chance: number;
  readonly fill: string;
  readonly lines: readonly (readonly Point[])[];
}

function pixelLevels(picture: SizePicture, geometry: SizeGeometry): PixelLevel[] {
  if (!picture.grid) return [];
  const chances = [...new Set([...usualLevels, picture.asked.chance])].sort((a, b) => a - b);
  const place = toPixels(picture, geometry);
  return contourLevels(picture.grid, chances).map(({ chance, rings, lines }: ContourLevel) => ({
    chance,
    fill: rings.map((ring) => pathOf(ring.map(place), true)).join(""),
    lines: lines.map((line) => line.map(place)),
  }));
}

/**
 * Bank against array: the darker, the better the chance of lasting; contours named where they run, the asked chance heavy;
 * sizes found as points that take the focus; setups as squares with their names.
 */
export function sizeChart(picture: SizePicture, options: ChartOptions): SVGTemplateResult {
  const geometry = sizeGeometry(picture, options);
  const levels = pixelLevels(picture, geometry);
  const labels = placeNames(picture, geometry, levels, options);
  const empty = picture.points.length + picture.setups.length + levels.length === 0;
  const body = svg`${levels.map(({ fill }) => svg`<path class="step" d=${fill}></path>`)}${axes(geometry, options)}${levels.map(
    ({ chance, lines }) =>
      lines.map(
        (line) =>
          svg`<path class=${chance === picture.asked.chance ? "plain" : "thin"} d=${pathOf(line, false)}></path>`,
      ),
  )}${labels.leaders}${geometry.setups.map(
    ({ x, y }) => svg`<path class="dot" d=${`M${px(x - 7.5)} ${px(y - 7.5)}h15v15h-15Z`}></path>`,
  )}${geometry.points.map((placed) => pointAt(placed, picture, options))}${labels.texts}${
    empty ? emptyNote(geometry.width_px, geometry.height_px, "No sizes worked out yet") : nothing
  }`;
  return sheetOf(geometry, sizeSummary(picture, options), body, "group");
}

function axes({ plot, x, y }: SizeGeometry, { locale, format }: ChartOptions): SVGTemplateResult {
  const say = format ?? ((value: number) => sayNumber(value, locale));
  const across = x.ticks(Math.max(2, Math.floor((plot.right - plot.left) / 80)));
  const up = y.ticks(Math.max(2, Math.floor((plot.bottom - plot.top) / 50)));
  return svg`<g>${up.map(
    (Ah) =>
      svg`${ruleAt(plot.left - 4, y(Ah), plot.left, y(Ah), "thin")}${textAt(plot.left - 8, y(Ah) + 4, say(Ah), "note end")}`,
  )}${across.map(
    (W) =>
      svg`${ruleAt(x(W), plot.bottom, x(W), plot.bottom + 4, "thin")}${textAt(x(W), plot.bottom + 18, say(W), "note middle")}`,
  )}${ruleAt(plot.left, plot.top, plot.left, plot.bottom, "axis")}${ruleAt(plot.left, plot.bottom, plot.right, plot.bottom, "axis")}${textAt(
    0,
    13,
    "bank, Ah",
    "label",
  )}${textAt(plot.right, plot.bottom + 35, "array, W", "label end")}</g>`;
}

function pointAt({ point, index, x, y }: PlacedPoint, picture: SizePicture, options: ChartOptions): SVGTemplateResult {
  const [cx, cy] = [px(x), px(y)];
  const chosen = options.at === index;
  return svg`<g data-point=${index} tabindex="0" role="button" aria-label=${sayPoint(point, picture, options.locale)}><circle class="clear" cx=${cx} cy=${cy} r="13"></circle>${
    chosen ? svg`<circle class="cursor" cx=${cx} cy=${cy} r="10"></circle>` : nothing
  }<circle class="hollow" cx=${cx} cy=${cy} r="5.5"></circle></g>`;
}

const boxAround = (x: number, y: number, r: number): Box => ({ x: x - r, y: y - r, width: 2 * r, height: 2 * r });

/** Boxes for a name of this width beside a mark, the nearest and rightmost first. */
function besides(x: number, y: number, width: number): Box[] {
  const steps = [0, -16, 16, -32, 32, -48, 48, -64, 64, -80, 80];
  return steps.flatMap((dy) => [
    { x: x + 13, y: y - 8 + dy, width, height: 16 },
    { x: x - 13 - width, y: y - 8 + dy, width, height: 16 },
    { x: x - width / 2, y: y - 26 + dy, width, height: 16 },
  ]);
}

/** Setups' names first, since they must be there; then the contours', where they find room. */
function placeNames(
  picture: SizePicture,
  geometry: SizeGeometry,
  levels: readonly PixelLevel[],
  { locale }: ChartOptions,
): { leaders: Part[]; texts: SVGTemplateResult[] } {
  const taken: Box[] = [
    ...geometry.points.map(({ x, y }) => boxAround(x, y, 8)),
    ...geometry.setups.map(({ x, y }) => boxAround(x, y, 10)),
  ];
  const leaders: Part[] = [];
  const texts: SVGTemplateResult[] = [];
  for (const { name, x, y } of geometry.setups) {
    const text = fitText(name, (geometry.plot.right - geometry.plot.left) * 0.55);
    const width = textWidth_px(text) * bold;
    const box = firstFree(besides(x, y, width), taken, inside(geometry));
    if (!box) continue;
    taken.push(box);
    if (Math.abs(box.y + 8 - y) > 20) leaders.push(ruleAt(x, y, box.x + (box.x < x ? width : 0), box.y + 8, "outline"));
    texts.push(textAt(box.x, box.y + 12, text, "strong halo"));
  }
  for (const { chance, lines } of levels) {
    const text = sayPercent(chance, locale);
    const box = firstFree(alongLines(lines, textWidth_px(text)), taken, inside(geometry));
    if (!box) continue;
    taken.push(box);
    texts.push(
      textAt(
        box.x + box.width / 2,
        box.y + 12,
        text,
        `${chance === picture.asked.chance ? "strong" : "label"} middle halo`,
      ),
    );
  }
  return { leaders, texts };
}

/** Boxes on the longest line of a level, from its middle outwards. */
function alongLines(lines: readonly (readonly Point[])[], width: number): Box[] {
  const longest = [...lines].sort((a, b) => b.length - a.length)[0];
  if (!longest) return [];
  return [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9].map((share) => {
    const [x, y] = longest[Math.floor(share * (longest.length - 1))] as Point;
    return { x: x - width / 2 - 2, y: y - 8, width: width + 4, height: 16 };
  });
}
