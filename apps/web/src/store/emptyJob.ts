import type { JobInput } from "@stayput/job";

/** A sheet with nothing on it but what every job has: a bank of the most usual kind, to be corrected. */
export const emptyJob: JobInput = {
  format: "stayput-job",
  version: 1,
  title: "New job",
  place: { id: "" },
  trip: { arrive: "07-01", nights: 3 },
  loads: [],
  setups: [
    {
      id: "now",
      name: "As it is",
      bank: { chemistry: "agm", capacity_Ah: 100 },
      arrays: [],
    },
  ],
};
