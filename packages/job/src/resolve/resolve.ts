import type { Climate, Study, Trip } from "@stayput/sim";
import type { Fault, Found, Keys } from "../faults/fault.ts";
import { finish } from "../faults/finish.ts";
import { noSuchPlace } from "../faults/noSuchPlace.ts";
import type { Job } from "../schema/job.ts";
import { findClimate, type ClimateFound, type NoSuchPlace, type PlaceFound } from "./climate.ts";
import { arrival, isLeapDay, leapNote } from "./month.ts";
import { resolveSetup } from "./setup.ts";

/** A job ready to be simulated. */
export interface Resolved {
  readonly ok: true;
  readonly study: Study;
  readonly place: PlaceFound;
  /** what was assumed, and how good the place's figures are, each once */
  readonly notes: readonly string[];
  /** what the customer saw, with where and when */
  readonly match: readonly ResolvedObservation[];
}

/** A bank found flat on a morning after arrival, 1 the first, with that stay's date and climate. */
export interface ResolvedObservation {
  readonly flatOnMorning: number;
  /** of that arrival */
  readonly month: number;
  readonly day: number;
  readonly climate: Climate;
}

/** A valid job whose place is not in the catalogue. */
export interface Unresolved {
  readonly ok: false;
  readonly faults: readonly Fault[];
}

/** What to take otherwise than the job says. */
export interface ResolveOptions {
  /** arrive in this month, 1 to 12, in place of the job's; the same day of it, or its last */
  readonly month?: number;
}

/** The climates of a job's place and of each observation that has a place of its own, found beforehand. */
export interface JobClimates {
  readonly place: ClimateFound;
  /** one for each entry of `match`, null where that has no place of its own */
  readonly match: readonly (ClimateFound | null)[];
}

/**
 * A parsed job as the simulation takes it: the place looked up, loads dropped and added, every default filled in.
 *
 * @returns the study and what was assumed, or the faults: a place that the catalogue has not, with the nearest names
 * @throws RangeError where `month` is not 1 to 12
 */
export async function resolve(job: Job, options: ResolveOptions = {}): Promise<Resolved | Unresolved> {
  const found = await findClimates(job);
  return "faults" in found ? { ok: false, faults: found.faults } : resolveWith(job, found, options);
}

/** Looks up what `resolveWith` needs. The result is plain data and can be posted to a worker. */
export async function findClimates(job: Job): Promise<JobClimates | { readonly faults: readonly Fault[] }> {
  const place = await findClimate(job.place);
  const match = await Promise.all(
    job.match.map(async (seen) => (seen.place === null ? null : findClimate(seen.place))),
  );
  const missing: Found[] = [
    ...placeFaults(["place", "id"], place),
    ...match.flatMap((seen, i) => placeFaults(["match", i, "place", "id"], seen)),
  ];
  if (missing.length > 0) return { faults: finish(missing, job) };
  return { place: place as ClimateFound, match: match as (ClimateFound | null)[] };
}

function placeFaults(keys: Keys, found: ClimateFound | NoSuchPlace | null): Found[] {
  if (found === null || !("nearest" in found)) return [];
  return [noSuchPlace(keys, found.id, found.nearest)];
}

/** The same without waiting, for climates that are at hand. */
export function resolveWith(job: Job, climates: JobClimates, options: ResolveOptions = {}): Resolved {
  const notes = new Set(climates.place.notes);
  const { climate } = climates.place;
  const setups = job.setups.map((setup) =>
    resolveSetup(setup, job.loads, climate.latitude_deg, (text) => notes.add(`${setup.name}: ${text}.`)),
  );
  for (const text of tripNotes(job)) notes.add(text);
  if (arrivals(job, options.month).some(isLeapDay)) notes.add(leapNote);
  const match = job.match.map((seen, i): ResolvedObservation => ({
    flatOnMorning: seen.flatOnMorning,
    ...arrival(seen.arrived ?? job.trip.arrive),
    climate: climates.match[i]?.climate ?? climate,
  }));
  const study = { climate, trip: resolveTrip(job, options.month), setups };
  return { ok: true, study, place: climates.place.place, notes: [...notes], match };
}

function resolveTrip({ trip }: Job, month: number | undefined): Trip {
  const { arrive, ...rest } = trip;
  return { ...rest, ...arrival(arrive, month) };
}

/** The days of arrival that a job names and that are kept: the trip's not where another month is asked. */
const arrivals = ({ trip, match }: Job, month: number | undefined): string[] => [
  ...(month === undefined ? [trip.arrive] : []),
  ...match.map(({ arrived }) => arrived ?? trip.arrive),
];

/** What the trip offers and a setup cannot take. */
function tripNotes({ trip, setups }: Job): string[] {
  return setups.flatMap(({ name, feed, mainsCharger }) => [
    ...(trip.drives !== null && feed === null ? [`${name}: nothing charges the bank while driving.`] : []),
    ...(trip.mains !== null && mainsCharger === null ? [`${name}: there is no charger to use the mains stops.`] : []),
  ]);
}
