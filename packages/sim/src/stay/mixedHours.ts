import { acceptanceAt_A } from "../bank/acceptance.ts";
import { atShare, type BankModel } from "../bank/bankModel.ts";
import { converterMost_A, type FeedCircuit } from "../feed/index.ts";
import { settle, type Bus } from "./bus.ts";
import type { Drive, MixedHours } from "./drive.ts";
import { clearStep, type Step } from "./step.ts";

/** Adds what the bus settled to, for a share of the step. */
export function gather(step: Step, bus: Bus, share: number, efficiency: number, feed_W: number, mains_W: number): void {
  const into_A = bus.bank_A > 0 ? bus.bank_A : 0;
  const outOf_A = bus.bank_A < 0 ? -bus.bank_A : 0;
  step.stored_A += share * into_A * efficiency;
  step.drawn_A += share * outOf_A;
  step.served_W += share * bus.served_W;
  step.element_W += share * (bus.served_W - bus.load_W);
  step.sunAvailable_W += share * bus.sunAvailable_W;
  step.sunUsed_W += share * bus.sunUsed_W;
  step.sunClipped_W += share * Math.max(0, bus.sun_W - bus.sunMost_A * bus.volts_V);
  step.feed_W += share * feed_W;
  step.mains_W += share * mains_W;
  step.bankIn_W += share * into_A * bus.volts_V;
  step.bankOut_W += share * outOf_A * bus.volts_V;
  step.chargeLoss_W += share * into_A * bus.volts_V * (1 - efficiency);
}

/** Settles an hour camped throughout. The bus holds the bank's state at the start of the step. */
export function settleCamped(drive: Drive, h: number, on: boolean, sun: number, q: number, bus: Bus, step: Step): void {
  clearStep(step);
  setLoads(drive, bus, on, drive.load_W[h]!, drive.element_W === null ? 0 : drive.element_W[h]!);
  setSun(drive, bus, sun);
  bus.extra_A = 0;
  settle(bus);
  gather(step, bus, 1, atShare(drive.bank.efficiency, q / drive.bank.full_Ah), 0, 0);
}

/** Settles each part of a mixed hour. The bus holds the bank's state at the start of the step, and the sun without shade. */
export function settleMixed(
  drive: Drive,
  mixed: MixedHours,
  h: number,
  on: boolean,
  q1: number,
  q2: number,
  bus: Bus,
  step: Step,
): void {
  const efficiency = atShare(drive.bank.efficiency, (q1 + q2) / drive.bank.full_Ah);
  clearStep(step);
  const parked = mixed.parked[h]!;
  if (parked > 0) {
    setLoads(drive, bus, on, drive.load_W[h]!, drive.element_W === null ? 0 : drive.element_W[h]!);
    setSun(drive, bus, drive.sun[h]! * drive.kept[h]!);
    bus.extra_A = 0;
    settle(bus);
    gather(step, bus, parked, efficiency, 0, 0);
  }
  const mains = mixed.mains[h]!;
  if (mains > 0) {
    setLoads(drive, bus, on, mixed.mainsLoad_W[h]!, mixed.mainsElement_W === null ? 0 : mixed.mainsElement_W[h]!);
    setSun(drive, bus, drive.sun[h]! * drive.kept[h]!);
    bus.extra_A = mixed.mainsMost_A;
    settle(bus);
    gather(step, bus, mains, efficiency, 0, bus.extraUsed_W);
  }
  const driving = mixed.driving[h]!;
  if (driving > 0) {
    setLoads(drive, bus, on, mixed.drivingLoad_W[h]!, mixed.drivingElement_W === null ? 0 : mixed.drivingElement_W[h]!);
    setSun(drive, bus, drive.sun[h]!);
    settleDriving(drive.bank, mixed.feed, driving, q1, q2, efficiency, bus, step);
  }
}

function setLoads(drive: Drive, bus: Bus, on: boolean, load_W: number, element_W: number): void {
  const nominal_V = drive.bank.bank.nominal_V;
  bus.load_W = on ? load_W : 0;
  bus.element_S = on ? element_W / (nominal_V * nominal_V) : 0;
}

function setSun(drive: Drive, bus: Bus, sun: number): void {
  bus.sun_W = drive.sunTracks ? sun : 0;
  bus.sun_A = drive.sunTracks ? 0 : sun;
  bus.sunMost_A = drive.sunTracks ? drive.sunMost_A : 0;
}

/** A drive's hour: each part of it that the source stands at one voltage. */
function settleDriving(
  bank: BankModel,
  feed: FeedCircuit | null,
  driving: number,
  q1: number,
  q2: number,
  efficiency: number,
  bus: Bus,
  step: Step,
): void {
  if (feed === null) {
    bus.extra_A = 0;
    settle(bus);
    gather(step, bus, driving, efficiency, 0, 0);
    return;
  }
  for (const { source_V, weight } of feed.shares) {
    if (feed.kind === "relay") settleRelay(bank, feed, source_V, q1, q2, efficiency, bus);
    else settleConverter(feed, source_V, bus);
    gather(step, bus, driving * weight, efficiency, bus.extraUsed_W, 0);
  }
}

/** A converter's output depends on the volts it helps to set: a few rounds settle it far below a milliamp. */
function settleConverter(feed: FeedCircuit, source_V: number, bus: Bus): void {
  bus.extra_A = 0;
  settle(bus);
  for (let round = 0; round < 6; round++) {
    bus.extra_A = converterMost_A(feed, source_V, bus.volts_V);
    settle(bus);
  }
}

const bisections = 40;

/**
 * A relay passes the most amps for which the bank, at the end of the step, still stands no higher than the source less the
 * path's drop, and which it accepts at those volts. By bisection: volts at the start of the hour overshoot, and would make
 * more charge at the start give less at the end.
 */
function settleRelay(
  bank: BankModel,
  feed: FeedCircuit,
  source_V: number,
  q1: number,
  q2: number,
  efficiency: number,
  bus: Bus,
): void {
  const accepts_A = bus.accepts_A;
  let low_A = 0;
  let high_A = feed.spare_A;
  for (let i = 0; i < bisections; i++) {
    const middle_A = (low_A + high_A) / 2;
    if (relayHolds(bank, feed, source_V, middle_A, q1, q2, efficiency, bus)) low_A = middle_A;
    else high_A = middle_A;
  }
  bus.accepts_A = accepts_A;
  bus.extra_A = low_A;
  settle(bus);
}

function relayHolds(
  bank: BankModel,
  feed: FeedCircuit,
  source_V: number,
  feed_A: number,
  q1: number,
  q2: number,
  efficiency: number,
  bus: Bus,
): boolean {
  const given_V = source_V - feed_A * feed.resistance_Ohm;
  bus.extra_A = feed_A;
  bus.accepts_A = Infinity;
  settle(bus);
  const into_A = bus.bank_A;
  const end_V = endRested_V(bank, q1, q2, into_A > 0 ? into_A * efficiency : into_A);
  const bank_V = end_V + (into_A > 0 ? bank.gap_V : 0) + into_A * bus.resistance_Ohm;
  return given_V >= bank_V && into_A <= acceptanceAt_A(bank, q1 + q2, given_V);
}

function endRested_V(bank: BankModel, q1: number, q2: number, stored_A: number): number {
  const { e, gain, perAmp_h } = bank.tank;
  return atShare(bank.volts, (q1 * e + (q1 + q2) * gain + stored_A * perAmp_h) / (bank.c * bank.full_Ah));
}

/**
 * Terminal volts at the end of a step, charging included.
 * @param net_A drawn less stored
 */
export function endVolts_V(bank: BankModel, rested_V: number, resistance_Ohm: number, net_A: number): number {
  if (net_A > 0) return rested_V - net_A * resistance_Ohm;
  if (net_A === 0) return rested_V;
  return Math.min(bank.absorption_V, rested_V + bank.gap_V - net_A * resistance_Ohm);
}
