import { describe, expect, it } from "vitest";
import { feedCautions } from "../../../../packages/sim/src/answers/solvedWiring.ts";
import { wiring } from "../../../../packages/sim/src/answers/wiring.ts";
import type { WiringAnswer } from "../../../../packages/sim/src/answers/wiringTypes.ts";
import type { AbsorptionFridge, PathPiece, Setup } from "../../../../packages/sim/src/study.ts";
import { bank, cable, converter, fridge, inverter, plug, relay, setup, source } from "./wiringSetups.ts";

const one = (change: Partial<Setup>): WiringAnswer => wiring([setup(change)], () => 25)[0]!;
const codes = (change: Partial<Setup>): string[] => feedCautions(setup(change), 25).map(({ code }) => code);
const thinPath: PathPiece[] = [{ kind: "fuse", rated_A: 40 }, cable(7, 4), plug];

describe("a relay on a variable-voltage alternator", () => {
  const feed = relay({ source: { ...source, low_V: 12.4 } });
  const { charge, sentences } = one({ feed });

  it("gives nothing at the low volts, and the two voltages say why", () => {
    const low = charge!.moments[0]!;
    // 12.4 V stands under the rested 12.15 V and more of a half-charged AGM, and the 0.75 V that charging takes
    expect(low).toMatchObject({ when: "start", source_V: 12.4, weight: 0.8, delivered_A: 0, limitedBy: "source" });
    expect(sentences[0]).toMatch(/no amps reach the bank .*the bank takes nothing under 1[23]\.\d V/);
    expect(codes({ feed })).toContain("feed-relay-low-volts");
  });

  it("gives only its share of the drive at the high volts", () => {
    const high = charge!.moments.find(({ when, source_V }) => when === "start" && source_V === 14.2)!;
    expect(high.delivered_A).toBeGreaterThan(5);
    expect(charge!.startMean_A).toBeCloseTo(0.2 * high.delivered_A, 9);
  });

  it("is said of no fixed source", () => expect(codes({})).not.toContain("feed-relay-low-volts"));
});

describe("a 25 A converter on thin cable", () => {
  const feed = converter({ source: { ...source, volts: 13.2 }, path: thinPath });
  const { charge } = one({ feed });
  const start = charge!.moments[0]!;

  it("names the cable, with the volts that prove it", () => {
    // there and back 14 m of 4 mm² at 40 °C and the plug: (13.2 - 11.5) V over 0.0753 ohm
    const ohms = 0.014 * 4.95 * (1 + 0.00393 * 20) + 0.0005;
    expect(start.limitedBy).toBe("cable");
    expect(start.limit).toEqual({ name: "volts left at the converter", value: 11.5, unit: "V" });
    expect(start.input_A).toBeCloseTo(1.7 / ohms, 6);
    expect(start.points[3]!.volts_V).toBeCloseTo(11.5, 9);
    expect(start.gain_A).toBeCloseTo(25 - start.delivered_A, 6);
  });

  it("says it in words and as a caution", () => {
    expect(charge!.sentences[0]).toContain("the cable holds it back, leaving 11.5 V at the converter");
    expect(codes({ feed })).toContain("feed-thin-cable");
    expect(codes({ feed: converter() })).not.toContain("feed-thin-cable");
  });

  it("says amps as a meter reads them", () => {
    const thick = one({ feed: converter() }).charge!;
    expect(thick.moments[0]!.limitedBy).toBe("converter");
    expect(thick.sentences[0]).toContain("held by the converter's rating (25 A)");
  });

  it("sizes the conductor for the drops and for the converter's minimum", () => {
    const size = (purpose: string) => charge!.sizes.find((each) => each.purpose === purpose)!;
    // 3 % of 12 V: input at 12.84 V for 25 A at 14.4 V; 31.2 A; 0.36 V less the plug's 0.016 V over 14 m
    const amps = (25 * 14.4) / 0.9 / 12.84;
    expect(size("3 % drop").amps_A).toBeCloseTo(amps, 9);
    const perKm = (0.36 / amps - 0.0005) / 0.014 / (1 + 0.00393 * 20);
    expect(perKm).toBeGreaterThan(0.554); // so more than 25 mm² (0.78) does not
    expect(perKm).toBeLessThan(0.78);
    expect(size("3 % drop")).toMatchObject({ standard_mm2: 35, awg: "2 AWG" });
    expect(size("converter's minimum input").drop_V).toBeCloseTo(1.7, 9);
    expect(size("converter's minimum input").standard_mm2).toBeLessThanOrEqual(size("5 % drop").standard_mm2!);
    expect(charge!.use!.standard_mm2).toBe(35);
  });

  it("says what the cable holds if it was sold by its diameter", () => {
    expect(charge!.ifSoldByDiameter).toMatchObject({ name: "4 mm auto", area_mm2: 1.84 });
    expect(charge!.ifSoldByDiameter!.delivered_A).toBeLessThan(0.6 * charge!.ifSoldByDiameter!.asNamed_A);
    expect(codes({ feed })).toContain("feed-sold-by-diameter");
  });
});

it("starves a converter whose source stands under its minimum, and says so", () => {
  const feed = converter({ source: { ...source, low_V: 11.2 } });
  expect(one({ feed }).charge!.moments[0]).toMatchObject({ delivered_A: 0, limitedBy: "source" });
  expect(codes({ feed })).toContain("feed-under-minimum");
});

it("names the bank as the limit near full, by what an AGM takes there", () => {
  const { charge } = one({
    feed: converter({ rated_A: 40, path: [{ kind: "fuse", rated_A: 100 }, cable(5, 35), plug] }),
  });
  const nearFull = charge!.moments.find(({ when }) => when === "near full")!;
  expect(nearFull).toMatchObject({ limitedBy: "bank", bank_V: 14.4 });
  expect(nearFull.delivered_A).toBeLessThan(charge!.moments[0]!.delivered_A);
});

it("counts two converters in parallel on one path", () => {
  const path = [{ kind: "fuse" as const, rated_A: 150 }, cable(5, 50)];
  const lithium = bank({ chemistry: "lfp" });
  const { charge } = one({ bank: lithium, feed: converter({ count: 2, path, source: { ...source, spare_A: 120 } }) });
  expect(charge!.moments[0]!.delivered_A).toBe(50);
});

describe("the stage after", () => {
  const proposal = setup({
    id: "lithium",
    name: "Lithium",
    bank: bank({ chemistry: "lfp" }),
    feed: converter({ rated_A: 60, source: { ...source, spare_A: 90 } }),
  });
  const [now, then] = wiring([setup({ feed: converter({ path: thinPath }) }), proposal], () => 25);

  it("is the size that will do for the setup that asks most", () => {
    const after = now!.charge!.sizes.find(({ purpose }) => purpose === "stage after")!;
    expect(after.forSetup).toEqual({ id: "lithium", name: "Lithium" });
    // 60 A at 14.4 V over 0.9 from 14.2 V less 0.36 V
    expect(after.amps_A).toBeCloseTo((60 * 14.4) / 0.9 / 13.84, 9);
    expect(after.standard_mm2).toBeGreaterThan(now!.charge!.use!.standard_mm2!);
    expect(now!.checklist.map(({ id }) => id)).toContain("second-charge-pair");
  });

  it("is not asked of the setup that already asks most", () => {
    expect(then!.charge!.sizes.map(({ purpose }) => purpose)).not.toContain("stage after");
  });
});

describe("fuses", () => {
  it("stand at both ends, above the running current, within the conductor, and open the fault", () => {
    const { charge } = one({ feed: converter() });
    const [vehicle, house] = charge!.fuses;
    expect(vehicle!.end).toBe("the vehicle's battery");
    expect(vehicle!.ampacity_A).toBeCloseTo(120 * 0.85, 9);
    expect(vehicle!.rated_A).toBe(40); // 29 to 30 A run; a quarter over is under 40
    expect(house!.running_A).toBe(25);
    // a full 200 Ah AGM: 12.85 V over 2.5 mΩ
    expect(house!.fault_A).toBeCloseTo(12.85 / 0.0025, 6);
    expect(house!.kinds).not.toContain("blade fuse (ISO 8820-3)");
  });

  it.each([
    ["feed-no-fuse", [cable(7, 16), plug]],
    ["feed-fuse-over-cable", [{ kind: "fuse", rated_A: 60 }, cable(7, 4), plug]],
    ["feed-over-fuse", [{ kind: "fuse", rated_A: 20 }, cable(7, 16), plug]],
    [
      "feed-over-plug",
      [{ kind: "fuse", rated_A: 50 }, cable(7, 16), { kind: "plug", limit_A: 15, resistance_mOhm: 2 }],
    ],
  ] as [string, PathPiece[]][])("flags %s", (code, path) => {
    expect(codes({ feed: converter({ path }) })).toContain(code);
    expect(codes({ feed: converter() })).not.toContain(code);
  });
});

it("lets a load fed on the way take its amps from the same path", () => {
  const path = (amps: number): PathPiece[] => [
    { kind: "fuse", rated_A: 60 },
    cable(4, 10),
    { kind: "load", amps, name: "fridge element" },
    cable(4, 10),
  ];
  const [alone, shared] = [0, 15].map((amps) => one({ feed: relay({ path: path(amps) }) }).charge!.moments[0]!);
  expect(shared!.delivered_A).toBeLessThan(alone!.delivered_A - 1);
  expect(shared!.points[1]!.amps_A).toBeCloseTo(shared!.delivered_A + 15, 9);
  expect(shared!.points.at(-1)!.amps_A).toBeCloseTo(shared!.delivered_A, 9);
});

describe("a load fed on the way", () => {
  const fed = (amps: number, area_mm2: number) =>
    converter({
      path: [{ kind: "fuse", rated_A: 60 }, cable(4, area_mm2), plug, { kind: "load", amps }, cable(4, 16)],
    });

  it("is borne by the fuse at the vehicle and by the conductor, not by the fuse at the bank", () => {
    const [alone, shared] = [0, 15].map((amps) => one({ feed: fed(amps, 16) }).charge!);
    const carries = ({ sizes }: NonNullable<typeof alone>) => sizes.find((size) => size.purpose === "amps it carries")!;
    expect(shared!.fuses[0]!.running_A).toBeCloseTo(shared!.running_A + 15, 9);
    expect(alone!.fuses[0]!.rated_A).toBe(40); // 29 to 31 A run, and a quarter over
    expect(shared!.fuses[0]!.rated_A).toBe(60);
    expect(shared!.fuses[1]!.running_A).toBe(alone!.fuses[1]!.running_A);
    expect(carries(shared!).amps_A).toBeCloseTo(carries(alone!).amps_A + 15, 9);
  });

  it("heats a plug before it", () => {
    const hot = (amps: number) => codes({ feed: fed(amps, 8) }).includes("feed-plug-hot");
    expect([hot(0), hot(15)]).toEqual([false, true]); // on 8 mm² the connector carries some 46 A
  });
});

it("takes each bank at its own temperature", () => {
  const feed = converter();
  const lithium = (where: "inside" | "outside") => setup({ id: where, feed, bank: bank({ chemistry: "lfp", where }) });
  const answers = wiring([lithium("inside"), lithium("outside")], (one) => (one.bank.where === "inside" ? 3 : -2));
  expect(answers.map(({ charge }) => charge!.moments[0]!.delivered_A)).toEqual([25, 0]); // frozen, lithium takes none
});

describe("the alternator", () => {
  it("is rated backwards from the spare amps where the job does not give it", () => {
    const { alternator } = one({}).charge!;
    expect(alternator.given).toBe(false);
    expect(alternator.road.spare_A).toBeGreaterThanOrEqual(60);
    expect(alternator.idle.hot_A).toBeCloseTo(0.32 * alternator.rated_A, 0);
  });

  it("is held against the spare amps where it does", () => {
    const feed = relay({ source: { ...source, alternator: { rated_A: 70, vehicle_A: 30 } } });
    expect(codes({ feed })).toContain("feed-alternator-short");
  });
});

describe("other runs", () => {
  it("sizes inverter leads on full load at the cut-off", () => {
    const run = one({ inverter }).others.find(({ kind }) => kind === "inverter")!;
    // 2000 W + 14 W + 5 % + 5 % at 11.5 V
    expect(run.running_A).toBeCloseTo(2214 / 11.5, 9);
    expect(run.given).toBe(false);
    expect(run.drop_V).toBeNull();
  });

  it("walks a given run and counts its drop", () => {
    const runs = [{ kind: "inverter" as const, path: [{ kind: "fuse" as const, rated_A: 150 }, cable(1, 35)] }];
    const run = one({ inverter, runs }).others[0]!;
    expect(run.drop_V).toBeCloseTo((2214 / 11.5) * 0.002 * 0.554 * (1 + 0.00393 * 20), 9);
    expect(codes({ inverter, runs })).toContain("run-over-rating");
  });
});

it("looks at each of several runs of a kind by itself", () => {
  const solar = (name: string, rated_A: number) => {
    return { kind: "solar" as const, name, path: [{ kind: "fuse" as const, rated_A }, cable(5, 6)] };
  };
  const panels = { name: "Roof", watts: 250, tilt_deg: 0, azimuth_deg: 0, mount: "flush", soiling: 0.1 } as const;
  const change = {
    arrays: [{ ...panels, gamma_per_K: -0.0035 }],
    solarCharger: { kind: "mppt", rated_A: 20 } as const,
    runs: [solar("Front", 40), solar("Back", 5)],
  };
  const over = feedCautions(setup(change), 25).filter(({ code }) => code === "run-over-rating");
  expect(over.map(({ text }) => text)).toEqual(["Back: 5 A fuse is rated 5 A and 17 A run through it."]);
});

describe("a fridge at the end of its feed", () => {
  const run = (area_mm2: number) => [{ kind: "fridge-feed" as const, load: "fridge", path: [cable(7, area_mm2)] }];

  it("trips on thin cable long before the bank is flat, and explain can say so", () => {
    const change = { loads: [{ ...fridge, cutOut_V: 11.3 }], runs: run(1.5) };
    const [answer] = one(change).fridges;
    expect(answer!.feedIsTheCause).toBe(true);
    expect(answer!.stopsBelow).toBeGreaterThan(answer!.bankDropsBelow + 0.2);
    expect(feedCautions(setup(change), 25)[0]!.code).toBe("fridge-feed-drop");
    // at its terminals: what is left of the rested volts carries the compressor's watts exactly
    expect(answer!.atFridge_V! * answer!.running_A).toBeCloseTo(75, 6);
  });

  it("is not blamed on a stout feed, nor on one that the job does not give", () => {
    expect(codes({ loads: [fridge], runs: run(16) })).not.toContain("fridge-feed-drop");
    expect(one({ loads: [fridge] }).fridges[0]).toMatchObject({
      given: false,
      stopsBelow: null,
      feedIsTheCause: false,
    });
  });
});

describe("checklist and cautions", () => {
  const threeWay: AbsorptionFridge = {
    id: "three-way",
    name: "Three-way",
    kind: "absorption-fridge",
    burns: "gas",
    element_dc_W: 170,
    element_ac_W: 190,
    gas_g_day: 270,
    controls_A: 0.5,
    volume_L: 150,
    thermostat: { gas: true, dc: false, ac: true },
  };
  const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);

  it("follow from what the job has", () => {
    const towed = one({ loads: [threeWay] });
    const van = one({ feed: relay({ path: [{ kind: "fuse", rated_A: 50 }, cable(3, 16)] }) });
    expect(ids(towed.checklist)).toEqual(expect.arrayContaining(["brake-controller", "twelve-pin", "fridge-own-pair"]));
    expect(ids(van.checklist)).not.toContain("twelve-pin");
    expect(ids(towed.safety)).toContain("gas");
    expect(ids(van.safety)).not.toContain("gas");
    expect(one({ feed: null }).checklist).toEqual([]);
  });

  it("say each thing once, with its standing", () => {
    const { checklist, safety, standards } = one({
      loads: [threeWay, fridge],
      inverter,
      bank: bank({ chemistry: "lfp" }),
    });
    expect(new Set(ids([...checklist, ...safety])).size).toBe(checklist.length + safety.length);
    for (const { standing } of [...checklist, ...safety, ...standards]) expect(standing).not.toBe("");
    expect(ids(safety)).toContain("lithium-place");
  });
});

it("answers for a setup that nothing charges on the road", () => {
  const answer = one({ feed: null });
  expect(answer.charge).toBeNull();
  expect(answer.sentences[0]).toBe("Nothing charges the bank on the road.");
});
