import type { Found } from "../faults/fault.ts";
import type { NearestPlaces } from "../faults/noSuchPlace.ts";
import { bankFaults } from "./banks.ts";
import { feedFaults } from "./feeds.ts";
import { idFaults } from "./ids.ts";
import { loadFaults } from "./loads.ts";
import { pathFaults } from "./paths.ts";
import { placeFaults } from "./places.ts";
import { tripFaults } from "./trip.ts";

const all = [tripFaults, idFaults, loadFaults, bankFaults, feedFaults, pathFaults];

/**
 * What one field asks of another. Each check takes any value whatever and looks only at what it can read, so that these
 * faults are told together with those of the schema.
 */
export const crossFaults = (job: unknown, nearestPlaces?: NearestPlaces): Found[] => [
  ...placeFaults(job, nearestPlaces),
  ...all.flatMap((check) => check(job)),
];
