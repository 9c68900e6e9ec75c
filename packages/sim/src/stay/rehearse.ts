import { bankModel } from "../bank/bankModel.ts";
import { prepareFeed } from "../feed/index.ts";
import type { ChemistryId, Feed } from "../study.ts";
import { hourlyLoads, type Drive } from "./drive.ts";

/**
 * Two made-up days that have everything in them, to be run before any other. An engine that compiles the hourly loop for what
 * it has seen drops what it compiled when something else comes by (a drive, a mains hour, a fraction where there were whole
 * numbers only), and may then be left with slower code for good: that befell one process in six, and cost it two to eight
 * times. Numbers that may be fractions are so here, as a field is else taken for one that holds whole numbers only.
 */
export const rehearsals = (): readonly Drive[] => [
  twoDays("agm", { kind: "relay", source, path: [] }, 1),
  twoDays("lfp", { ...converter, rated_A: 20.5 }, 0.5),
  twoDays("agm", { ...converter, rated_A: 90.5 }, 1),
  behindPlain(twoDays("agm", { kind: "relay", source, path: [] }, 1)),
];

/** The same days behind a plain charger, of which one hour is over its rating. */
const behindPlain = (drive: Drive): Drive => ({
  ...drive,
  sunTracks: false,
  sun: drive.sun.map((watts) => watts / 20),
});

const source = { volts: 14.2, low_V: 12.5, lowShare: 0.5, spare_A: 60.5 };
const converter = { kind: "converter", count: 1, efficiency: 0.9, minInput_V: 10.5, source, path: [] } as const;

function twoDays(chemistry: ChemistryId, feed: Feed, step_h: number): Drive {
  const bank = bankModel(
    {
      chemistry,
      nominal_V: 12,
      capacity_Ah: 60.5,
      condition: 0.95,
      where: "inside",
      reserve: null,
      cutOff_V: null,
      absorption_V: null,
      restedVolts: null,
    },
    20.5,
    step_h,
  );
  const hours = 48;
  /** a value for each hour of the day */
  const daily = (of: (hour: number) => number): Float64Array =>
    Float64Array.from({ length: hours }, (_, h) => of(h % 24));
  const between = (from: number, to: number) => (hour: number) => (hour >= from && hour < to ? 1 : 0);
  const [drives, mains, shines, tooMuch] = [between(6, 9), between(18, 20), between(10, 16), between(21, 24)];
  const loads = hourlyLoads(hours);
  loads.load_W.set(daily((hour) => (hour === 16 ? 0 : 40.5 + 900 * tooMuch(hour))));
  loads.element_W.set(daily((hour) => 60.5 * between(3, 5)(hour)));
  const driving = daily((hour) => (hour === 9 ? 0.5 : drives(hour)));
  return {
    bank,
    hours,
    startCharge: 0.95,
    loads,
    sun: daily((hour) => 300.5 * shines(hour) + 1500 * between(17, 18)(hour)),
    sunTracks: true,
    sunMost_A: 30.5,
    kept: daily(() => 0.9),
    mixed: {
      parked: daily((hour) => (hour === 9 ? 0.5 : 1 - drives(hour) - mains(hour))),
      driving,
      mains: daily(mains),
      drivingLoads: loads,
      mainsLoads: loads,
      feed: prepareFeed(feed),
      steadyFeed_A: feed.kind === "converter" && feed.rated_A < 50 ? feed.rated_A : NaN,
      mainsMost_A: 15.5,
    },
  };
}
