import type { BankModel } from "../bank/bankModel.ts";
import type { FeedCircuit, SourceShare } from "../feed/index.ts";
import { meet, standOn, surplus_A, type Bus, type Limit } from "./bus.ts";

const limit: Limit = { behind_V: 0.5, perInto: 0.5, perExtra: 0.5, most: 0.5 };

/**
 * Meets the bus with the most amps that a relay passes: those for which the bank, at the end of the step, still stands no
 * higher than the source less the path's drop, and which it accepts at those volts. (Volts at the start of the hour
 * overshoot, and would make more charge at the start give less at the end.) Each limit is a line in the amps into the bank
 * and the amps through the relay, on a straight stretch of a table, and so is met in closed form.
 */
export function meetRelay(bank: BankModel, feed: FeedCircuit, { source_V }: SourceShare, bus: Bus): void {
  if (source_V > bus.restedEnd_V + bus.gap_V) {
    limitCharge(bank, feed, source_V, bus);
    if (bus.bank_A > 0 && bus.extra_A > 0) return;
  }
  bus.extra_A = 0;
  meet(bus);
  if (bus.bank_A < 0) carryLoads(bank, feed, source_V, bus);
}

/** The most charge; not over 0 where there is no room for any. */
function limitCharge(bank: BankModel, feed: FeedCircuit, source_V: number, bus: Bus): void {
  limit.behind_V = bus.rested_V + bus.gap_V;
  limitByWeakTaper(bank, feed, source_V, bus);
  if (bus.bank_A > bus.accepts_A) holdTo(bus, 1, 0, bus.accepts_A);
  if (bus.extra_A > feed.spare_A) holdTo(bus, 0, 1, feed.spare_A);
  limitByEndVolts(bank, feed, source_V - bus.gap_V, bus.efficiency, bus);
}

/**
 * The relay carries part of the loads, or all of them: the bank then neither gives nor takes. Where a plain element draws
 * more the higher the bus, it stands somewhere between the volts of discharge and those of charge.
 * @param bus has met without the relay, the bank giving
 */
function carryLoads(bank: BankModel, feed: FeedCircuit, source_V: number, bus: Bus): void {
  const { rested_V, gap_V } = bus;
  const { perAmp_h } = bank.tank;
  const alone_V = bank.volts.at(bus.atRest_Ah + bus.bank_A * perAmp_h) + bus.bank_A * bus.resistance_Ohm;
  if (alone_V >= source_V) return;
  const asked_A = -surplus_A(bus, rested_V);
  if (bus.element_S > 0) {
    const room_A = (source_V - bus.restedEnd_V) / feed.resistance_Ohm;
    const most_A = Math.min(-surplus_A(bus, rested_V + gap_V), room_A, feed.spare_A);
    if (most_A > asked_A) {
      bus.extra_A = most_A;
      meet(bus);
      bus.bank_A = 0; // and not a trace of charge
      return;
    }
  }
  bus.bank_A = 0;
  bus.volts_V = rested_V;
  bus.extra_A = asked_A;
  limit.behind_V = rested_V;
  if (asked_A > feed.spare_A) holdTo(bus, 0, 1, feed.spare_A);
  limitByEndVolts(bank, feed, source_V, 1, bus);
}

/** Below its absorption volts a lead-acid bank takes charge far slower, and the more the path carries the lower they are. */
function limitByWeakTaper(bank: BankModel, feed: FeedCircuit, source_V: number, bus: Bus): void {
  const { resistance_Ohm } = feed;
  const { weakTakenUp_per_h: weak } = bank;
  const missing_Ah = bank.full_Ah - bus.q_Ah;
  for (let way = 0; ;) {
    const perVolt = missing_Ah * weak.slope;
    holdTo(bus, bus.efficiency, perVolt * resistance_Ohm, missing_Ah * weak.at0 + perVolt * source_V);
    const given_V = source_V - bus.extra_A * resistance_Ohm;
    if (given_V >= weak.to && way >= 0) {
      weak.higher();
      way = 1;
    } else if (given_V < weak.from && way <= 0) {
      weak.lower();
      way = -1;
    } else return;
  }
}

/**
 * Rested volts at the end of the step, with the drops of bank and path, may come to `room_V`.
 * @param stores the share of the bank's amps that counts in its charge
 */
function limitByEndVolts(bank: BankModel, feed: FeedCircuit, room_V: number, stores: number, bus: Bus): void {
  const { volts } = bank;
  const { atRest_Ah, resistance_Ohm } = bus;
  const perInto_Ah = bank.tank.perAmp_h * stores;
  const end_V = volts.at(atRest_Ah + bus.bank_A * perInto_Ah);
  if (end_V + bus.bank_A * resistance_Ohm + bus.extra_A * feed.resistance_Ohm <= room_V) return;
  for (;;) {
    const most_V = room_V - volts.at0 - volts.slope * atRest_Ah;
    holdTo(bus, resistance_Ohm + volts.slope * perInto_Ah, feed.resistance_Ohm, most_V);
    if (!(atRest_Ah + bus.bank_A * perInto_Ah < volts.from)) return;
    volts.lower();
  }
}

function holdTo(bus: Bus, perInto: number, perExtra: number, most: number): void {
  limit.perInto = perInto;
  limit.perExtra = perExtra;
  limit.most = most;
  standOn(bus, limit);
}
