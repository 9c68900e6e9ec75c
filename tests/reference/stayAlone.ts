import { chargeWhenShown_Ah, type BankModel } from "../../packages/sim/src/bank/index.ts";
import { hourlyLoads, type Drive } from "../../packages/sim/src/stay/index.ts";

/** A bank by itself: a steady load and nothing else, unless said. */
export function alone(bank: BankModel, hours: number, load_W: number): Drive {
  const loads = hourlyLoads(hours);
  loads.load_W.fill(load_W);
  return {
    bank,
    hours,
    startCharge: 1,
    loads,
    sun: new Float64Array(hours),
    kept: new Float64Array(hours).fill(1),
    sunTracks: true,
    sunMost_A: Infinity,
    mixed: null,
  };
}

/** The same on a charger of so many amps throughout. */
export function onCharger(bank: BankModel, hours: number, startShown: number, amps: number): Drive {
  const none = new Float64Array(hours);
  const mixed = {
    parked: none,
    driving: none,
    mains: new Float64Array(hours).fill(1),
    drivingLoads: hourlyLoads(hours),
    mainsLoads: hourlyLoads(hours),
    feed: null,
    steadyFeed_A: 0,
    mainsMost_A: amps,
  };
  const startCharge = chargeWhenShown_Ah(bank, startShown) / bank.full_Ah;
  return { ...alone(bank, hours, 0), startCharge, mixed };
}
