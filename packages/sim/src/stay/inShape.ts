import type { FeedCircuit } from "../feed/index.ts";
import type { Drive, HourlyLoads, MixedHours } from "./drive.ts";

/** The same drive in objects made in one place, field by field, as the hourly loop is compiled for; see `rehearsals`. */
export const inShape = (drive: Drive): Drive => ({
  bank: drive.bank,
  hours: drive.hours,
  startCharge: drive.startCharge,
  loads: loadsInShape(drive.loads),
  sun: drive.sun,
  sunTracks: drive.sunTracks,
  sunMost_A: drive.sunMost_A,
  kept: drive.kept,
  mixed: drive.mixed === null ? null : mixedInShape(drive.mixed),
});

const loadsInShape = ({ both, load_W, element_W }: HourlyLoads): HourlyLoads => ({ both, load_W, element_W });

const mixedInShape = (mixed: MixedHours): MixedHours => ({
  parked: mixed.parked,
  driving: mixed.driving,
  mains: mixed.mains,
  drivingLoads: loadsInShape(mixed.drivingLoads),
  mainsLoads: loadsInShape(mixed.mainsLoads),
  feed: mixed.feed === null ? null : feedInShape(mixed.feed),
  steadyFeed_A: mixed.steadyFeed_A,
  mainsMost_A: mixed.mainsMost_A,
});

const feedInShape = (feed: FeedCircuit): FeedCircuit => ({
  kind: feed.kind,
  resistance_Ohm: feed.resistance_Ohm,
  shares: feed.shares,
  sources: feed.sources,
  spare_A: feed.spare_A,
  limit: feed.limit,
  converter: feed.converter,
});

/** A drive that brings nothing: a relay to a source without any volts. */
export const noFeed: FeedCircuit = feedInShape({
  kind: "relay",
  resistance_Ohm: 0,
  shares: [],
  sources: Float64Array.of(0, 1, 0),
  spare_A: 0,
  limit: { by: "source", name: "", limit_A: 0 },
  converter: null,
});
