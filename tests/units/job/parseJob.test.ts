/* eslint-disable @typescript-eslint/no-unsafe-return, @typescript-eslint/no-unsafe-call -- jobs are spoilt here on purpose */
import { parseJob, parseJobText } from "@stayput/job";
import { describe, expect, it } from "vitest";
import { changed, demo, faultsOf, type Loose } from "./helpers.ts";

const load = (job: Loose, id: string): Loose => job["loads"].find((each: Loose) => each["id"] === id);
const bank = (job: Loose): Loose => job["setups"][0].bank;

const whole = (part: Loose): Loose => ({
  name: "X",
  latitude: -30,
  ghi_kWh_m2_day: Array(12).fill(5),
  tmax_C: Array(12).fill(30),
  tmin_C: Array(12).fill(10),
  ...part,
});
const months = (path: string): string[] => Array.from({ length: 12 }, (_, i) => `${path}[${i}]`);

describe("a job that is as it must be", () => {
  it("has every omitted field filled in", () => {
    const read = parseJobText(demo("family-caravan"));
    if (!read.ok) throw new Error(read.faults[0]?.message);
    const [now] = read.job.setups;
    expect(now?.bank).toEqual({
      chemistry: "agm",
      nominal_V: 12,
      capacity_Ah: 200,
      condition: 0.85,
      where: "inside",
      reserve: null,
      cutOff_V: null,
      absorption_V: null,
      restedVolts: null,
    });
    expect(now?.arrays[0]).toMatchObject({ tilt_deg: 0, azimuth_deg: null, soiling: 0.1, gamma_per_K: -0.0035 });
    expect(read.job.setups[1]?.inverter).toBeNull();
  });
});

describe("each kind of fault names the field, what was given and what is accepted", () => {
  const cases: [string, (job: Loose) => void, string, RegExp][] = [
    [
      "a wrong type",
      (j) => (bank(j)["capacity_Ah"] = true),
      "setups[0].bank.capacity_Ah",
      /true was given.*5 to 5000 \(Ah\)/,
    ],
    ["a negative value", (j) => (j["trip"].nights = -3), "trip.nights", /-3 was given.*whole number from 1 to 60/],
    [
      "an absurd value",
      (j) => (bank(j)["capacity_Ah"] = 1e12),
      "setups[0].bank.capacity_Ah",
      /1000000000000 was given/,
    ],
    ["a share over 1", (j) => (bank(j)["condition"] = 85), "setups[0].bank.condition", /85 was given.*0.1 to 1/],
    [
      "a field that is missing",
      (j) => delete bank(j)["chemistry"],
      "setups[0].bank.chemistry",
      /missing.*"agm" or "gel"/,
    ],
    ["a mistyped field", (j) => (bank(j)["conditoin"] = 1), "setups[0].bank.conditoin", /did you mean condition\?/],
    ["a field without its unit", (j) => (bank(j)["cutOff"] = 11), "setups[0].bank.cutOff", /did you mean cutOff_V\?/],
    ["a field unlike any", (j) => (bank(j)["xyzzyx"] = 1), "setups[0].bank.xyzzyx", /known here: chemistry, nominal_V/],
    ["an unknown kind", (j) => (load(j, "fan")["kind"] = "fan"), "loads[4].kind", /"fan" was given.*"appliance" or/],
    ["a kind that is missing", (j) => delete load(j, "fan")["kind"], "loads[4].kind", /missing|nothing/],
    ["a load that is none", (j) => (j["loads"][0] = 7), "loads[0]", /7 was given.*an object with a `kind`/],
    ["no day of arrival", (j) => (j["trip"].arrive = "11"), "trip.arrive", /"11" was given.*MM-DD/],
    ["a day that is none", (j) => (j["trip"].arrive = "02-30"), "trip.arrive", /MM-DD/],
    ["two loads of one id", (j) => (load(j, "fan")["id"] = "pump"), "loads[4].id", /"pump" is taken/],
    ["a reserved id", (j) => (load(j, "fan")["id"] = "inverter"), "loads[4].id", /taken by the inverter's own losses/],
    ["an id that objects have", (j) => (load(j, "fan")["id"] = "constructor"), "loads[4].id", /letters, digits/],
    ["two setups of one id", (j) => (j["setups"][1].id = "now"), "setups[1].id", /"now" is taken/],
    ["no setup", (j) => (j["setups"] = []), "setups", /an empty list was given.*list of 1 to 12/],
    ["thirteen setups", (j) => (j["setups"] = Array(13).fill(j["setups"][0])), "setups", /a list of 13 was given/],
    [
      "a drop of nothing",
      (j) => (j["setups"][1].loads = { drop: ["frigde"] }),
      "setups[1].loads.drop[0]",
      /did you mean "fridge"/,
    ],
    [
      "an added id that is taken",
      (j) => (j["setups"][1].loads = { add: [load(j, "fan")] }),
      "setups[1].loads.add[0].id",
      /"fan" is taken/,
    ],
    [
      "a run to no load",
      (j) => (j["setups"][2].runs[0].load = "frig"),
      "setups[2].runs[0].load",
      /this setup has no load "frig"/,
    ],
    ["an empty window", (j) => (j["trip"].shade[0].to = 5), "trip.shade[0].to", /other than `from`/],
    [
      "a drive past midnight",
      (j) => (j["trip"].drives.departs = 22),
      "trip.drives.hours",
      /at most 2 h when leaving at 22/,
    ],
    [
      "a late drive past midnight",
      (j) => (j["trip"].drives = { everyNights: 2, hours: 1.4, departs: 22.7 }),
      "trip.drives.hours",
      /at most 1.3 h when leaving at 22.7/,
    ],
    [
      "a compressor too small for its rating",
      (j) => Object.assign(load(j, "fridge"), { compressor_W: 10.1 }),
      "loads[0].rated_Wh_day",
      /at most 242.4 Wh a day/,
    ],
    [
      "a cable of two sizes",
      (j) => Object.assign(j["setups"][0].feed.path[1], { area_mm2: 6, awg: "10", autoSize_mm: undefined }),
      "setups[0].feed.path[1]",
      /area_mm2 and awg were given; accepted is one of/,
    ],
    [
      "a cable of no size",
      (j) => delete j["setups"][0].feed.path[1].autoSize_mm,
      "setups[0].feed.path[1]",
      /no size was given.*area_mm2, awg/,
    ],
    [
      "a cable of two sizes",
      (j) => (j["setups"][0].feed.path[1].awg = "8"),
      "setups[0].feed.path[1]",
      /awg and autoSize_mm/,
    ],
    [
      "a diameter that is not sold",
      (j) => (j["setups"][0].feed.path[1].autoSize_mm = 7),
      "setups[0].feed.path[1].autoSize_mm",
      /7 was given.*6 \(mm\)/,
    ],
    [
      "a source low above high",
      (j) => (j["setups"][0].feed.source.low_V = 15),
      "setups[0].feed.source.low_V",
      /at most volts, 14.2/,
    ],
    [
      "a source low above the volts that it is taken to have",
      (j) => (j["setups"][0].feed.source = { low_V: 20 }),
      "setups[0].feed.source.low_V",
      /at most volts, 14.2/,
    ],
    [
      "an inverter that draws more idle than it is rated",
      (j) => (j["setups"][0].inverter = { rated_W: 50, idle_W: 60 }),
      "setups[0].inverter.idle_W",
      /60 was given; accepted is at most the rating, 50/,
    ],
    [
      "an inverter better than its idle draw allows",
      (j) => (j["setups"][0].inverter = { rated_W: 50, peakEfficiency: 0.95 }),
      "setups[0].inverter.peakEfficiency",
      /at most 0.925, with 4 W drawn idle/,
    ],
    [
      "24 V figures on a 12 V bank",
      (j) => (bank(j)["absorption_V"] = 28.8),
      "setups[0].bank.absorption_V",
      /for a 12 V bank/,
    ],
    [
      "12 V figures on a 24 V bank",
      (j) => Object.assign(bank(j), { nominal_V: 24, cutOff_V: 11.5 }),
      "setups[0].bank.cutOff_V",
      /for a 24 V bank/,
    ],
    [
      "a cut-off over the highest",
      (j) => (bank(j)["cutOff_V"] = 13.3),
      "setups[0].bank.cutOff_V",
      /13.3 was given; accepted is 9 to 13.2 V for a 12 V bank$/,
    ],
    [
      "a curve that falls",
      (j) =>
        (bank(j)["restedVolts"] = [
          { share: 0, volts: 12 },
          { share: 1, volts: 11 },
        ]),
      "setups[0].bank.restedVolts[1]",
      /larger share/,
    ],
    [
      "a surge under the rating",
      (j) => (j["setups"][2].inverter.surge_W = 500),
      "setups[2].inverter.surge_W",
      /at least the rating, 1000/,
    ],
    [
      "more than the compressor can",
      (j) => (load(j, "fridge")["compressor_W"] = 20),
      "loads[0].rated_Wh_day",
      /at most 480 Wh a day/,
    ],
    [
      "rated no warmer than inside",
      (j) => Object.assign(load(j, "fridge"), { ratedAt_C: 12, inside_C: 10 }),
      "loads[0].ratedAt_C",
      /5 °C above inside_C/,
    ],
    ["a place of no form", (j) => (j["place"] = { name: "There", latitude: -30 }), "place", /accepted is \{ id \}, or/],
    [
      "a place that could be several",
      (j) => (j["place"] = { name: "There", latitude: -30 }),
      "place",
      /with name and latitude was given; it lacks longitude, or sky, or ghi_kWh_m2_day, tmax_C and tmin_C; accepted/,
    ],
    [
      "a longitude cut short",
      (j) => (j["place"] = { name: "There", latitude: -28, lon: 21 }),
      "place.lon",
      /unknown field "lon"; did you mean longitude\?/,
    ],
    [
      "a latitude and a longitude cut short",
      (j) => (j["place"] = { name: "There", lat: -28, lon: 21 }),
      "place.lat",
      /unknown field "lat"; did you mean latitude\?/,
    ],
    [
      "a field that no form of place has",
      (j) => (j["place"] = { name: "There", latitude: -28, spot: 21 }),
      "place.spot",
      /unknown field "spot"; known here: id, name, latitude, longitude/,
    ],
    [
      "a sky beside a longitude",
      (j) => (j["place"] = { name: "There", latitude: 52, longitude: 3, sky: "dull" }),
      "place.longitude",
      /"longitude" does not go with name, latitude and sky; accepted is \{ id \}, or/,
    ],
    [
      "a use that is both a window and a moment",
      (j) => (load(j, "fan")["use"] = [{ from: 1, to: 2, at: 3, minutes: 4 }]),
      "loads[4].use[0]",
      /an object with from, to, at and minutes was given; accepted is/,
    ],
    [
      "a sky that is none",
      (j) => (j["place"] = { name: "There", latitude: -30, sky: "sunny" }),
      "place.sky",
      /"clear" or "mixed" or "dull"/,
    ],
    [
      "a latitude past the grid",
      (j) => (j["place"] = { name: "Pole", latitude: -80, longitude: 0 }),
      "place.latitude",
      /-60 to 72/,
    ],
    [
      "eleven months",
      (j) => (j["place"] = whole({ tmax_C: Array(11).fill(30) })),
      "place.tmax_C",
      /a list of 11 was given; accepted is a list of 12$/,
    ],
    [
      "a minimum over the maximum",
      (j) => (j["place"] = whole({ tmin_C: Array(12).fill(31) })),
      "place.tmin_C[0]",
      /at most that month's maximum, 30/,
    ],
    ["a text too long", (j) => (j["title"] = "x".repeat(201)), "title", /\(201 characters\).*1 to 200 characters/],
    [
      "notes of megabytes",
      (j) => (j["customer"].notes = "x".repeat(4_900_000)),
      "customer.notes",
      /\(4900000 characters\).*at most 5000 characters/,
    ],
    [
      "megabytes where a number belongs",
      (j) => (j["trip"].nights = "x".repeat(100_000)),
      "trip.nights",
      /a whole number from 1 to 60/,
    ],
    [
      "a text of 100 kB",
      (j) => (j["customer"].name = "x".repeat(100_000)),
      "customer.name",
      /\(100000 characters\).*at most 200 /,
    ],
    ["a control character", (j) => (j["title"] = "a\u001b[2J"), "title", /\\u001b.*without control characters/],
    ["half an emoji", (j) => (j["title"] = "a\ud83d"), "title", /without control characters/],
    ["another format", (j) => (j["format"] = "other"), "format", /"stayput-job"/],
    ["a version to come", (j) => (j["version"] = 2), "version", /version 2.*reads up to 1.*newer program/],
    ["no version", (j) => delete j["version"], "version", /missing; it must be 1/],
    ["a currency in words", (j) => (j["currency"] = "dollars"), "currency", /three capital letters/],
    [
      "burning what it has not",
      (j) =>
        Object.assign(j["loads"], {
          0: { id: "t", name: "T", kind: "absorption-fridge", burns: "dc", element_dc_W: 0 },
        }),
      "loads[0].element_dc_W",
      /more than 0 W/,
    ],
    ["too deep", (j) => (j["place"] = deep(30)), "place.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a", /at most 16 levels/],
    ["too many in a list", (j) => (j["loads"] = Array(5000).fill(0)), "loads", /a list of 5000 was given/],
  ];
  const deep = (levels: number): Loose => (levels === 0 ? {} : { a: deep(levels - 1) });

  it.each(cases)("%s", (_, change, path, says) => {
    const faults = faultsOf(change);
    const fault = faults.find((each) => each.path === path);
    expect(fault, JSON.stringify(faults)).toBeDefined();
    expect(fault!.message).toMatch(says);
    expect(fault!.message).not.toMatch(/[\u0000-\u001f]/);
  });

  it.each<[string, (job: Loose) => void, string]>([
    ["a share", (j) => (bank(j)["reserve"] = -1), "a number from 0 to 0.95 (share), or null"],
    ["volts", (j) => (bank(j)["cutOff_V"] = []), "a number from 9 to 27 (V), or null"],
    ["a start", (j) => (load(j, "fan")["surge_W"] = 1e9), "a number from 0 to 60000 (W), or null"],
    ["nights", (j) => (j["sizing"] = { nights: "x" }), "a whole number from 1 to 60, or null"],
    ["drives", (j) => (j["trip"].drives = "x"), "an object: { everyNights, hours, departs }, or null"],
    ["a feed", (j) => (j["setups"][0].feed = 7), "an object with a `kind`, or null"],
    ["a currency", (j) => (j["currency"] = "x"), 'three capital letters, such as "ZAR", or null'],
    ["what takes no null", (j) => (j["trip"].nights = null), "a whole number from 1 to 60"],
  ])("says that null is accepted where it is: %s", (_, change, accepted) => {
    expect(faultsOf(change).map((fault) => fault.accepted)).toEqual([accepted]);
  });

  it("numbers that JSON has not are refused from a value", () => {
    for (const bad of [NaN, Infinity, -Infinity]) {
      const job = JSON.parse(demo("family-caravan")) as Loose;
      bank(job)["capacity_Ah"] = bad;
      const read = parseJob(job);
      expect(read.ok).toBe(false);
      expect(!read.ok && read.faults[0]!.message).toContain(`${bad} was given`);
    }
  });

  it.each([undefined, null, 3, "job", [], () => 1, new Date(), Symbol("x")])("a value that is no job: %s", (value) => {
    expect(parseJob(value).ok).toBe(false);
  });

  it("a value that holds itself ends", () => {
    const loop: Loose = {};
    loop["place"] = loop;
    expect(parseJob(loop).ok).toBe(false);
  });
});

describe("several faults", () => {
  it("are told all at once, in the order of the file, with their lines", () => {
    const faults = faultsOf((job) => {
      job["title"] = "";
      job["trip"].nights = 0;
      bank(job)["capacity_Ah"] = -1;
      job["setups"][3].id = "now";
    });
    expect(faults.map(({ path }) => path)).toEqual([
      "title",
      "trip.nights",
      "setups[0].bank.capacity_Ah",
      "setups[3].id",
    ]);
    const lines = faults.map(({ line }) => line ?? 0);
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
    expect(lines[0]).toBe(4);
  });

  it("are not made more by what is missing itself", () => {
    const faults = faultsOf((job) => {
      delete job["loads"];
      for (const setup of job["setups"]) Object.assign(setup, { loads: { drop: ["fan"] }, runs: [] });
    });
    expect(faults.map(({ path }) => path)).toEqual(["loads"]);
  });

  it.each<[string, (job: Loose) => void, string[]]>([
    ["a compressor's watts", (j) => (load(j, "fridge")["compressor_W"] = -1), ["loads[0].compressor_W"]],
    ["an ambient", (j) => (load(j, "fridge")["inside_C"] = 1e9), ["loads[0].inside_C"]],
    [
      "a bank's nominal volts",
      (j) => Object.assign(bank(j), { nominal_V: -1, cutOff_V: 11, absorption_V: 14 }),
      ["setups[0].bank.nominal_V"],
    ],
    [
      "an inverter's rating",
      (j) => (j["setups"][0].inverter = { rated_W: -1, surge_W: 60, idle_W: 14, peakEfficiency: 0.9 }),
      ["setups[0].inverter.rated_W"],
    ],
    [
      "a point of a curve",
      (j) =>
        (bank(j)["restedVolts"] = [
          { share: 1e9, volts: 12 },
          { share: 1, volts: 13 },
        ]),
      ["setups[0].bank.restedVolts[0].share"],
    ],
    [
      "a source's volts",
      (j) => (j["setups"][0].feed.source = { volts: 1, low_V: 12 }),
      ["setups[0].feed.source.volts"],
    ],
    ["an hour of leaving", (j) => (j["trip"].drives.departs = 1e9), ["trip.drives.departs"]],
    ["the loads", (j) => (j["loads"] = 7), ["loads"]],
    ["a month's maximum", (j) => (j["place"] = whole({ tmax_C: Array(12).fill(-90) })), months("place.tmax_C")],
  ])("are not worked out from what is refused itself: %s", (_, change, paths) => {
    expect(faultsOf(change).map(({ path }) => path)).toEqual(paths);
  });

  it.each<[string, (job: Loose) => void]>([
    ["setups[0].bank.cutOff_V", (j) => (bank(j)["cutOff_V"] = 50)],
    ["setups[0].bank.absorption_V", (j) => (bank(j)["absorption_V"] = 50)],
    ["setups[0].inverter.peakEfficiency", (j) => (j["setups"][0].inverter = { rated_W: 500, peakEfficiency: 2 })],
    ["setups[0].feed.source.low_V", (j) => (j["setups"][0].feed.source.low_V = 99)],
    ["trip.drives.hours", (j) => (j["trip"].drives.hours = 99)],
  ])("do not blame %s twice", (path, change) => {
    expect(faultsOf(change).map((fault) => fault.path)).toEqual([path]);
  });

  it("are counted past 500", () => {
    const faults = faultsOf((job) => (job["loads"] = Array(300).fill({ id: "x", kind: "appliance" })));
    expect(faults.at(-1)!.message).toMatch(/^and \d+ more faults$/);
  });
});

describe("keys that reach into JavaScript's own objects", () => {
  it.each(["__proto__", "constructor", "prototype"])(
    "%s is refused wherever it stands, and nothing is touched",
    (key) => {
      const text = changed(() => undefined).replace('"currency"', `"${key}": { "polluted": true }, "currency"`);
      const read = parseJobText(text);
      expect(!read.ok && read.faults[0]!.message).toContain(`unknown field "${key}"`);
      expect(({} as Loose)["polluted"]).toBeUndefined();
    },
  );
});

describe("what is dropped may come back under its id", () => {
  it("so that a fridge can be replaced by a better one", () => {
    const faults = faultsOf((job) => {
      job["setups"][1].loads = { drop: ["fridge"], add: [{ ...load(job, "fridge"), rated_Wh_day: 500 }] };
    });
    expect(faults).toEqual([]);
  });
});
