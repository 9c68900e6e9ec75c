/* eslint-disable @typescript-eslint/no-unsafe-call -- jobs are spoilt here on purpose */
import { findClimates, parseJobText, resolve, resolveWith, type Job } from "@stayput/job";
import { explain, type Study } from "@stayput/sim";
import { describe, expect, it } from "vitest";
import { changed, demo, type Loose } from "./helpers.ts";

function jobWith(change: (job: Loose) => void = () => undefined): Job {
  const read = parseJobText(changed(change));
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join("\n"));
  return read.job;
}

async function resolved(change?: (job: Loose) => void, month?: number) {
  const result = await resolve(jobWith(change), month === undefined ? {} : { month });
  if (!result.ok) throw new Error(result.faults[0]?.message);
  return result;
}

describe("resolve", () => {
  it("gives a study that fits the simulation's types, from both demo jobs", async () => {
    for (const name of ["family-caravan", "bush-camper"] as const) {
      const read = parseJobText(demo(name));
      if (!read.ok) throw new Error(read.faults[0]?.message);
      const result = await resolve(read.job);
      if (!result.ok) throw new Error(result.faults[0]?.message);
      const study: Study = result.study;
      expect(study.climate.ghi_kWh_m2_day).toHaveLength(12);
      expect(study.setups.length).toBeGreaterThan(1);
    }
  });

  it("offers the nearest names for a place that is not there", async () => {
    const result = await resolve(jobWith((job) => (job["place"].id = "au-charlevile")));
    expect(!result.ok && result.faults[0]!.message).toMatch(
      /place.id: there is no place "au-charlevile"; the nearest are au-charleville/,
    );
  });

  it("takes loads away and adds them, setup by setup", async () => {
    const extra = { id: "radio", name: "Radio", kind: "appliance", supply: "dc", watts: 5, use: [] };
    const { study } = await resolved((job) => (job["setups"][1].loads = { drop: ["fan", "pump"], add: [extra] }));
    expect(study.setups[0]!.loads.map(({ id }) => id)).toEqual(["fridge", "lights", "pump", "phones", "fan"]);
    expect(study.setups[1]!.loads.map(({ id }) => id)).toEqual(["fridge", "lights", "phones", "radio"]);
  });

  it("arrives in another month when asked, on a day that the month has", async () => {
    expect((await resolved(undefined, 2)).study.trip).toMatchObject({ month: 2, day: 14 });
    expect((await resolved((job) => (job["trip"].arrive = "03-31"), 6)).study.trip).toMatchObject({
      month: 6,
      day: 30,
    });
    await expect(resolved(undefined, 13)).rejects.toThrow(/month must be a whole number from 1 to 12, got 13/);
  });

  it("puts cables in copper and says what their names hide", async () => {
    const { study, notes } = await resolved((job) => {
      job["setups"][1].feed.path[1] = { kind: "cable", length_m: 1, awg: "2/0" };
      job["setups"][1].feed.path[3] = { kind: "cable", length_m: 1, area_mm2: 16, class: 2 };
    });
    expect(study.setups[0]!.feed!.path[1]).toMatchObject({ area_mm2: 4.6, conductorClass: 5, temp_C: 40 });
    const [, first, , second] = study.setups[1]!.feed!.path;
    expect(first).toMatchObject({ area_mm2: expect.closeTo(67.43, 2) });
    expect(second).toMatchObject({ area_mm2: 16, conductorClass: 2 });
    expect(notes.filter((note) => note.includes("sold as 6 mm"))).toHaveLength(2);
  });

  it("fills in what depends on another field, and says what it assumed", async () => {
    const { study, notes } = await resolved((job) => {
      job["setups"] = [job["setups"][0]];
      delete job["setups"][0].solarCharger;
      delete job["setups"][0].feed;
      job["setups"][0].arrays[0].tilt_deg = 20;
      job["setups"][0].inverter = { rated_W: 2000 };
      delete job["loads"][0].compressor_W;
    });
    const [now] = study.setups;
    expect(now!.solarCharger).toEqual({ kind: "mppt", rated_A: 25 });
    expect(now!.arrays[0]!.azimuth_deg).toBe(0);
    expect(now!.inverter).toMatchObject({ surge_W: 4000, idle_W: 14 });
    expect(now!.loads[0]).toMatchObject({ compressor_W: 75 });
    expect(notes).toEqual([
      "As it came: Roof is taken to face north, since no azimuth_deg is given.",
      "As it came: an MPPT charger of 25 A is assumed, large enough not to limit the panels.",
      "As it came: nothing charges the bank while driving.",
    ]);
  });

  it("assumes no larger charger than could be given", async () => {
    const { study, notes } = await resolved((job) => {
      job["setups"][0].arrays = [{ watts: 20_000 }];
      delete job["setups"][0].solarCharger;
    });
    expect(study.setups[0]!.solarCharger).toEqual({ kind: "mppt", rated_A: 1000 });
    expect(notes).toContain("As it came: an MPPT charger of 1000 A is assumed, the largest there is.");
    expect(explain(study, { skies: { seed: 1, draws: 1 } }).setups).toHaveLength(study.setups.length);
  });

  it("warns of panels without a charger and of volts that cannot charge", async () => {
    const { notes } = await resolved((job) => {
      job["setups"][0].solarCharger = null;
      job["setups"][1].bank.nominal_V = 24;
    });
    expect(notes.join("\n")).toMatch(/panels but no solar charger/);
    expect(notes.join("\n")).toMatch(/14.2 V can never charge a 24 V bank/);
  });

  it("takes a place in any of its forms", async () => {
    const months = (n: number) => Array<number>(12).fill(n);
    const own = { name: "Here", latitude: -30, ghi_kWh_m2_day: months(5), tmax_C: months(30), tmin_C: months(10) };
    const bare = await resolved((job) => (job["place"] = own));
    expect(bare.study.climate).toMatchObject({ longitude_deg: null, utcOffset_h: null, dayToDay: 0.29 });
    expect(bare.notes.join()).toMatch(/clock time is taken as solar time/);
    const east = await resolved((job) => (job["place"] = { ...own, longitude: 21 }));
    expect(east.study.climate).toMatchObject({ longitude_deg: 21, utcOffset_h: 1 });
    const pole = await resolved((job) => (job["place"] = { ...own, latitude: 78.2 })); // its own climate needs no table
    expect(pole.study.climate.latitude_deg).toBe(78.2);
    const point = await resolved((job) => (job["place"] = { name: "Here", latitude: -23, longitude: 30, elev_m: 500 }));
    expect(point.place).toEqual({ id: null, name: "Here", latitude_deg: -23, longitude_deg: 30 });
    const sky = await resolved((job) => (job["place"] = { name: "Here", latitude: -23, sky: "dull" }));
    expect(sky.study.climate.longitude_deg).toBeNull();
  });

  it("carries what was seen, at its own place and day or the trip's", async () => {
    const { match, study } = await resolved((job) => {
      job["match"].push({ flatOnMorning: 2, arrived: "07-01", place: { id: "za-upington" } });
    });
    expect(match[0]).toEqual({ flatOnMorning: 3, month: 11, day: 14, climate: study.climate });
    expect(match[1]).toMatchObject({ flatOnMorning: 2, month: 7, day: 1, climate: { latitude_deg: -28.41 } });
    const lost = await resolve(jobWith((job) => (job["match"][0].place = { id: "nowhere" })));
    expect(!lost.ok && lost.faults[0]!.path).toBe("match[0].place.id");
  });

  it("takes 29 February as the 28th, as the simulation does, and says so", async () => {
    const leap = await resolved((job) => (job["trip"].arrive = "02-29"));
    expect(leap.study.trip).toMatchObject({ month: 2, day: 28 });
    expect(leap.notes).toContain("29 February is taken as 28 February, since the year of the model has 365 days.");
    const seen = await resolved((job) => (job["match"][0].arrived = "02-29"));
    expect(seen.match[0]).toMatchObject({ month: 2, day: 28 });
    expect(seen.notes.join()).toMatch(/29 February/);
    const plain = await resolved((job) => (job["trip"].arrive = "02-28"));
    expect(plain.notes.join()).not.toMatch(/29 February/);
    const moved = await resolve(
      jobWith((job) => (job["trip"].arrive = "01-31")),
      { month: 2 },
    );
    expect(moved.ok && moved.study.trip).toMatchObject({ month: 2, day: 28 });
  });

  it("does the same without waiting once climates are found", async () => {
    const job = jobWith();
    const climates = await findClimates(job);
    if ("faults" in climates) throw new Error("not found");
    expect(resolveWith(job, structuredClone(climates))).toEqual(await resolve(job));
  });
});
