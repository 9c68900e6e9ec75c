import type { SetupAnswer, UnusedCause } from "@stayput/sim";
import { count, daysCell, percent, whole } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";
import { wrap } from "./wrap.ts";

const SHOWN = 12; // rows before the small ones are put together

/** Where the energy goes: loads by size, and for each how long the bank would last without it. */
export function whereItGoes(setup: SetupAnswer, horizon_days: number): string[] {
  const columns: Column[] = [
    { head: "load", align: "left" },
    ...["Wh/day", "share", "days without it:\naverage sky", "P50"].map((head): Column => ({ head, align: "right" })),
  ];
  const loads = [...setup.use_Wh_day.byLoad].sort((a, b) => b.Wh_day - a.Wh_day);
  const rows = loads.slice(0, SHOWN).map((load) => {
    const without = setup.without.find((one) => one.load === load.id);
    const days =
      without === undefined ? ["", ""] : [without.days, without.daysP50].map((d) => daysCell(d, horizon_days));
    return [plain(load.name, 36), whole(load.Wh_day), percent(load.share), ...days];
  });
  const rest = loads.slice(SHOWN);
  const sum = (of: (load: (typeof loads)[number]) => number): number =>
    rest.reduce((total, load) => total + of(load), 0);
  if (rest.length > 0) {
    rows.push([count(rest.length, "smaller load"), whole(sum((l) => l.Wh_day)), percent(sum((l) => l.share)), "", ""]);
  }
  return table(columns, [...rows, ["all", whole(setup.use_Wh_day.total), "", ...asItIs(setup, horizon_days)]]);
}

const asItIs = ({ days }: SetupAnswer, horizon_days: number): string[] =>
  [days.average, days.drawn.p50].map((d) => daysCell(d, horizon_days));

const causes: Record<UnusedCause, string> = {
  "bank-full": "the bank was full",
  "charger-rating": "the solar charger was at its rating",
  "bank-limit": "the bank would take no more amps",
  "too-cold": "the bank was too cold to charge",
  "loads-dropped": "the loads had dropped",
};

/** Sun under the average sky: what there was, what was used, and why the rest was not. */
export function sunUsed({ sun_Wh_day: sun, losses_Wh_day: losses }: SetupAnswer): string[] {
  if (!(sun.available > 0)) return ["Sun: none."];
  const why = [...sun.unusedWhy]
    .filter(({ Wh_day }) => Wh_day >= 0.5)
    .sort((a, b) => b.Wh_day - a.Wh_day)
    .map(({ cause, Wh_day }) => `${whole(Wh_day)} as ${causes[cause]}`);
  const unused = `unused ${whole(sun.unused)}${why.length === 0 ? "" : ` (${why.join(", ")})`}`;
  const lost = [
    [losses.inverter, "in the inverter"],
    [losses.charging, "in charging"],
    [losses.selfDischarge, "in self-discharge"],
  ] as const;
  const losing = lost.filter(([Wh]) => Wh >= 0.5).map(([Wh, where]) => `${whole(Wh)} ${where}`);
  return [
    ...wrap(`Sun, Wh a day, average sky: available ${whole(sun.available)}, used ${whole(sun.used)}, ${unused}.`, {
      hang: 2,
    }),
    ...(losing.length === 0 ? [] : wrap(`Lost on the way, Wh a day: ${losing.join(", ")}.`, { hang: 2 })),
  ];
}
