import type { ExplainAnswer, SetupAnswer } from "@stayput/sim";

/**
 * The average sky's answer, with what only drawn skies can tell taken from the answer before: shown faded until the new
 * one comes. A setup that is new has nothing before it, and its average stands in.
 */
export function withStaleBand(first: ExplainAnswer, before: ExplainAnswer | null): ExplainAnswer {
  return {
    ...first,
    setups: first.setups.map((setup) => {
      const old = before?.setups.find(({ id }) => id === setup.id);
      return old === undefined ? setup : joined(setup, old);
    }),
  };
}

const joined = (setup: SetupAnswer, old: SetupAnswer): SetupAnswer => ({
  ...setup,
  days: { ...setup.days, drawn: old.days.drawn },
  reserveDays: { ...setup.reserveDays, drawn: old.reserveDays.drawn },
  chanceOfLasting: old.chanceOfLasting,
  without: keptOf(setup, old),
  charge: { ...old.charge, average: setup.charge.average, dark: setup.charge.dark },
});

/** Days without each load come last; until then those of before stand. */
export function withOldWithout(drawn: ExplainAnswer, before: ExplainAnswer | null): ExplainAnswer {
  return {
    ...drawn,
    setups: drawn.setups.map((setup) => {
      const old = before?.setups.find(({ id }) => id === setup.id);
      return old === undefined ? setup : { ...setup, without: keptOf(setup, old) };
    }),
  };
}

const keptOf = ({ use_Wh_day }: SetupAnswer, { without }: SetupAnswer): SetupAnswer["without"] =>
  without.filter(({ load }) => use_Wh_day.byLoad.some(({ id }) => id === load));
