import type { Days, ExplainAnswer, SetupAnswer, Spread } from "@stayput/sim";

type Join = (setup: SetupAnswer, old: SetupAnswer) => SetupAnswer;

/** Each setup joined with what was known of it; one that is new stands as it is. */
function joinedWith(answer: ExplainAnswer, before: ExplainAnswer | null, join: Join): ExplainAnswer {
  return {
    ...answer,
    horizon_days: before?.horizon_days ?? answer.horizon_days,
    setups: answer.setups.map((setup) => {
      const old = before?.setups.find(({ id }) => id === setup.id);
      return old === undefined ? setup : join(setup, old);
    }),
  };
}

/**
 * The average sky's answer, with what only drawn skies can tell taken from the answer before: shown faded until the new
 * one comes.
 */
export const withStaleBand = (first: ExplainAnswer, before: ExplainAnswer | null): ExplainAnswer =>
  joinedWith(first, before, (setup, old) => ({
    ...setup,
    days: { ...setup.days, drawn: old.days.drawn },
    reserveDays: { ...setup.reserveDays, drawn: old.reserveDays.drawn },
    chanceOfLasting: old.chanceOfLasting,
    without: keptOf(setup, old),
    charge: { ...old.charge, average: setup.charge.average, dark: setup.charge.dark },
  }));

/** The near horizon's answer; what lies beyond it stays as it was until the whole one comes. */
export const withOldBeyond = (near: ExplainAnswer, before: ExplainAnswer | null): ExplainAnswer =>
  near.horizon_days >= (before?.horizon_days ?? 0)
    ? withOldWithout(near, before)
    : joinedWith(near, before, (setup, old) => ({
        ...setup,
        days: { ...setup.days, drawn: beyond(setup.days.drawn, old.days.drawn, near.horizon_days) },
        reserveDays: {
          ...setup.reserveDays,
          drawn: beyond(setup.reserveDays.drawn, old.reserveDays.drawn, near.horizon_days),
        },
        without: keptOf(setup, old),
      }));

/** Days without each load come last; until then those of before stand. */
export const withOldWithout = (whole: ExplainAnswer, before: ExplainAnswer | null): ExplainAnswer => ({
  ...joinedWith(whole, before, (setup, old) => ({ ...setup, without: keptOf(setup, old) })),
  horizon_days: whole.horizon_days,
});

function beyond(near: Spread, old: Spread, horizon_days: number): Spread {
  const either = (now: Days, was: Days): Days => now ?? (was === null ? null : Math.max(was, horizon_days));
  return { p10: either(near.p10, old.p10), p50: either(near.p50, old.p50), p90: either(near.p90, old.p90) };
}

const keptOf = ({ use_Wh_day }: SetupAnswer, { without }: SetupAnswer): SetupAnswer["without"] =>
  without.filter(({ load }) => use_Wh_day.byLoad.some(({ id }) => id === load));
