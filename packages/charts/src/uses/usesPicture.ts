import type { Days, SetupAnswer } from "@stayput/sim";

/** What one use takes a day [Wh], and the days it costs. */
export interface UseRow {
  readonly id: string;
  readonly name: string;
  readonly Wh_day: number;
  /** days without it; undefined where leaving it out makes no sense (a loss) or was not asked */
  readonly without_days?: Days | undefined;
}

/** Where a day's energy goes, the largest first. */
export interface UsesPicture {
  readonly setup: string;
  /** median days as it is */
  readonly days: Days;
  readonly horizon_days: number;
  readonly rows: readonly UseRow[];
}

/** The uses of one setup, with the losses of charging and of standing as rows of their own. */
export function usesPictureOf(answer: SetupAnswer, horizon_days: number): UsesPicture {
  const without = new Map(answer.without.map((row) => [row.load, row.daysP50]));
  const loads = answer.use_Wh_day.byLoad.map(({ id, name, Wh_day }) => ({
    id,
    name,
    Wh_day,
    without_days: without.get(id),
  }));
  const { charging, selfDischarge } = answer.losses_Wh_day;
  const losses = [
    { id: "loss:charging", name: "Lost in charging", Wh_day: charging },
    { id: "loss:standing", name: "Lost by standing", Wh_day: selfDischarge },
  ].filter((row) => row.Wh_day > 0);
  return { setup: answer.name, days: answer.days.drawn.p50, horizon_days, rows: [...loads, ...losses] };
}
