import { scaleLinear, type ScaleLinear } from "d3";
import { nothing, svg, type SVGTemplateResult } from "lit";
import { toneClass } from "../paper/hatches.ts";
import { bold, textWidth_px, wrapText } from "../paper/labels.ts";
import { clamp, finite, nearest, px, sizeOf, sum } from "../paper/numbers.ts";
import { emptyNote, rectAt, ruleAt, sheetOf, textAt, type Part } from "../paper/parts.ts";
import type { ChartGeometry, ChartOptions } from "../paper/picture.ts";
import { sayDays, sayDaysShort, saySigned } from "../paper/words.ts";
import { upgradesSummary } from "./upgradesFacts.ts";
import type { UpgradesPicture } from "./upgradesPicture.ts";

interface Row {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly said: string;
  readonly classes: string;
  readonly alone: number | null;
  readonly aside: string;
}

/** As it is, then each change's share stepping on from the one before, then all together. */
function upgradeRows(picture: UpgradesPicture, { locale }: ChartOptions): Row[] {
  const { horizon_days, changes } = picture;
  const start = picture.from_days ?? horizon_days;
  const bare = { alone: null, aside: "" };
  const steps = changes.map((change, i): Row => {
    const from = start + sum(changes.slice(0, i).map((c) => finite(`share_days of ${c.id}`, c.share_days)));
    return {
      name: change.name,
      from,
      to: from + finite(`share_days of ${change.id}`, change.share_days),
      said: saySigned(change.share_days, locale, 1),
      classes: toneClass(i),
      alone: change.alone_days ?? horizon_days,
      aside: `alone ${sayDaysShort(change.alone_days, horizon_days, locale)}`,
    };
  });
  return [
    {
      name: "As it is",
      from: 0,
      to: start,
      said: sayDays(picture.from_days, horizon_days, locale),
      classes: "toneRest",
      ...bare,
    },
    ...steps,
    {
      name: "All together",
      from: 0,
      to: picture.together_days ?? horizon_days,
      said: sayDays(picture.together_days, horizon_days, locale),
      classes: "dot",
      ...bare,
    },
  ];
}

const line_px = 14;

interface UpgradesLayout {
  readonly rows: readonly Row[];
  readonly width_px: number;
  readonly height_px: number;
  readonly row_px: number;
  readonly wide: boolean;
  /** of the longest name */
  readonly nameLines: number;
  readonly x: ScaleLinear<number, number>;
  readonly options: ChartOptions;
}

/** What stands above a bar on a phone, clear of the days alone at the right. */
const roomAbove_px = (rows: readonly Row[], width_px: number): number =>
  width_px - Math.max(0, ...rows.map(({ aside: text }) => textWidth_px(text))) - 30;

function upgradesLayout(picture: UpgradesPicture, options: ChartOptions): UpgradesLayout {
  const [width_px, asked_px] = sizeOf(options);
  const rows = picture.changes.length === 0 ? [] : upgradeRows(picture, options);
  const wide = width_px >= 520;
  const above = roomAbove_px(rows, width_px);
  const nameLines = wide ? 1 : Math.max(1, ...rows.map(({ name }) => wrapText(name, above, 2).length));
  const least_px = wide ? 30 : 46 + (nameLines - 1) * line_px;
  const row_px = clamp((asked_px - 8) / Math.max(1, rows.length), least_px, Math.max(least_px, wide ? 44 : 54));
  const height_px = rows.length === 0 ? asked_px : rows.length * row_px + 8;
  const ends = rows.flatMap((row) => [row.from, row.to, row.alone ?? 0]);
  const said_px = Math.max(0, ...rows.map((row) => textWidth_px(row.said))) * bold + 10;
  const aside_px = wide ? 96 : 0;
  const x = scaleLinear(
    [Math.min(0, ...ends), Math.max(1, ...ends)],
    [wide ? width_px * 0.3 : 0, width_px - said_px - aside_px],
  );
  return { rows, width_px, height_px, row_px, wide, nameLines, x, options };
}

/** Each change's share of the gain, stepping from the days as it is to the days with all of them; a ring shows it alone. */
export function upgradesChart(picture: UpgradesPicture, options: ChartOptions): SVGTemplateResult {
  const layout = upgradesLayout(picture, options);
  const body =
    layout.rows.length === 0
      ? emptyNote(layout.width_px, layout.height_px, "No changes to weigh yet")
      : svg`${layout.rows.map((row, i) => drawRow(row, i, layout))}${cursor(layout)}`;
  return sheetOf(layout, upgradesSummary(picture, options), body);
}

function drawRow(row: Row, i: number, layout: UpgradesLayout): SVGTemplateResult {
  const { x, row_px, wide, width_px, rows, nameLines } = layout;
  const y = i * row_px;
  const bar_px = wide ? Math.min(20, row_px - 10) : 16;
  const middle = wide ? y + row_px / 2 : y + 32 + (nameLines - 1) * line_px;
  const [low, high] = [Math.min(row.from, row.to), Math.max(row.from, row.to)];
  const edge = Math.max(x(high), row.alone === null ? 0 : x(row.alone) + 6);
  return svg`${ruleAt(0, y + row_px, width_px, y + row_px, i === rows.length - 2 ? "thin" : "grid")}${rowName(row, i, layout)}${
    row.alone === null ? nothing : ruleAt(x((rows[0] as Row).to), middle, x(row.alone), middle, "thin")
  }${rectAt(x(low), middle - bar_px / 2, Math.max(1.5, x(high) - x(low)), bar_px, row.classes)}${
    i + 1 < rows.length ? ruleAt(x(row.to), middle, x(row.to), middle + row_px, "outline", "2 2") : nothing
  }${row.alone === null ? nothing : ring(x(row.alone), middle)}${textAt(edge + 8, middle + 4, row.said, "strong halo")}${aside(row, wide ? middle : y + 11, layout)}`;
}

const ring = (x: number, y: number): SVGTemplateResult =>
  svg`<circle class="hollow" cx=${px(x)} cy=${px(y)} r="4.5"></circle>`;

function rowName(row: Row, i: number, { x, row_px, wide, width_px, rows }: UpgradesLayout): SVGTemplateResult {
  const strong = i === 0 || i === rows.length - 1;
  const room = (wide ? x(0) - 12 : roomAbove_px(rows, width_px)) / (strong ? bold : 1);
  const lines = wrapText(row.name, room, 2);
  const first = wide ? i * row_px + row_px / 2 + 4 - (lines.length - 1) * 7 : i * row_px + 15;
  return svg`${lines.map((text, l) => textAt(0, first + l * 14, text, strong ? "strong halo" : "label halo"))}`;
}

/** The days with this change alone, behind the ring that marks them in the row. */
function aside({ aside: text }: Row, y: number, { width_px }: UpgradesLayout): Part {
  if (text === "") return nothing;
  return svg`${ring(width_px - textWidth_px(text) - 8, y)}${textAt(width_px, y + 4, text, "note end halo")}`;
}

function cursor({ options, rows, row_px, width_px }: UpgradesLayout): Part {
  const { at } = options;
  if (at === null || at === undefined || !rows[at]) return nothing;
  return rectAt(-3, at * row_px + 1, width_px + 6, row_px - 2, "cursor");
}

/** Positions are rows: 0 as it is, then the changes, then all together. */
export function upgradesGeometry(picture: UpgradesPicture, options: ChartOptions): ChartGeometry {
  const { rows, width_px, height_px, row_px, x } = upgradesLayout(picture, options);
  const stops = rows.map((_, i) => i);
  return {
    width_px,
    height_px,
    plot: { left: x(0), top: 0, right: width_px, bottom: height_px },
    stops,
    positionAt: (_x_px, y_px) => (stops.length === 0 ? 0 : nearest(stops, y_px / row_px - 0.5)),
  };
}
