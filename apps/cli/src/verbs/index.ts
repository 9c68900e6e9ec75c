import type { Verb } from "./verb.ts";

/** Every verb there is: one row here, one file beside this. */
export const verbs: readonly Verb[] = [
  {
    name: "explain",
    operands: "JOB.json",
    takes: [1, 1],
    options: ["json", "setup", "month", "seed", "draws", "skies"],
    answers: "how long each setup lasts, where the energy goes, what flattens it",
    load: async () => (await import("./explain.ts")).explainVerb,
  },
  {
    name: "compare",
    operands: "JOB.json",
    takes: [1, 1],
    options: ["json", "month", "seed", "draws", "skies"],
    answers: "the setups side by side: days, chance, price, mass, driving to refill",
    load: async () => (await import("./compare.ts")).compareVerb,
  },
  {
    name: "size",
    operands: "JOB.json",
    takes: [1, 1],
    options: ["json", "setup", "nights", "chance", "months", "chemistry", "seed", "draws"],
    answers: "the smallest banks and arrays that last, priced and weighed",
    load: async () => (await import("./size.ts")).sizeVerb,
  },
  {
    name: "wiring",
    operands: "JOB.json",
    takes: [1, 1],
    options: ["json", "setup", "month"],
    answers: "each run: volts, amps and what limits them, conductor and fuse, cautions",
    load: async () => (await import("./wiring.ts")).wiringVerb,
  },
  {
    name: "match",
    operands: "JOB.json",
    takes: [1, 1],
    options: ["json", "setup", "seed", "draws", "skies"],
    answers: "what would explain what was seen: tired bank, hungry fridge, shade",
    load: async () => (await import("./match.ts")).matchVerb,
  },
  {
    name: "hours",
    operands: "JOB.json",
    takes: [1, 1],
    options: ["json", "setup", "month", "skies"],
    answers: "every hour of one setup, average sky, as CSV with units in the names",
    load: async () => (await import("./hours.ts")).hoursVerb,
  },
  {
    name: "check",
    operands: "JOB.json",
    takes: [1, 1],
    options: ["json"],
    answers: "whether the job is valid, and every fault where it is not",
    load: async () => (await import("./check.ts")).checkVerb,
  },
  {
    name: "places",
    operands: "[NAME ...]",
    takes: [0, 20],
    options: ["json", "limit"],
    answers: "places known by name or country, with the id to put in a job",
    load: async () => (await import("./places.ts")).placesVerb,
  },
];
