import { acceptanceAtLoss_A, roughlyStored_A } from "../bank/acceptance.ts";
import { resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";
import { roughFeed_A, type ConverterPart, type FeedCircuit, type SourceShare } from "../feed/index.ts";
import { account, meet, type Bus } from "./bus.ts";
import type { Drive, HourlyLoads, MixedHours } from "./drive.ts";
import { meetRelay } from "./meetRelay.ts";
import { clearStep, type Step } from "./step.ts";

/**
 * Settles one step. The bus holds the tanks at its start; they are taken on to half-way through the step, as far as a first
 * guess of the current moves them, and the bus meets with the volts, resistance and losses that they have there.
 */
export function settleStep(drive: Drive, h: number, on: boolean, bus: Bus, step: Step): void {
  const { bank, mixed } = drive;
  clearStep(step);
  if (mixed !== null && mixed.parked[h]! < 1) {
    settleMixed(drive, mixed, h, on, bus, step);
    return;
  }
  setCamped(drive, h, on, bus);
  goHalfway(bank, guessed_A(bank, bus), bus);
  meet(bus);
  gather(step, bus, 1);
}

/** Settles each part of an hour of several, all from where the bank stands half-way through it. */
function settleMixed(drive: Drive, mixed: MixedHours, h: number, on: boolean, bus: Bus, step: Step): void {
  const { bank } = drive;
  const parked = mixed.parked[h]!;
  const mains = mixed.mains[h]!;
  const driving = mixed.driving[h]!;
  let guess_A = 0;
  if (parked > 0) {
    setCamped(drive, h, on, bus);
    guess_A += parked * guessed_A(bank, bus);
  }
  if (mains > 0) {
    setMains(drive, mixed, h, on, bus);
    guess_A += mains * guessed_A(bank, bus);
  }
  if (driving > 0) {
    setDriving(drive, mixed, h, on, bus);
    guess_A += driving * guessed_A(bank, bus);
  }
  goHalfway(bank, guess_A, bus);
  if (driving > 0) settleDriving(bank, mixed.feed, driving, bus, step);
  if (parked > 0) {
    setCamped(drive, h, on, bus);
    meet(bus);
    gather(step, bus, parked);
  }
  if (mains > 0) {
    setMains(drive, mixed, h, on, bus);
    meet(bus);
    gather(step, bus, mains);
    if (step.watts) step.mains_W += mains * bus.extraUsed_W;
  }
}

/** Net amps out of the bank, near enough to say where it stands half-way through the step. */
function guessed_A({ perGuessed_V, bank }: BankModel, bus: Bus): number {
  return (bus.load_W - bus.sun_W) * perGuessed_V + bus.element_S * bank.nominal_V - bus.sun_A - bus.extra_A;
}

function goHalfway(bank: BankModel, guess_A: number, bus: Bus): void {
  const half = bank.halves[0]!;
  const { q1_Ah: q1, q_Ah: q } = bus;
  const net_A = guess_A < 0 ? -roughlyStored_A(bank, q, -guess_A) : guess_A;
  const charge = (q - net_A * half.step_h) * bank.perFull;
  bus.charge = charge;
  bus.rested_V = bank.volts.at(availableAfter_Ah(half, q1, q, net_A));
  bus.resistance_Ohm = resistanceAt_Ohm(bank, charge);
  bus.efficiency = bank.efficiency.at(charge);
  bus.accepts_A = acceptanceAtLoss_A(bank, q, charge, bus.efficiency);
}

/** Adds what the bus met at, for a share of the step. */
function gather(step: Step, bus: Bus, share: number): void {
  const { bank_A } = bus;
  if (bank_A > 0) step.stored_A += share * bank_A * bus.efficiency;
  else step.drawn_A -= share * bank_A;
  if (step.watts) gatherWatts(step, bus, share);
}

function gatherWatts(step: Step, bus: Bus, share: number): void {
  account(bus);
  const into_A = bus.bank_A > 0 ? bus.bank_A : 0;
  step.served_W += share * bus.served_W;
  step.element_W += share * (bus.served_W - bus.load_W);
  step.sunAvailable_W += share * bus.sunAvailable_W;
  step.sunUsed_W += share * bus.sunUsed_W;
  step.sunClipped_W += share * (Math.max(0, bus.sun_W - bus.sunMost_A * bus.volts_V) + bus.sunOver_A * bus.volts_V);
  step.bankIn_W += share * into_A * bus.volts_V;
  step.bankOut_W += share * (into_A - bus.bank_A) * bus.volts_V;
  step.chargeLoss_W += share * into_A * (bus.volts_V - bus.efficiency * bus.rested_V);
}

function setCamped(drive: Drive, h: number, on: boolean, bus: Bus): void {
  setLoads(drive, bus, on, drive.loads, h);
  setSun(drive, bus, drive.sun[h]! * drive.kept[h]!);
  bus.extra_A = 0;
}

function setMains(drive: Drive, mixed: MixedHours, h: number, on: boolean, bus: Bus): void {
  setLoads(drive, bus, on, mixed.mainsLoads, h);
  setSun(drive, bus, drive.sun[h]! * drive.kept[h]!);
  bus.extra_A = mixed.mainsMost_A;
}

function setDriving(drive: Drive, mixed: MixedHours, h: number, on: boolean, bus: Bus): void {
  setLoads(drive, bus, on, mixed.drivingLoads, h);
  setSun(drive, bus, drive.sun[h]!);
  bus.extra_A = 0;
  if (mixed.feed === null) return;
  const { bank } = drive;
  bus.atRest_Ah = availableAfter_Ah(bank.tank, bus.q1_Ah, bus.q_Ah, 0);
  bus.restedEnd_V = bank.volts.at(bus.atRest_Ah);
  bus.extra_A = roughFeed_A(mixed.feed, bus.restedEnd_V + bank.gap_V, resistanceAt_Ohm(bank, bus.q_Ah * bank.perFull));
}

function setLoads(drive: Drive, bus: Bus, on: boolean, loads: HourlyLoads, h: number): void {
  const { nominal_V } = drive.bank.bank;
  bus.load_W = on ? loads.load_W[h]! : 0;
  bus.element_S = on ? loads.element_W[h]! / (nominal_V * nominal_V) : 0;
  bus.held_W = 0;
}

function setSun(drive: Drive, bus: Bus, sun: number): void {
  const { sunTracks, sunMost_A } = drive;
  bus.sun_W = sunTracks ? sun : 0;
  bus.sun_A = sunTracks ? 0 : Math.min(sun, sunMost_A);
  bus.sunMost_A = sunTracks ? sunMost_A : 0;
  bus.sunOver_A = sunTracks ? 0 : Math.max(0, sun - sunMost_A);
}

/** A drive: each part of it that the source stands at one voltage. */
function settleDriving(bank: BankModel, feed: FeedCircuit | null, driving: number, bus: Bus, step: Step): void {
  if (feed === null) {
    meet(bus);
    gather(step, bus, driving);
    return;
  }
  const { shares, converter } = feed;
  for (let i = 0; i < shares.length; i++) {
    const share = shares[i]!;
    if (converter === null) meetRelay(bank, feed, share, bus);
    else meetConverter(converter, share, bus);
    gather(step, bus, driving * share.weight);
    if (step.watts) step.feed_W += driving * share.weight * bus.extraUsed_W;
  }
}

/** A converter gives its rating, or what its path and its source let through where that is less. */
function meetConverter({ rated_A }: ConverterPart, { held_W }: SourceShare, bus: Bus): void {
  bus.extra_A = rated_A;
  bus.held_W = 0;
  meet(bus);
  if (held_W >= rated_A * bus.volts_V) return;
  bus.extra_A = 0;
  bus.held_W = held_W;
  meet(bus);
}
