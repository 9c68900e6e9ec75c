import { compareInParts, type Days, type InParts, type Load, type Setup, type Study } from "@stayput/sim";

/** What a tenth more of one assumption does to the days. */
export interface SwayRow {
  readonly id: string;
  readonly name: string;
  /** where it stands now, in words */
  readonly now: string;
  readonly more: string;
  readonly average: Days;
  readonly average_more: Days;
  readonly p50: Days;
  readonly p50_more: Days;
  /** change of the median, horizon for what does not run down [days] */
  readonly change_days: number;
}

interface Knob {
  readonly id: string;
  readonly name: string;
  readonly now: string;
  readonly more: string;
  readonly turn: (study: Study) => Study;
}

const draws = 60;
const tenth = 1.1;
const figure = (value: number, digits = 3) => String(Number(value.toPrecision(digits)));

/** Turns one assumption after another up by a tenth, under the same skies; the greatest change first. */
export function* swayInParts(study: Study, setup: Setup): InParts<readonly SwayRow[]> {
  const skies = { seed: 1, draws };
  const alone = { ...study, setups: [setup] };
  const base = yield* last(compareInParts(alone, { skies }));
  const knobs = knobsOf(study, setup);
  const rows: SwayRow[] = [];
  for (const [i, knob] of knobs.entries()) {
    yield { progress: i / knobs.length };
    const turned = yield* last(compareInParts(knob.turn(alone), { skies }));
    const [was, is] = [base.setups[0]!.days, turned.setups[0]!.days];
    const capped = (days: Days) => days ?? base.horizon_days;
    rows.push({
      id: knob.id,
      name: knob.name,
      now: knob.now,
      more: knob.more,
      average: was.average,
      average_more: is.average,
      p50: was.drawn.p50,
      p50_more: is.drawn.p50,
      change_days: capped(is.drawn.p50) - capped(was.drawn.p50),
    });
  }
  return rows.sort((a, b) => Math.abs(b.change_days) - Math.abs(a.change_days));
}

/** Runs a question inside another: pauses where it does, without its progress. */
function* last<A>(parts: InParts<A>): Generator<{ readonly progress: number }, A, void> {
  for (;;) {
    const { done, value } = parts.next();
    if (done === true) return value;
    yield { progress: 0 };
  }
}

const onSetup =
  (change: (setup: Setup) => Setup) =>
  (study: Study): Study => ({ ...study, setups: study.setups.map(change) });

function knobsOf({ climate, trip }: Study, setup: Setup): Knob[] {
  const { bank } = setup;
  const sun = climate.ghi_kWh_m2_day[trip.month - 1] ?? 0;
  const watts = setup.arrays.reduce((sum, array) => sum + array.watts, 0);
  const panels: Knob[] =
    setup.arrays.length === 0
      ? []
      : [
          {
            id: "sun",
            name: "Sunshine of the month",
            now: `${figure(sun)} kWh/m² a day`,
            more: `${figure(sun * tenth)} kWh/m² a day`,
            turn: (study) => ({
              ...study,
              climate: { ...study.climate, ghi_kWh_m2_day: climate.ghi_kWh_m2_day.map((ghi) => ghi * tenth) },
            }),
          },
          {
            id: "array",
            name: "Watts of panels",
            now: `${figure(watts)} W`,
            more: `${figure(watts * tenth)} W`,
            turn: onSetup((each) => ({
              ...each,
              arrays: each.arrays.map((array) => ({ ...array, watts: array.watts * tenth })),
            })),
          },
        ];
  return [
    {
      id: "capacity",
      name: "Capacity of the bank",
      now: `${figure(bank.capacity_Ah)} Ah`,
      more: `${figure(bank.capacity_Ah * tenth)} Ah`,
      turn: onSetup((each) => ({ ...each, bank: { ...each.bank, capacity_Ah: each.bank.capacity_Ah * tenth } })),
    },
    ...panels,
    ...startKnob(trip.startCharge),
    {
      id: "bay",
      name: "Warmth of the fridge's bay and the air",
      now: `bay ${figure(trip.bayOffset_C)} °C above outside`,
      more: `a tenth of the way warmer, ${figure(trip.bayOffset_C + 2)} °C above`,
      turn: (study) => ({ ...study, trip: { ...study.trip, bayOffset_C: trip.bayOffset_C + 2 } }),
    },
    ...setup.loads.flatMap((load) => loadKnob(load)),
  ];
}

/** A full bank cannot arrive fuller, so the start is turned down. */
const startKnob = (start: number): Knob[] => [
  {
    id: "start",
    name: "Charge on arrival",
    now: `${figure(start * 100)} %`,
    more: `${figure(start * 90)} %`,
    turn: (study) => ({ ...study, trip: { ...study.trip, startCharge: start * 0.9 } }),
  },
];

function loadKnob(load: Load): Knob[] {
  const turned = (change: (load: Load) => Load) =>
    onSetup((setup) => ({ ...setup, loads: setup.loads.map((each) => (each.id === load.id ? change(each) : each)) }));
  const base = { id: `load:${load.id}`, name: load.name };
  switch (load.kind) {
    case "appliance":
      return [
        {
          ...base,
          now: `${figure(load.watts)} W`,
          more: `${figure(load.watts * tenth)} W`,
          turn: turned((each) => (each.kind === "appliance" ? { ...each, watts: each.watts * tenth } : each)),
        },
      ];
    case "compressor-fridge":
      return [
        {
          ...base,
          now: `${figure(load.rated_Wh_day)} Wh a day as rated`,
          more: `${figure(load.rated_Wh_day * tenth)} Wh a day as rated`,
          turn: turned((each) =>
            each.kind === "compressor-fridge" ? { ...each, rated_Wh_day: each.rated_Wh_day * tenth } : each,
          ),
        },
      ];
    case "absorption-fridge":
      return load.burns === "dc"
        ? [
            {
              ...base,
              now: `${figure(load.element_dc_W)} W element`,
              more: `${figure(load.element_dc_W * tenth)} W element`,
              turn: turned((each) =>
                each.kind === "absorption-fridge" ? { ...each, element_dc_W: each.element_dc_W * tenth } : each,
              ),
            },
          ]
        : [];
  }
}
