import { sum } from "../paper/numbers.ts";
import type { ChartTable, FactOptions, Readout } from "../paper/picture.ts";
import { sayClock, sayNumber, sayWh } from "../paper/words.ts";
import { dayLayers } from "./dayLayers.ts";
import type { DayPicture } from "./dayPicture.ts";

const hourSpan = (hour: number): string => `${sayClock(hour)} to ${hour === 23 ? "24:00" : sayClock(hour + 1)}`;

/** One row an hour, one column a layer, and the day's totals at the foot. */
export function dayTable(picture: DayPicture, { locale, format }: FactOptions = {}): ChartTable {
  const say = format ?? ((value: number) => sayNumber(value, locale, 1));
  const layers = dayLayers(picture);
  return {
    caption: "A day of it: watt-hours in and out, hour by hour",
    columns: ["Hour", ...layers.map((layer) => `${layer.name} (${layer.side}, Wh)`)],
    rows: [
      ...Array.from({ length: 24 }, (_, h) => [hourSpan(h), ...layers.map((layer) => say(layer.Wh[h] ?? 0))]),
      ["All day", ...layers.map((layer) => say(layer.total_Wh))],
    ],
  };
}

/** The day in a sentence: what came, what went, what was left over. */
export function daySummary(picture: DayPicture, { locale, format }: FactOptions = {}): string {
  const say = format ?? ((value: number) => sayWh(value, locale));
  const layers = dayLayers(picture);
  const taken = sum(layers.filter((l) => l.side === "in" && l.id !== "sunUnused").map((l) => l.total_Wh));
  const out = layers.filter((layer) => layer.side === "out");
  const most = out[0] ? `, most of it ${out[0].name} (${say(out[0].total_Wh)})` : "";
  const unused = layers.find((layer) => layer.id === "sunUnused");
  const spare = unused ? `; ${say(unused.total_Wh)} of sun goes unused` : "";
  return `A day of it: ${say(taken)} in, ${say(sum(out.map((l) => l.total_Wh)))} out${most}${spare}.`;
}

/** What comes in and goes out in one clock hour; layers that are empty then are left out. */
export function dayReadout(picture: DayPicture, hour: number, { locale, format }: FactOptions = {}): Readout {
  const say = format ?? ((value: number) => sayWh(value, locale));
  const h = Math.min(23, Math.max(0, Math.floor(hour)));
  return {
    heading: hourSpan(h),
    lines: dayLayers(picture)
      .filter((layer) => (layer.Wh[h] ?? 0) > 0)
      .map((layer) => ({ name: layer.side === "in" ? `${layer.name}, in` : layer.name, value: say(layer.Wh[h] ?? 0) })),
  };
}
