import type { Handover } from "@stayput/handout";
import { beforeAll, describe, expect, it } from "vitest";
import { chargeRows } from "../../../../packages/handout/src/facts/chargeRows.ts";
import { optionsOf, type Option } from "../../../../packages/handout/src/facts/options.ts";
import { partsList } from "../../../../packages/handout/src/facts/partsList.ts";
import { faultRange_kA, wireRows } from "../../../../packages/handout/src/facts/wireRows.ts";
import { demoInput, handoverOf } from "../handover.ts";

let family: Handover;
let options: Option[];
beforeAll(async () => {
  family = await handoverOf(demoInput("family-caravan"), 10);
  options = optionsOf(family);
});

const plain = (lines: readonly string[] | undefined): string[] =>
  (lines ?? []).map((line) => line.replace(/\u00a0/g, " "));

describe("letters", () => {
  it("keep to their place in the job where only some setups are printed", () => {
    const setups = family.study.setups.filter(({ id }) => id === "lithium");
    expect(
      optionsOf({ ...family, study: { ...family.study, setups } }).map(({ letter, index }) => [letter, index]),
    ).toEqual([["C", 0]]);
  });
});

describe("the bill of materials", () => {
  const cellsOf = (part: string) =>
    partsList(options, { currency: "AUD", locale: "en-AU" })
      .find((row) => row.part === part)
      ?.cells.map(plain);

  it("has what the job says is fitted and proposed", () => {
    expect(cellsOf("Bank")?.slice(0, 3)).toEqual([
      ["200 Ah AGM, 12 V, 85% left"],
      ["200 Ah AGM, 12 V, 85% left"],
      ["200 Ah lithium (LFP), 12 V"],
    ]);
    expect(cellsOf("Panels")?.[1]).toEqual(["250 + 200 W, flush"]);
    expect(cellsOf("Charge on the road")).toEqual([
      ["relay, straight to the bank"],
      ["relay, straight to the bank"],
      ["DC-DC charger, 40 A"],
      ["relay, straight to the bank"],
    ]);
    expect(cellsOf("Inverter")?.map((lines) => lines.length)).toEqual([0, 0, 1, 0]);
    expect(cellsOf("Price, mass")).toEqual([[], ["$890, +15 kg"], ["$4,350, −18 kg"], ["$1,480, +31 kg"]]);
  });

  it("says which loads go and come", async () => {
    const bush = optionsOf(await handoverOf(demoInput("bush-camper"), 10));
    const loads = partsList(bush, { currency: null, locale: "en" }).find(({ part }) => part === "Loads");
    expect(loads?.cells).toEqual([[], [], ["less 95 L three-way fridge", "with 45 L compressor box"]]);
  });
});

describe("wire and fuses", () => {
  it("are the wiring answer's sizes, twice the way's length, with every fuse", () => {
    const rows = wireRows(options, "en");
    const charge = family.wired[2]!.charge!;
    const [pull, amps, ...rest] = plain(rows.find(({ part }) => part === "Charge run")?.cells[2]);
    expect(pull).toContain(`${2 * charge.length_m} m, ${charge.use!.standard_mm2} mm²`);
    expect(amps).toContain(`now ${charge.thinnest_mm2} mm²`);
    for (const fuse of charge.fuses) expect(rest.join("\n")).toContain(`fuse ${fuse.rated_A} A`);
    const after = charge.sizes.find(({ purpose }) => purpose === "stage after");
    expect(rest.some((line) => line.startsWith("stage after"))).toBe(after !== undefined);
  });

  it("marks a usual length, and says where no fuse or no size will do", () => {
    const solar = wireRows(options, "en").find(({ part }) => part === "Panels to charger");
    expect(plain(solar?.cells[0])[0]).toMatch(/^about 10 m, /);
    const [first, ...others] = options;
    const run = first!.wired!.charge!;
    const fuses = run.fuses.map((fuse) => ({ ...fuse, rated_A: null, kinds: [] }));
    const charge = { ...run, fuses, use: { ...run.use!, standard_mm2: null, awg: null } };
    const hopeless = { ...first!, wired: { ...first!.wired!, charge } };
    const lines = plain(wireRows([hopeless, ...others], "en")[0]?.cells[0]);
    expect(lines[0]).toBe("24 m: no size will do");
    expect(lines).toContain("as it is: no fuse fits, vehicle: thicker cable first");
    expect(lines).toContain("as it is: no fuse fits, bank: thicker cable first");
  });

  it("fuses a thin cable as it is, and the thicker one that is to be pulled for what it lets through", () => {
    const lines = plain(wireRows(options, "en").find(({ part }) => part === "Charge run")?.cells[0]);
    expect(lines).toContain("as it is: fuse 15 A class T, both ends");
    expect(lines.some((line) => /^once pulled: fuse 50 A/.test(line))).toBe(true);
  });

  it("give the least and the most that a dead short could draw", () => {
    // by hand: rested volts over inner resistance; 12.8 V and 5 mΩ at the vehicle, 12.85 V and 1.667 mΩ at 300 Ah of AGM
    const [least, most] = faultRange_kA(options)!;
    expect(least).toBeCloseTo(2.56, 2);
    expect(most).toBeCloseTo(12.85 / (5 / 3), 2);
    expect(faultRange_kA([])).toBeNull();
  });
});

describe("the charge run", () => {
  it("is a row for each voltage of the source, alike setups together", () => {
    const rows = chargeRows(options, "en");
    expect(rows.map(({ letters }) => letters.join(""))).toEqual(["AB", "C", "D"]);
    const start = family.wired[2]!.charge!.moments.find(({ when }) => when === "start")!;
    expect(rows[1]!.row[2]).toBe(`${Math.round(start.delivered_A)} A`);
  });

  it("tells the shares of a drive where the source's volts vary", async () => {
    const rows = chargeRows(optionsOf(await handoverOf(demoInput("bush-camper"), 10)), "en");
    expect(rows.map(({ row }) => plain(row)[1])).toEqual([
      "12.6 V (80%)",
      "14.4 V (20%)",
      "12.6 V (80%)",
      "14.4 V (20%)",
    ]);
  });
});
