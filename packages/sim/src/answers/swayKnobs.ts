import { mostCapacity_Ah } from "../bank/bankModel.ts";
import type { Climate, Load, Setup, Study, Trip } from "../study.ts";
import type { SwayRow } from "./sway.ts";

/** An assumption that can be turned. */
export interface Knob extends Pick<SwayRow, "id" | "name" | "now" | "turned" | "unit"> {
  readonly turn: (study: Study) => Study;
}

/** A tenth more, and never past what is accepted of it. */
const tenthMore = (now: number, most = Infinity): number => Math.max(-most, Math.min(most, now * 1.1));
const most_kWh_m2_day = 15;
/** A bay may be colder than outside, but not by so much. */
const most_K = 20;

/** Everything worth turning: what stands at nothing cannot be turned by a tenth of itself, and is left out. */
export const knobsOf = (trip: Trip, climate: Climate, setup: Setup): Knob[] =>
  [
    capacity(setup),
    ...(setup.arrays.length === 0 ? [] : [sunshine(trip, climate), watts(setup)]),
    start(trip),
    ...(setup.loads.some(({ kind }) => kind !== "appliance") ? [bay(trip)] : []),
    ...setup.loads.flatMap(loadKnob),
  ].filter(({ now }) => now !== 0);

const onSetup =
  (change: (setup: Setup) => Setup) =>
  (study: Study): Study => ({ ...study, setups: study.setups.map(change) });

const capacity = ({ bank: { capacity_Ah } }: Setup): Knob => ({
  id: "capacity",
  name: "Capacity of the bank",
  now: capacity_Ah,
  turned: tenthMore(capacity_Ah, mostCapacity_Ah),
  unit: "Ah",
  turn: onSetup((each) => ({ ...each, bank: { ...each.bank, capacity_Ah: tenthMore(capacity_Ah, mostCapacity_Ah) } })),
});

const sunshine = ({ month }: Trip, { ghi_kWh_m2_day }: Climate): Knob => ({
  id: "sun",
  name: "Sunshine of the month",
  now: ghi_kWh_m2_day[month - 1]!,
  turned: tenthMore(ghi_kWh_m2_day[month - 1]!, most_kWh_m2_day),
  unit: "kWh/m² a day",
  turn: (study) => ({
    ...study,
    climate: { ...study.climate, ghi_kWh_m2_day: ghi_kWh_m2_day.map((ghi) => tenthMore(ghi, most_kWh_m2_day)) },
  }),
});

function watts({ arrays }: Setup): Knob {
  const all_W = arrays.reduce((sum, array) => sum + array.watts, 0);
  return {
    id: "array",
    name: "Watts of panels",
    now: all_W,
    turned: tenthMore(all_W),
    unit: "W",
    turn: onSetup((each) => ({
      ...each,
      arrays: each.arrays.map((array) => ({ ...array, watts: tenthMore(array.watts) })),
    })),
  };
}

const start = ({ startCharge }: Trip): Knob => ({
  id: "start",
  name: "Charge on arrival",
  now: startCharge * 100,
  turned: startCharge * 90,
  unit: "%",
  turn: (study) => ({ ...study, trip: { ...study.trip, startCharge: startCharge * 0.9 } }),
});

function bay({ bayOffset_C }: Trip): Knob {
  const turned = tenthMore(bayOffset_C, bayOffset_C > 0 ? 2 * most_K : most_K);
  return {
    id: "bay",
    name: "Warmth of the fridge's bay",
    now: bayOffset_C,
    turned,
    unit: "°C above outside",
    turn: (study) => ({ ...study, trip: { ...study.trip, bayOffset_C: turned } }),
  };
}

/** A load's own rating; an absorption fridge's where its element runs off the bank. */
function loadKnob(load: Load): Knob[] {
  const knob = (now: number, turned: number, unit: string, instead: Load): Knob[] => [
    {
      id: `load:${load.id}`,
      name: load.name,
      now,
      turned,
      unit,
      turn: onSetup((setup) => ({
        ...setup,
        loads: setup.loads.map((each) => (each.id === load.id ? instead : each)),
      })),
    },
  ];
  switch (load.kind) {
    case "appliance": {
      const watts = tenthMore(load.watts);
      return knob(load.watts, watts, "W", { ...load, watts });
    }
    case "compressor-fridge": {
      // no more than its compressor can draw
      const rated_Wh_day = tenthMore(load.rated_Wh_day, 24 * load.compressor_W);
      return knob(load.rated_Wh_day, rated_Wh_day, "Wh a day as rated", { ...load, rated_Wh_day });
    }
    case "absorption-fridge": {
      if (load.burns !== "dc") return [];
      const element_dc_W = tenthMore(load.element_dc_W);
      return knob(load.element_dc_W, element_dc_W, "W element", { ...load, element_dc_W });
    }
  }
}
