import type { Days } from "@stayput/sim";
import { bounded } from "../words/bounded.ts";
import type { Option } from "./options.ts";

/** A load that could be left off, and what that buys. */
export interface LeftOff {
  readonly id: string;
  readonly name: string;
  readonly isFridge: boolean;
  /** of the first setup that has it [Wh/day] */
  readonly Wh_day: number;
  /** of each option in turn: usual days without it; undefined where the option has no such load */
  readonly days: readonly (Days | undefined)[];
}

/** What to do when the sun stays away. */
export interface DullWeeks {
  /** those that use most first; fridges last, for they are switched off only when empty */
  readonly leftOff: readonly LeftOff[];
  /** how many smaller loads are left out of the list */
  readonly smaller: number;
  /** what to leave off first with the first option, and the usual days it buys; null where nothing tells */
  readonly first: { readonly name: string; readonly buys_days: number } | null;
}

/** Uses under this are not worth a row [Wh/day]. */
const least_Wh_day = 0.5;

/** From the answers alone: which loads to leave off, and what each buys. */
export function dullWeeks(options: readonly Option[], most = 5): DullWeeks {
  const all = everyLoad(options).filter(({ Wh_day }) => Wh_day >= least_Wh_day);
  const kept = all.slice(0, most);
  const inOrder = [...kept.filter(({ isFridge }) => !isFridge), ...kept.filter(({ isFridge }) => isFridge)];
  return { leftOff: inOrder, smaller: all.length - kept.length, first: firstToGo(options[0], inOrder) };
}

function everyLoad(options: readonly Option[]): LeftOff[] {
  const found = new Map<string, LeftOff>();
  for (const { answer, setup } of options) {
    for (const { id, name, Wh_day } of answer.use_Wh_day.byLoad) {
      if (found.has(id)) continue;
      const isFridge = setup.loads.some((load) => load.id === id && load.kind !== "appliance");
      found.set(id, {
        id,
        name: bounded(name, 40),
        isFridge,
        Wh_day,
        days: options.map((one) => daysWithout(one, id)),
      });
    }
  }
  return [...found.values()].sort((a, b) => b.Wh_day - a.Wh_day);
}

const daysWithout = ({ answer }: Option, id: string): Days | undefined =>
  answer.without.find(({ load }) => load === id)?.daysP50;

function firstToGo(option: Option | undefined, loads: readonly LeftOff[]): DullWeeks["first"] {
  const now = option?.answer.days.drawn.p50 ?? null;
  const gains = loads.flatMap(({ name, isFridge, days: [days] }) =>
    isFridge || now === null || days === undefined || days === null ? [] : [{ name, buys_days: days - now }],
  );
  const [best] = gains.sort((a, b) => b.buys_days - a.buys_days);
  return best !== undefined && best.buys_days >= 0.05 ? best : null;
}
