import { parseJob, resolve, type JobInput } from "@stayput/job";
import { sizeRequest, type SizeWishes } from "@stayput/job/sizing";
import { describe, expect, it } from "vitest";

/** An invented job with two 100 Ah AGMs and 300 W. */
const written: JobInput = {
  format: "stayput-job",
  version: 1,
  title: "Sizing",
  place: { id: "za-upington" },
  trip: { arrive: "01-10", nights: 4 },
  loads: [],
  setups: [
    {
      id: "now",
      name: "Now",
      bank: { chemistry: "agm", nominal_V: 12, capacity_Ah: 200 },
      arrays: [{ name: "Roof", watts: 300 }],
      solarCharger: { kind: "mppt", rated_A: 20 },
    },
  ],
};

async function asked(more: Partial<JobInput>, wishes: SizeWishes = {}) {
  const parsed = parseJob({ ...written, ...more });
  if (!parsed.ok) throw new Error(parsed.faults[0]?.message);
  const resolved = await resolve(parsed.job);
  if (!resolved.ok) throw new Error(resolved.faults[0]?.message);
  const [setup] = resolved.study.setups;
  return sizeRequest(parsed.job, resolved.study.trip, { setup: setup!, fitted: setup! }, wishes);
}

describe("what to size for", () => {
  it("is the trip's nights in its month, nine times in ten, from the catalogue's shelf, where nothing is said", async () => {
    const { request, notes } = await asked({});
    expect(request).toMatchObject({ nights: 4, chance: 0.9, months: [1], budget: null, roof_W: null, removed_kg: 0 });
    expect(request.chemistries).toEqual(["agm", "lfp"]);
    expect(request.banks.every(({ price }) => price === null)).toBe(true);
    expect(request.arrays[0]).toEqual({ watts: 0, price: null, mass_kg: 0 });
    expect(notes).toEqual([expect.stringMatching(/catalogue's usual ones/)]);
  });

  it("follows the job's wishes, and the command's before those", async () => {
    const sizing = { nights: 10, chance: 0.8, months: [6, 7], chemistries: ["gel" as const] };
    expect((await asked({ sizing })).request).toMatchObject(sizing);
    const wishes = { nights: 3, months: [2], chemistries: ["lfp" as const] };
    const { request } = await asked({ sizing }, wishes);
    expect(request).toMatchObject({ ...wishes, chance: 0.8 });
    expect(new Set(request.banks.map(({ chemistry }) => chemistry))).toEqual(new Set(["lfp"]));
  });

  it("takes the job's own shelf and makes arrays of its panels, the cheapest of each size, the roof left to the search", async () => {
    const { request, notes } = await asked({
      sizing: {
        roof_W: 400,
        banks: [{ chemistry: "agm", capacity_Ah: 120, price: 300, mass_kg: 33 }],
        panels: [
          { watts: 100, price: 90, mass_kg: 7, most: 2 },
          { watts: 200, price: 150, mass_kg: 12, most: 2 },
        ],
      },
    });
    expect(request.banks).toEqual([{ chemistry: "agm", capacity_Ah: 120, price: 300, mass_kg: 33 }]);
    expect(request.chemistries).toEqual(["agm"]);
    expect(request.arrays).toEqual([
      { watts: 0, price: 0, mass_kg: 0 },
      { watts: 100, price: 90, mass_kg: 7 },
      { watts: 200, price: 150, mass_kg: 12 }, // one of 200 W is cheaper than two of 100 W
      { watts: 300, price: 240, mass_kg: 19 },
      { watts: 400, price: 300, mass_kg: 24 },
      { watts: 500, price: 390, mass_kg: 31 },
      { watts: 600, price: 480, mass_kg: 38 },
    ]);
    expect(request.roof_W).toBe(400);
    expect(notes).toEqual([]);
  });

  it("thins a ladder of very many panels out, from none to all of them", async () => {
    const panels = [97, 101, 103].map((watts) => ({ watts, price: 1, mass_kg: 1, most: 50 }));
    const { request } = await asked({ sizing: { panels } });
    expect(request.arrays).toHaveLength(100);
    expect(request.arrays[0]!.watts).toBe(0);
    expect(request.arrays.at(-1)!.watts).toBe(50 * (97 + 101 + 103));
    const watts = request.arrays.map((array) => array.watts);
    expect(watts).toEqual([...new Set(watts)].sort((a, b) => a - b));
  });

  it("prices the catalogue's shelf only in the currency of the invented list, and says that it is invented", async () => {
    const { request, notes } = await asked({ currency: "ZAR", sizing: { budget: 30000 } });
    expect(request.budget).toBe(30000);
    expect(request.banks.every(({ price }) => price !== null && price > 0)).toBe(true);
    expect(notes.join(" ")).toMatch(/Prices are invented/);
  });

  it("leaves out a budget that no price can be held against, and says so", async () => {
    const { request, notes } = await asked({ currency: "AUD", sizing: { budget: 6000 } });
    expect(request.budget).toBeNull();
    expect(notes.join(" ")).toMatch(/budget is left out, as no price is known/);
  });

  it("takes what is fitted off the masses where a payload is named: two 100 Ah AGMs and 300 W, some 80 kg", async () => {
    const { request, notes } = await asked({ payload_kg: 50 });
    // from memory: a 100 Ah AGM weighs about 30 kg, a framed 300 W panel about 18 kg
    expect(request.removed_kg).toBeGreaterThan(65);
    expect(request.removed_kg).toBeLessThan(95);
    expect(notes.join(" ")).toMatch(/taken to weigh \d+ kg and to come out/);
  });
});
