import { acceptance_A, acceptanceAt_A, roughlyStored_A } from "../bank/acceptance.ts";
import { resistanceAt_Ohm, type BankModel } from "../bank/bankModel.ts";
import { availableAfter_Ah } from "../bank/twoTanks.ts";
import { converterMost_A, relayAmps_A, type FeedCircuit } from "../feed/index.ts";
import { settle, type Bus } from "./bus.ts";
import type { Drive, MixedHours } from "./drive.ts";
import { clearStep, type Step } from "./step.ts";

/**
 * Settles one step. The bus holds the tanks at its start; they are taken on to half-way through the step, as far as a first
 * guess of the current moves them, and the bus settles with the volts, resistance and losses that they have there.
 */
export function settleStep(drive: Drive, h: number, on: boolean, bus: Bus, step: Step): void {
  const { bank, mixed } = drive;
  const parts = mixed !== null && mixed.parked[h]! < 1 ? mixed : null;
  if (parts === null) setCamped(drive, h, on, bus);
  else setMeans(drive, parts, h, on, bus);
  goHalfway(bank, guessed_A(bank, bus), bus);
  clearStep(step);
  if (parts === null) {
    settle(bus);
    gather(step, bus, 1);
  } else settleMixed(drive, parts, h, on, bus, step);
}

/** Net amps out of the bank, near enough to say where it stands half-way through the step. */
function guessed_A(bank: BankModel, bus: Bus): number {
  const { perGuessed_V } = bank;
  const drawn_A = (bus.load_W - bus.sun_W) * perGuessed_V + bus.element_S / perGuessed_V - bus.sun_A - bus.extra_A;
  return drawn_A < 0 ? -roughlyStored_A(bank, bus.q_Ah, -drawn_A) : drawn_A;
}

function goHalfway(bank: BankModel, net_A: number, bus: Bus): void {
  const half = bank.halves[0]!;
  const q = bus.q_Ah;
  bus.charge = (q - net_A * half.step_h) * bank.perFull;
  bus.rested_V = bank.volts.at(availableAfter_Ah(half, bus.q1_Ah, q, net_A));
  bus.resistance_Ohm = resistanceAt_Ohm(bank, bus.charge);
  bus.efficiency = bank.efficiency.at(bus.charge);
  bus.accepts_A = acceptance_A(bank, q, bus.charge);
}

/** Adds what the bus settled to, for a share of the step. */
function gather(step: Step, bus: Bus, share: number): void {
  const { efficiency } = bus;
  const into_A = bus.bank_A > 0 ? bus.bank_A : 0;
  const outOf_A = bus.bank_A < 0 ? -bus.bank_A : 0;
  step.stored_A += share * into_A * efficiency;
  step.drawn_A += share * outOf_A;
  step.served_W += share * bus.served_W;
  step.element_W += share * (bus.served_W - bus.load_W);
  step.sunAvailable_W += share * bus.sunAvailable_W;
  step.sunUsed_W += share * bus.sunUsed_W;
  step.sunClipped_W += share * Math.max(0, bus.sun_W - bus.sunMost_A * bus.volts_V);
  step.bankIn_W += share * into_A * bus.volts_V;
  step.bankOut_W += share * outOf_A * bus.volts_V;
  step.chargeLoss_W += share * into_A * (bus.volts_V - efficiency * bus.rested_V);
}

function setCamped(drive: Drive, h: number, on: boolean, bus: Bus): void {
  setLoads(drive, bus, on, drive.load_W[h]!, wattsAt(drive.element_W, h));
  setSun(drive, bus, drive.sun[h]! * drive.kept[h]!);
  bus.extra_A = 0;
}

/** What the parts of a mixed hour come to on average: enough for a guess. */
function setMeans(drive: Drive, mixed: MixedHours, h: number, on: boolean, bus: Bus): void {
  const { feed } = mixed;
  const parked = mixed.parked[h]!;
  const mains = mixed.mains[h]!;
  const driving = mixed.driving[h]!;
  const load_W = parked * drive.load_W[h]! + mains * mixed.mainsLoad_W[h]! + driving * mixed.drivingLoad_W[h]!;
  const element_W =
    parked * wattsAt(drive.element_W, h) +
    mains * wattsAt(mixed.mainsElement_W, h) +
    driving * wattsAt(mixed.drivingElement_W, h);
  setLoads(drive, bus, on, load_W, element_W);
  setSun(drive, bus, drive.sun[h]! * ((parked + mains) * drive.kept[h]! + driving));
  bus.extra_A = mains * mixed.mainsMost_A;
  if (driving > 0 && feed !== null) bus.extra_A += driving * roughFeed_A(drive.bank, feed, bus);
}

/** The feed into the bank as it stands at the start of the step. */
function roughFeed_A(bank: BankModel, feed: FeedCircuit, { q1_Ah, q_Ah }: Bus): number {
  const bank_V = bank.volts.at(q1_Ah) + bank.gap_V;
  const bank_Ohm = resistanceAt_Ohm(bank, q_Ah * bank.perFull);
  let feed_A = 0;
  for (const { source_V, weight } of feed.shares)
    feed_A +=
      weight *
      (feed.kind === "relay" ? relayAmps_A(feed, source_V, bank_V, bank_Ohm) : converterMost_A(feed, source_V, bank_V));
  return feed_A;
}

/** Settles each part of a mixed hour. */
function settleMixed(drive: Drive, mixed: MixedHours, h: number, on: boolean, bus: Bus, step: Step): void {
  const parked = mixed.parked[h]!;
  if (parked > 0) {
    setCamped(drive, h, on, bus);
    settle(bus);
    gather(step, bus, parked);
  }
  const mains = mixed.mains[h]!;
  if (mains > 0) {
    setLoads(drive, bus, on, mixed.mainsLoad_W[h]!, wattsAt(mixed.mainsElement_W, h));
    setSun(drive, bus, drive.sun[h]! * drive.kept[h]!);
    bus.extra_A = mixed.mainsMost_A;
    settle(bus);
    gather(step, bus, mains);
    step.mains_W += mains * bus.extraUsed_W;
  }
  const driving = mixed.driving[h]!;
  if (driving > 0) {
    setLoads(drive, bus, on, mixed.drivingLoad_W[h]!, wattsAt(mixed.drivingElement_W, h));
    setSun(drive, bus, drive.sun[h]!);
    settleDriving(drive.bank, mixed.feed, driving, bus, step);
  }
}

const wattsAt = (series: Float64Array | null, h: number): number => (series === null ? 0 : series[h]!);

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
function settleDriving(bank: BankModel, feed: FeedCircuit | null, driving: number, bus: Bus, step: Step): void {
  if (feed === null) {
    bus.extra_A = 0;
    settle(bus);
    gather(step, bus, driving);
    return;
  }
  for (const { source_V, weight } of feed.shares) {
    settleMost(bank, feed, source_V, bus);
    gather(step, bus, driving * weight);
    step.feed_W += driving * weight * bus.extraUsed_W;
  }
}

/** Of some tens of amps. */
const near_A = 1e-9;
/** Of volts or amps, whichever is short. */
const near = 1e-11;
const smoothTries = 9;
const mostTries = 60;

/**
 * Settles the bus with the most amps that a feed holds: by false position, halving the end that stays (the Illinois rule),
 * and then by bisection, because what is over falls in a leap where the bank comes to take charge. Going to and fro between
 * volts and amps may never settle.
 */
function settleMost(bank: BankModel, feed: FeedCircuit, source_V: number, bus: Bus): void {
  const { accepts_A } = bus;
  let high_A = feed.converter?.rated_A ?? feed.spare_A;
  let high = spareAt(bank, feed, source_V, high_A, bus);
  let low_A = high < 0 ? 0 : high_A;
  let low = high < 0 ? spareAt(bank, feed, source_V, 0, bus) : high;
  let stayed = 0;
  for (let i = 1; i < mostTries && low > near && high_A - low_A > near_A; i++) {
    const tried_A = low_A + (high_A - low_A) * (i > smoothTries ? 0.5 : low / (low - high));
    const spare = spareAt(bank, feed, source_V, tried_A, bus);
    if (spare >= 0) {
      [low_A, low] = [tried_A, spare];
      if (stayed > 0) high /= 2;
      stayed = 1;
    } else {
      [high_A, high] = [tried_A, spare];
      if (stayed < 0) low /= 2;
      stayed = -1;
    }
  }
  bus.accepts_A = accepts_A;
  bus.extra_A = low_A;
  settle(bus);
}

/** What a feed could give beyond so many amps, on the bus settled with them; under 0 where it cannot give as many. */
const spareAt = (bank: BankModel, feed: FeedCircuit, source_V: number, given_A: number, bus: Bus): number =>
  feed.kind === "relay"
    ? relaySpare(bank, feed, source_V, given_A, bus)
    : converterSpare_A(feed, source_V, given_A, bus);

/** A converter that its path or its source holds gives less the higher the volts it charges at, which rise with what it gives. */
function converterSpare_A(feed: FeedCircuit, source_V: number, given_A: number, bus: Bus): number {
  bus.extra_A = given_A;
  settle(bus);
  return converterMost_A(feed, source_V, bus.volts_V) - given_A;
}

/**
 * A relay passes the most amps for which the bank, at the end of the step, still stands no higher than the source less the
 * path's drop, and which it accepts at those volts. (Volts at the start of the hour overshoot, and would make more charge
 * at the start give less at the end.)
 */
function relaySpare(bank: BankModel, feed: FeedCircuit, source_V: number, given_A: number, bus: Bus): number {
  const given_V = source_V - given_A * feed.resistance_Ohm;
  bus.extra_A = given_A;
  bus.accepts_A = Infinity;
  settle(bus);
  const into_A = bus.bank_A;
  const end_V = endRested_V(bank, bus, into_A > 0 ? into_A * bus.efficiency : into_A);
  const bank_V = end_V + (into_A > 0 ? bank.gap_V : 0) + into_A * bus.resistance_Ohm;
  const untaken_A = into_A - acceptanceAt_A(bank, bus.q_Ah, given_V, bus.charge);
  return Math.min(given_V - bank_V, -untaken_A * (feed.resistance_Ohm + bus.resistance_Ohm));
}

const endRested_V = (bank: BankModel, { q1_Ah, q_Ah }: Bus, stored_A: number): number =>
  bank.volts.at(availableAfter_Ah(bank.tank, q1_Ah, q_Ah, -stored_A));
