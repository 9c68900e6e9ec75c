import type { Days, LoadUse, SetupAnswer, UnusedCause } from "@stayput/sim";
import { count, daysCell, percent, whole } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";
import { wrap } from "./wrap.ts";

const SHOWN = 12; // rows before the small ones are put together
const LEAST_Wh_day = 0.5; // less is shown as nothing

/** Where the energy goes: loads by size, and for each how long the bank would last without it. */
export function whereItGoes(setup: SetupAnswer, horizon_days: number): string[] {
  const loads = setup.use_Wh_day.byLoad.toSorted((a, b) => b.Wh_day - a.Wh_day);
  const drawing = loads.filter(({ Wh_day }) => Wh_day >= LEAST_Wh_day);
  const idle = loads.filter(({ Wh_day }) => !(Wh_day >= LEAST_Wh_day)).map(({ name }) => plain(name, 40));
  const rows = [
    ...drawing.slice(0, SHOWN).map((load) => loadRow(load, setup, horizon_days)),
    ...restRow(drawing.slice(SHOWN)),
    ["all", whole(setup.use_Wh_day.total), "", ...daysCells([setup.days.average, setup.days.drawn.p50], horizon_days)],
  ];
  return [
    ...table(columns, rows),
    ...(idle.length === 0 ? [] : wrap(`Nothing on this stay: ${idle.join(", ")}.`, { hang: 2 })),
  ];
}

const columns: Column[] = [
  { head: "load", align: "left" },
  { head: "Wh/day", align: "right" },
  { head: "share", align: "right" },
  { head: "days without it:\naverage sky", align: "right" },
  { head: "P50", align: "right" },
];

const daysCells = (days: readonly Days[], horizon_days: number): string[] =>
  days.map((one) => daysCell(one, horizon_days));

function loadRow(load: LoadUse, { without }: SetupAnswer, horizon_days: number): string[] {
  const left = without.find((one) => one.load === load.id);
  const days = left === undefined ? ["", ""] : daysCells([left.days, left.daysP50], horizon_days);
  return [plain(load.name, 36), whole(load.Wh_day), percent(load.share), ...days];
}

/** What is too small for a row of its own. */
function restRow(rest: readonly LoadUse[]): string[][] {
  if (rest.length === 0) return [];
  const sum = (of: (load: LoadUse) => number): number => rest.reduce((total, load) => total + of(load), 0);
  return [[count(rest.length, "smaller load"), whole(sum((l) => l.Wh_day)), percent(sum((l) => l.share)), "", ""]];
}

const causes: Record<UnusedCause, string> = {
  "bank-full": "the bank was full",
  "bank-limit": "the bank would take no more amps",
  "too-cold": "the bank was too cold to charge",
  "loads-dropped": "the loads had dropped",
};

/** Sun under the average sky: what there was, what was used, and why the rest was not; and what was lost on the way. */
export function sunUsed({ sun_Wh_day: sun, losses_Wh_day: losses }: SetupAnswer): string[] {
  const lost = [
    [losses.inverter, "in the inverter"],
    [losses.charging, "in charging"],
    [losses.selfDischarge, "in self-discharge"],
  ] as const;
  const losing = lost.filter(([Wh]) => Wh >= 0.5).map(([Wh, where]) => `${whole(Wh)} ${where}`);
  const said = [
    sun.available > 0 ? `Sun, Wh a day, average sky: ${sunSaid(sun)}.` : "Sun: none.",
    ...(sun.overCharger >= 0.5
      ? [`Over the solar charger's rating, and lost: ${whole(sun.overCharger)} Wh a day.`]
      : []),
    ...(losing.length > 0 ? [`Lost on the way, Wh a day: ${losing.join(", ")}.`] : []),
  ];
  return said.flatMap((sentence) => wrap(sentence, { hang: 2 }));
}

function sunSaid({ available, used, unused, unusedWhy }: SetupAnswer["sun_Wh_day"]): string {
  const why = unusedWhy
    .filter(({ Wh_day }) => Wh_day >= 0.5)
    .toSorted((a, b) => b.Wh_day - a.Wh_day)
    .map(({ cause, Wh_day }) => `${whole(Wh_day)} as ${causes[cause]}`);
  const reasons = why.length === 0 ? "" : ` (${why.join(", ")})`;
  return `available ${whole(available)}, used ${whole(used)}, unused ${whole(unused)}${reasons}`;
}
