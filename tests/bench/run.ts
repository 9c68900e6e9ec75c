import { explain } from "../../packages/sim/src/answers/explain.ts";
import { roundTheYear } from "../../packages/sim/src/answers/roundTheYear.ts";
import { size } from "../../packages/sim/src/answers/size.ts";
import type { SizeRequest } from "../../packages/sim/src/answers/sizeTypes.ts";
import { chemistries } from "../../packages/sim/src/bank/index.ts";
import {
  harvest,
  newFound,
  planSetup,
  planStay,
  run,
  shine,
  skyOf,
  type Drive,
} from "../../packages/sim/src/stay/index.ts";
import type { ConverterFeed, Setup, Trip } from "../../packages/sim/src/study.ts";
import { threeWay } from "../fixtures/loads.ts";
import {
  busySetup,
  dryTropics,
  lithium,
  openCamp,
  setup,
  shadedCamp,
  study,
  tiredAgm,
  twoAgm,
} from "../fixtures/stays.ts";
import { searches } from "./searches.ts";
import { hoistedLoop, textbookLoop } from "./textbook.ts";
import { cpu_ms, interleaved, median } from "./timing.ts";

/** `npm run bench`: speed as ratios within one run, and memory. Nothing is asserted: the machine is never alone. */

const horizon_days = 60;
const hours = horizon_days * 24;
const repeats = 200;

function driveOf(one: Setup, trip: Trip, kind: "parked" | "travelled" = "parked"): Drive {
  const plan = planStay(dryTropics, trip, horizon_days);
  const setupPlan = planSetup(plan, one);
  shine(plan, skyOf(plan, { seed: 1, draws: 9 }, 2));
  harvest(setupPlan);
  return { ...setupPlan[kind], sun: setupPlan[kind].sun.slice() };
}

const travels: Trip = {
  ...shadedCamp,
  nights: horizon_days,
  drives: { everyNights: 3, hours: 3, departs: 9 },
  mains: { everyNights: 7, hours: 12, from: 18 },
};
const converter: ConverterFeed = {
  kind: "converter",
  rated_A: 25,
  count: 1,
  efficiency: 0.9,
  minInput_V: 10.5,
  source: { volts: 14.2, low_V: 12.5, lowShare: 0.8, spare_A: 60 },
  path: [{ kind: "cable", length_m: 6, area_mm2: 10, conductorClass: 5, temp_C: 40 }],
};
const fedSetup: Setup = { ...setup(twoAgm, 300), mainsCharger: { rated_A: 30 }, feed: converter };
const relaySetup: Setup = { ...fedSetup, feed: { ...converter, kind: "relay" } };
const threeWaySetup: Setup = { ...relaySetup, loads: [...relaySetup.loads, threeWay] };
const fromHalfPast: Trip = { ...travels, drives: { everyNights: 3, hours: 3, departs: 9.5 } };
const heldSetup: Setup = {
  ...fedSetup,
  feed: { ...converter, rated_A: 50, source: { ...converter.source, spare_A: 40 } },
};
const onTheBank: Setup = setup(twoAgm, 400, [{ ...threeWay, burns: "dc" }]);
const pwm: Setup = { ...setup(twoAgm, 300), solarCharger: { kind: "pwm", rated_A: 30 } };

/** Each drive has everything on: volts under load, losses, acceptance, cut-off and return, self-discharge. */
const drives: Readonly<Record<string, Drive>> = {
  "AGM, 400 W, open": driveOf(setup(twoAgm, 400), openCamp),
  "AGM, 300 W, part shade, flat every night": driveOf(setup(twoAgm, 300), shadedCamp),
  "AGM, 300 W through a plain charger": driveOf(pwm, shadedCamp),
  "lithium, 400 W": driveOf(setup(lithium, 400), openCamp),
  "AGM on the road: converter, mains, shade": driveOf(fedSetup, travels, "travelled"),
  "AGM on the road, through a relay": driveOf(relaySetup, travels, "travelled"),
  "the same, from half past, three-way fridge": driveOf(threeWaySetup, fromHalfPast, "travelled"),
  "a converter that its cable holds": driveOf(heldSetup, travels, "travelled"),
  "three-way fridge on 12 V while camped": driveOf(onTheBank, openCamp),
};

function recurrence(): void {
  const found = newFound();
  const held_Ah = new Float64Array(hours + 1);
  const net_A = Float64Array.from({ length: hours }, (_, h) => 5 * Math.sin(0.26 * h) - 0.5);
  const { c, k_per_h, full_Ah } = chemistries.agm;
  let sink = 0;
  const times = (one: () => void) => () => {
    for (let i = 0; i < repeats; i++) one();
  };
  const cases = {
    textbook: times(() => (sink += textbookLoop({ c, k_per_h, full_Ah: 2 * full_Ah }, net_A))),
    hoisted: times(() => (sink += hoistedLoop({ c, k_per_h, full_Ah: 2 * full_Ah }, net_A))),
    ...Object.fromEntries(
      Object.entries(drives).map(([name, drive]) => [name, times(() => run(drive, found, { held_Ah }))] as const),
    ),
  };
  // a quarter of a minute, since a neighbour on the same core stays busy for many seconds at a time
  const taken = interleaved(cases, 90);
  const perStep_ns = (name: string): number => (taken.get(name)! * 1e6) / repeats / hours;
  console.log("\nThe recurrence, one step of an hour\n");
  console.log(line("", "ns", "× textbook", "× hoisted"));
  for (const name of Object.keys(cases)) {
    const ns = perStep_ns(name);
    const ratio = (to: string): string => (ns / perStep_ns(to)).toFixed(1);
    console.log(line(name, ns.toFixed(1), ratio("textbook"), ratio("hoisted")));
  }
  if (!(sink > -Infinity)) console.log(sink);
}

const line = (name: string, ...cells: string[]): string =>
  name.padEnd(44) + cells.map((cell) => cell.padStart(13)).join("");

/** Bytes taken from the heap for each step, over a million of them; the few objects that a run makes are in it. */
function allocation(): void {
  const found = newFound();
  const runs = 20;
  console.log("\nBytes allocated a step, over a million steps\n");
  for (const [name, drive] of Object.entries(drives)) {
    for (let i = 0; i < 500; i++) run(drive, found); // until it is compiled
    const bytes: number[] = [];
    for (let steps = 0; steps < 1e6; steps += runs * drive.hours) {
      const before = process.memoryUsage().heapUsed;
      for (let i = 0; i < runs; i++) run(drive, found);
      const grown = process.memoryUsage().heapUsed - before;
      if (grown >= 0) bytes.push(grown); // less after a collection
    }
    console.log(line(name, (median(bytes) / runs / drive.hours).toFixed(2)));
  }
}

const skies = { seed: 1, draws: 200 };
/** The same hours through the bare loop. */
function bare_ms(steps: number): number {
  const net_A = new Float64Array(hours).fill(1);
  const bank = { ...chemistries.agm, full_Ah: 2 * chemistries.agm.full_Ah };
  const rounds = Math.ceil(steps / hours);
  return cpu_ms(() => {
    for (let i = 0; i < rounds; i++) textbookLoop(bank, net_A);
  });
}

const answers: readonly (readonly [string, steps: number, () => unknown])[] = [
  [
    "explain: 2 setups, 200 skies, 60 days",
    2 * 200 * hours,
    () => explain(study([setup(twoAgm, 300), busySetup], shadedCamp), { skies }),
  ],
  [
    "explain, days without each load left out",
    2 * 200 * hours,
    () => explain(study([setup(twoAgm, 300), busySetup], shadedCamp), { skies, without: false }),
  ],
  [
    "explain: 4 setups, 200 skies, 60 days",
    4 * 200 * hours,
    () =>
      explain(study([setup(tiredAgm, 300), setup(twoAgm, 300), setup(lithium, 300), setup(lithium, 600)]), {
        skies,
        without: false,
      }),
  ],
  [
    "round the year: 2 setups",
    2 * 12 * 200 * hours,
    () => roundTheYear(study([setup(twoAgm, 300), setup(lithium, 400)]), skies),
  ],
];

const ladder = Array.from({ length: 12 }, (_, i) => i + 1);
const request: SizeRequest = {
  nights: 14,
  chance: 0.9,
  months: [1, 5, 10],
  chemistries: ["agm", "lfp"],
  banks: (["agm", "lfp"] as const).flatMap((chemistry) =>
    ladder.map((n) => ({ chemistry, capacity_Ah: 50 * n, price: 300 * n, mass_kg: 12 * n })),
  ),
  arrays: ladder.map((n) => ({ watts: 100 * n, price: 150 * n, mass_kg: 6 * n })),
  roof_W: null,
  payload_kg: null,
  removed_kg: 0,
  budget: null,
};

function wholeAnswers(): void {
  console.log("\nWhole answers, after start-up\n");
  console.log(line("", "ms", "× bare loop"));
  for (const [name, steps, ask] of answers) {
    ask();
    const taken = median([0, 1, 2].map(() => cpu_ms(ask)));
    console.log(line(name, taken.toFixed(0), (taken / bare_ms(steps)).toFixed(1)));
  }
  const sized = size(study([setup(twoAgm, 300)]), setup(twoAgm, 300), request, skies);
  const taken = cpu_ms(() => size(study([setup(twoAgm, 300)]), setup(twoAgm, 300), request, skies));
  const name = "size: AGM and lithium, 12 × 12, 3 months, 14 nights";
  console.log(line(name, taken.toFixed(0), (taken / bare_ms(sized.bankRuns * 14 * 24)).toFixed(1)));
  const fewer = (sized.gridRuns / sized.bankRuns).toFixed(1);
  console.log(`  ${sized.bankRuns} bank runs where the whole grid takes ${sized.gridRuns}: ${fewer} times fewer`);
  searches(line, bare_ms);
}

/** In a fresh process, `explain` alone. */
function peak(): void {
  const before_MB = process.memoryUsage().rss / 1e6;
  explain(study([setup(twoAgm, 300), busySetup], shadedCamp), { skies });
  const peak_MB = process.resourceUsage().maxRSS / 1e3;
  console.log(`peak memory ${peak_MB.toFixed(0)} MB, of which ${before_MB.toFixed(0)} MB before the first sky`);
}

if (process.argv.includes("--peak")) peak();
else {
  recurrence();
  allocation();
  wholeAnswers();
  console.log("\n`npm run bench -- --peak` for the peak memory of explain alone");
}
