import { finite, sum } from "../paper/numbers.ts";
import { restTone, toneClass, type EnergyKind } from "../paper/hatches.ts";
import type { DayHour, DayPicture } from "./dayPicture.ts";

/** One layer of the pile: 24 hourly values, and where each starts, counted away from the middle line. */
export interface DayLayer {
  readonly id: string;
  readonly name: string;
  readonly side: "in" | "out";
  readonly look: { readonly hatch: EnergyKind } | { readonly classes: string };
  readonly Wh: readonly number[];
  readonly from: readonly number[];
  readonly total_Wh: number;
}

type Bare = Omit<DayLayer, "from" | "total_Wh">;

/** More loads than this and the smallest are put together. */
export const namedLoads = 6;

const hoursOf = (picture: DayPicture): readonly DayHour[] => {
  if (picture.hours.length > 24) throw new RangeError(`hours must be at most 24, got ${picture.hours.length}`);
  return picture.hours;
};

const column = (picture: DayPicture, field: string, value: (hour: DayHour) => number): number[] =>
  Array.from({ length: 24 }, (_, h) => {
    const hour = hoursOf(picture)[h];
    return hour ? Math.max(0, finite(`${field} at hour ${h}`, value(hour))) : 0;
  });

/** What comes in, nearest the line first; kinds that give nothing all day are left out. */
function inLayers(picture: DayPicture): Bare[] {
  const layer = (id: string, name: string, look: Bare["look"], value: (hour: DayHour) => number): Bare => ({
    id,
    name,
    side: "in",
    look,
    Wh: column(picture, id, value),
  });
  return [
    layer("sun", "Sun", { hatch: "sun" }, (hour) => hour.in.sun_Wh),
    layer("road", "Road", { hatch: "road" }, (hour) => hour.in.road_Wh),
    layer("mains", "Mains", { hatch: "mains" }, (hour) => hour.in.mains_Wh),
    layer("sunUnused", "Sun unused", { classes: "unused" }, (hour) => hour.in.sunUnused_Wh),
  ].filter((bare) => sum(bare.Wh) > 0);
}

/** What goes out, the largest load nearest the line. */
function outLayers(picture: DayPicture): Bare[] {
  const names = new Map(hoursOf(picture).flatMap((hour) => hour.out.map((load) => [load.id, load.name] as const)));
  const all = [...names].map(([id, name]) => ({
    id,
    name,
    Wh: column(picture, id, (hour) => sum(hour.out.filter((load) => load.id === id).map((load) => load.Wh))),
  }));
  const ranked = all.filter((load) => sum(load.Wh) > 0).sort((a, b) => sum(b.Wh) - sum(a.Wh));
  const keep = ranked.length > namedLoads ? namedLoads : ranked.length;
  const named = ranked.slice(0, keep).map((load, i) => outLayer(load, toneClass(i)));
  const rest = ranked.slice(keep);
  return rest.length === 0 ? named : [...named, outLayer(grouped(rest), restTone)];
}

const outLayer = (load: { id: string; name: string; Wh: readonly number[] }, classes: string): Bare => ({
  ...load,
  side: "out",
  look: { classes },
});

const grouped = (loads: readonly { Wh: readonly number[] }[]) => ({
  id: "others",
  name: loads.length === 1 ? "1 other" : `${loads.length} others`,
  Wh: Array.from({ length: 24 }, (_, h) => sum(loads.map((load) => load.Wh[h] ?? 0))),
});

function piled(bares: readonly Bare[]): DayLayer[] {
  const height = new Array<number>(24).fill(0);
  return bares.map((bare) => {
    const from = [...height];
    bare.Wh.forEach((value, h) => (height[h] = (height[h] ?? 0) + value));
    return { ...bare, from, total_Wh: sum(bare.Wh) };
  });
}

/** Every layer of the day, in above and out below. */
export const dayLayers = (picture: DayPicture): DayLayer[] => [
  ...piled(inLayers(picture)),
  ...piled(outLayers(picture)),
];

/** Stretches of hours in which a layer has any thickness, as [first, last + 1]. */
export function runsOf(Wh: readonly number[]): [number, number][] {
  const runs: [number, number][] = [];
  Wh.forEach((value, h) => {
    const open = runs.at(-1);
    if (!(value > 0)) return;
    if (open && open[1] === h) open[1] = h + 1;
    else runs.push([h, h + 1]);
  });
  return runs;
}
