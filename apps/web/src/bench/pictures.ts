import { sizingDefaults } from "@stayput/job/sizing";
import {
  chargePictureOf,
  type ChargePicture,
  type RunPicture,
  type SizePicture,
  type UpgradesPicture,
} from "@stayput/charts";
import type { ChargeMoment, ChargeRunAnswer, ExplainAnswer, SizeGrid, SizePoint, UpgradesAnswer } from "@stayput/sim";
import type { Read } from "../worker/protocol.ts";

export const chargeData = (answer: ExplainAnswer, { reserves, dark }: Read): ChargePicture =>
  chargePictureOf(answer, { reserves, dark });

const limits: Record<ChargeMoment["limitedBy"], string> = {
  converter: "the charger's own rating",
  fuse: "the fuse",
  plug: "the plug's contacts",
  source: "what the vehicle can spare",
  cable: "the cable's resistance",
  bank: "what the bank takes",
};

/** The start of a charge, at the volts that the source stands at longest. */
export function mainMoment({ moments }: ChargeRunAnswer): ChargeMoment | null {
  const starts = moments.filter(({ when }) => when === "start");
  return starts.toSorted((a, b) => b.weight - a.weight)[0] ?? null;
}

export function runData(charge: ChargeRunAnswer, minimum_V: number | undefined): RunPicture | null {
  const moment = mainMoment(charge);
  if (moment === null) return null;
  return {
    points: moment.points.map(({ name, volts_V }) => ({ label: name, volts: volts_V })),
    amps: moment.delivered_A,
    limitedBy: limits[moment.limitedBy],
    ...(minimum_V === undefined ? {} : { minimum_V }),
  };
}

export function sizeData(
  { read, answer }: { read: Read; answer: { grids: readonly SizeGrid[]; points: readonly SizePoint[] } },
  chemistry: string,
): SizePicture {
  const { study, job } = read;
  return {
    grid: answer.grids.find((grid) => grid.chemistry === chemistry) ?? null,
    points: answer.points.filter((point) => point.chemistry === chemistry),
    setups: study.setups
      .filter(({ bank }) => bank.chemistry === chemistry)
      .map(({ id, name, bank, arrays }) => ({
        id,
        name,
        bank_Ah: bank.capacity_Ah,
        array_W: arrays.reduce((sum, { watts }) => sum + watts, 0),
      })),
    asked: { nights: job.sizing?.nights ?? study.trip.nights, chance: job.sizing?.chance ?? sizingDefaults.chance },
    currency: job.currency ?? undefined,
  };
}

export const upgradesData = ({ changes, days, horizon_days }: UpgradesAnswer): UpgradesPicture => {
  const orNull = (value: number) => (value >= horizon_days ? null : value);
  return {
    from_days: orNull(days.before),
    together_days: orNull(days.after),
    horizon_days,
    changes: changes.map(({ id, text }, i) => ({
      id,
      name: text,
      share_days: days.shares[i] ?? 0,
      alone_days: orNull(days.alone[i] ?? days.before),
    })),
  };
};
