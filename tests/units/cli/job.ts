/** A small job for the command line, as a person would write it. Invented. */
export const job = {
  format: "stayput-job",
  version: 1,
  title: "Test job",
  place: { id: "za-upington" },
  trip: { arrive: "01-10", nights: 4 },
  loads: [
    { id: "lights", name: "Lights", kind: "appliance", supply: "dc", watts: 20, use: [{ from: 18, to: 23 }] },
    {
      id: "fridge",
      name: "Fridge",
      kind: "compressor-fridge",
      supply: "dc",
      rated_Wh_day: 700,
      ratedAt_C: 25,
      inside_C: 4,
      compressor_W: 75,
      volume_L: 180,
    },
  ],
  setups: [
    {
      id: "now",
      name: "Now",
      bank: { chemistry: "agm", nominal_V: 12, capacity_Ah: 200 },
      arrays: [{ name: "Roof", watts: 200 }],
      solarCharger: { kind: "mppt", rated_A: 20 },
    },
    {
      id: "more",
      name: "More",
      bank: { chemistry: "lfp", nominal_V: 12, capacity_Ah: 200 },
      arrays: [{ name: "Roof", watts: 400 }],
      solarCharger: { kind: "mppt", rated_A: 30 },
    },
  ],
} as const;

/** The job's text with one value put in at a path, given as JSON so that NaN and the like can be written too. */
export function jobWith(path: readonly (string | number)[], json: string): string {
  const mark = "@@here@@";
  const copy: unknown = structuredClone(job);
  const last = path.at(-1) ?? "";
  const parent = path.slice(0, -1).reduce((value, key) => (value as Record<string, unknown>)[key], copy);
  (parent as Record<string, unknown>)[last] = mark;
  return JSON.stringify(copy, null, 2).replace(JSON.stringify(mark), json);
}
