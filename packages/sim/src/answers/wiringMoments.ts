import { acceptance_A, acceptanceAt_A, chargeWhenShown_Ah, resistanceAt_Ohm, restedVolts_V } from "../bank/index.ts";
import type { BankModel } from "../bank/index.ts";
import {
  converterInput_A,
  converterLimit,
  converterMost_A,
  pathFlows,
  pieceName,
  prepareFeed,
  relayAmps_A,
  type FeedCircuit,
} from "../feed/index.ts";
import type { ConverterFeed, Feed, PathPiece, RelayFeed, Source } from "../study.ts";
import type { ChargeMoment, RunPoint } from "./wiringTypes.ts";

/** The states of charge that a charge run is looked at, as shown. */
export const chargeMoments = [
  { when: "start", charge: 0.5 },
  { when: "mid-charge", charge: 0.8 },
  { when: "near full", charge: 0.95 },
] as const;

/** More amps than any bank or wire here: stands for a limit that is lifted. */
const lifted_A = 1000;

/** A bank standing at one charge. */
interface Standing {
  readonly model: BankModel;
  readonly q_Ah: number;
  readonly behind_V: number;
  readonly resistance_Ohm: number;
  /** at absorption volts; lifted where what the bank takes is not to count */
  readonly accepts_A: number;
  readonly acceptsAt_A: (terminal_V: number) => number;
}

function standingAt(model: BankModel, charge: number): Standing {
  const q_Ah = chargeWhenShown_Ah(model, charge);
  const share = q_Ah / model.full_Ah;
  return {
    model,
    q_Ah,
    behind_V: restedVolts_V(model, share) + model.gap_V,
    resistance_Ohm: resistanceAt_Ohm(model, share),
    accepts_A: acceptance_A(model, q_Ah),
    acceptsAt_A: (terminal_V) => acceptanceAt_A(model, q_Ah, terminal_V),
  };
}

const takesAnything = (bank: Standing): Standing => ({
  ...bank,
  accepts_A: lifted_A,
  acceptsAt_A: () => lifted_A,
});

/** Every source voltage of a feed at start, mid-charge and near full. */
export function momentsOf(feed: Feed, model: BankModel): ChargeMoment[] {
  const sources = sourceVolts(feed.source);
  return sources.flatMap(({ source_V, weight }) =>
    chargeMoments.map(({ when, charge }) => momentAt(feed, model, source_V, weight, when, charge)),
  );
}

/** What a source stands at, and for what share of a drive; lowest first. */
export function sourceVolts({ volts, low_V, lowShare }: Source): { source_V: number; weight: number }[] {
  if (low_V === null || lowShare === 0) return [{ source_V: volts, weight: 1 }];
  if (lowShare === 1) return [{ source_V: low_V, weight: 1 }];
  return [
    { source_V: low_V, weight: lowShare },
    { source_V: volts, weight: 1 - lowShare },
  ];
}

/** The same feed with its source fixed at some volts. */
const fixedAt = <F extends Feed>(feed: F, volts: number): F => ({
  ...feed,
  source: { ...feed.source, volts, low_V: null },
});

function momentAt(
  feed: Feed,
  model: BankModel,
  source_V: number,
  weight: number,
  when: ChargeMoment["when"],
  charge: number,
): ChargeMoment {
  const bank = standingAt(model, charge);
  const fixed = fixedAt(feed, source_V);
  const found = fixed.kind === "converter" ? throughConverter(fixed, bank) : throughRelay(fixed, bank);
  return {
    when,
    charge,
    source_V,
    weight,
    ...found,
    points: pointsOf(fixed, found.input_A, found.bank_V, found.delivered_A),
  };
}

type Found = Omit<ChargeMoment, "when" | "charge" | "source_V" | "weight" | "points">;

/** Amps into a bank at a shown charge, the feed's source fixed at some volts [A]. */
export const chargeAt_A = (feed: Feed, model: BankModel, source_V: number, charge: number): number =>
  amps(fixedAt(feed, source_V), standingAt(model, charge));

/** Input amps that a feed would take with nothing to hold it but its cable: what fuse and plugs must bear. [A] */
export function demand_A(feed: Feed, model: BankModel): number {
  const path = feed.path.map(withoutLimit);
  if (feed.kind === "relay") return chargeAt_A({ ...feed, path }, model, feed.source.volts, 0.1);
  const circuit = prepareFeed({ ...feed, path, source: { ...feed.source, spare_A: lifted_A } });
  const open = circuit.shares.filter(({ source_V }) => source_V >= feed.minInput_V);
  return Math.max(0, ...open.map(({ source_V }) => converterLimit(circuit, source_V, model.absorption_V).input_A));
}

/** Where a falling function meets its own argument, between 0 and a bound. */
function meets(most: (amps_A: number) => number, bound_A: number): number {
  if (most(bound_A) >= bound_A) return bound_A;
  let low = 0;
  let high = bound_A;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (most(middle) >= middle) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Amps and bank volts of a converter into a bank: both hold at once. Where acceptance limits, the volts climb to
 * absorption, or as far as the converter still carries the amps.
 */
function converterInto(circuit: FeedCircuit, source_V: number, bank: Standing) {
  const { absorption_V } = bank.model;
  const bus_V = (amps_A: number) => Math.min(absorption_V, bank.behind_V + bank.resistance_Ohm * amps_A);
  const most = (amps_A: number) => converterMost_A(circuit, source_V, bus_V(amps_A));
  const amps_A = meets(most, Math.min(bank.accepts_A, circuit.converter?.rated_A ?? 0));
  if (amps_A < bank.accepts_A) return { amps_A, bank_V: bus_V(amps_A), full: false };
  const above_V = meets(
    (above) => (converterMost_A(circuit, source_V, bus_V(amps_A) + above) >= amps_A ? Infinity : 0),
    absorption_V - bus_V(amps_A),
  );
  return { amps_A, bank_V: bus_V(amps_A) + above_V, full: true };
}

function throughConverter(feed: ConverterFeed, bank: Standing): Found {
  const circuit = prepareFeed(feed);
  const open_V = circuit.shares[0]!.source_V;
  const { amps_A, bank_V, full } = converterInto(circuit, open_V, bank);
  const held = converterLimit(circuit, open_V, bank_V);
  const input_A = full
    ? (converterInput_A(amps_A * bank_V, feed.efficiency, open_V, circuit.resistance_Ohm) ?? 0)
    : held.input_A;
  const limitedBy = full ? "bank" : held.limitedBy;
  const limit = full ? bankLimit(bank.accepts_A) : held.limit;
  const freed = converterLifted(feed, bank, limitedBy, held.limit.name);
  return { delivered_A: amps_A, input_A, bank_V, limitedBy, limit, gain_A: Math.max(0, freed - amps_A) };
}

const bankLimit = (accepts_A: number) => ({
  name: "what the bank takes at this charge",
  value: accepts_A,
  unit: "A" as const,
});

function converterLifted(feed: ConverterFeed, bank: Standing, by: Found["limitedBy"], name: string): number {
  if (by === "bank") return amps(feed, takesAnything(bank));
  if (by === "converter") return amps({ ...feed, rated_A: lifted_A / feed.count }, bank);
  if (by === "cable") return amps({ ...feed, path: withoutResistance(feed.path) }, bank);
  if (by === "source") return amps({ ...feed, source: liftedSource(feed.source, bank) }, bank);
  return amps(
    { ...feed, path: feed.path.map((piece) => (pieceName(piece) === name ? withoutLimit(piece) : piece)) },
    bank,
  );
}

function amps(feed: Feed, bank: Standing): number {
  const circuit = prepareFeed(feed);
  const source_V = circuit.shares[0]!.source_V;
  return feed.kind === "converter" ? converterInto(circuit, source_V, bank).amps_A : relayInto(circuit, source_V, bank);
}

function withoutLimit(piece: PathPiece): PathPiece {
  if (piece.kind === "fuse") return { ...piece, rated_A: lifted_A };
  return piece.kind === "plug" ? { ...piece, limit_A: lifted_A } : piece;
}

/** The path with its resistance gone and its loads fed at the start, so that only its ratings are left. */
const withoutResistance = (path: readonly PathPiece[]): PathPiece[] =>
  path.map((piece) => {
    if (piece.kind === "cable") return { ...piece, length_m: 0 };
    return piece.kind === "plug" ? { ...piece, resistance_mOhm: 0 } : piece;
  });

const liftedSource = (source: Source, bank: Standing): Source => ({
  ...source,
  volts: Math.max(source.volts, bank.model.absorption_V),
  spare_A: lifted_A,
});

function relayInto(circuit: FeedCircuit, source_V: number, bank: Standing): number {
  const passes_A = relayAmps_A(circuit, source_V, bank.behind_V, bank.resistance_Ohm);
  const takes_A = (amps_A: number) => bank.acceptsAt_A(source_V - amps_A * circuit.resistance_Ohm);
  return meets(takes_A, Math.min(passes_A, circuit.spare_A, bank.accepts_A));
}

/** A relay is held by whatever, lifted alone, would let most more through. */
function throughRelay(feed: RelayFeed, bank: Standing): Found {
  const circuit = prepareFeed(feed);
  const source_V = circuit.shares[0]!.source_V;
  const delivered_A = relayInto(circuit, source_V, bank);
  const end_V = source_V - delivered_A * circuit.resistance_Ohm;
  const { source } = feed;
  const raised = { ...source, volts: Math.max(source.volts, bank.model.absorption_V) };
  const lifts = [
    { limitedBy: "bank", limit: bankLimit(bank.acceptsAt_A(end_V)), amps_A: amps(feed, takesAnything(bank)) },
    {
      limitedBy: "source",
      limit: { name: "the source's volts", value: source.volts, unit: "V" },
      amps_A: amps({ ...feed, source: raised }, bank),
    },
    {
      limitedBy: "source",
      limit: { name: "the source's spare amps", value: circuit.spare_A, unit: "A" },
      amps_A: amps({ ...feed, source: { ...source, spare_A: lifted_A } }, bank),
    },
    {
      limitedBy: "cable",
      limit: { name: "volts left at the bank", value: end_V, unit: "V" },
      amps_A: amps({ ...feed, path: withoutResistance(feed.path) }, bank),
    },
  ] as const;
  const held = lifts.reduce((most, lift) => (lift.amps_A > most.amps_A ? lift : most));
  const bank_V = delivered_A > 0 ? end_V : bank.behind_V - bank.model.gap_V;
  const gain_A = Math.max(0, held.amps_A - delivered_A);
  return { delivered_A, input_A: delivered_A, bank_V, limitedBy: held.limitedBy, limit: held.limit, gain_A };
}

/** Volts from the source to the bank. */
export function pointsOf(feed: Feed, input_A: number, bank_V: number, delivered_A: number): RunPoint[] {
  const points = walk("source", feed.path, feed.source.volts, input_A);
  if (feed.kind === "relay") return points;
  const in_W = points.at(-1)!.volts_V * input_A;
  const heat_W = Math.max(0, in_W - bank_V * delivered_A);
  return [...points, { name: "converter's output", volts_V: bank_V, amps_A: delivered_A, heat_W }];
}

/** Volts after each piece of a path, from its first point on. */
export function walk(from: string, path: readonly PathPiece[], from_V: number, amps_A: number): RunPoint[] {
  const flows = pathFlows(path, from_V, amps_A);
  const first = { name: from, volts_V: from_V, amps_A: flows[0]?.amps_A ?? amps_A, heat_W: 0 };
  return [
    first,
    ...flows.map((flow) => ({
      name: `after ${flow.name}`,
      volts_V: flow.out_V,
      amps_A: flow.amps_A,
      heat_W: flow.heat_W,
    })),
  ];
}
