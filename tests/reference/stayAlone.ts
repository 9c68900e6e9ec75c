import { chargeWhenShown_Ah, type BankModel } from "../../packages/sim/src/bank/index.ts";
import type { Drive } from "../../packages/sim/src/stay/index.ts";

/** A bank by itself: a steady load and nothing else, unless said. */
export function alone(bank: BankModel, hours: number, load_W: number): Drive {
  return {
    bank,
    hours,
    startCharge: 1,
    load_W: new Float64Array(hours).fill(load_W),
    element_W: null,
    sun: new Float64Array(hours),
    sunTracks: true,
    sunMost_A: Infinity,
    kept: new Float64Array(hours).fill(1),
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
    drivingLoad_W: none,
    drivingElement_W: null,
    mainsLoad_W: none,
    mainsElement_W: null,
    feed: null,
    steadyFeed_A: 0,
    mainsMost_A: amps,
  };
  const startCharge = chargeWhenShown_Ah(bank, startShown) / bank.full_Ah;
  return { ...alone(bank, hours, 0), startCharge, mixed };
}
