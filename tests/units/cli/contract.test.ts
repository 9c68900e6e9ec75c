import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CompareAnswer, ExplainAnswer, MatchAnswer, SizeAnswer, UpgradesAnswer, YearAnswer } from "@stayput/sim";
import stringWidth from "string-width";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { verbs } from "../../../apps/cli/src/verbs/index.ts";
import { job } from "./job.ts";
import { root, stayput } from "./stayput.ts";

let dir: string;
let file: string;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), "stayput-"));
  file = join(dir, "job.json");
  await writeFile(file, JSON.stringify(job));
});
afterAll(() => rm(dir, { recursive: true }));

type Printed = ExplainAnswer & { readonly arrive: { month: number; day: number } };
const answerIn = (out: string): Printed => JSON.parse(out) as Printed;

describe("explain", { timeout: 60_000 }, () => {
  it("answers in text: exit 0, plain characters, 80 columns, nothing on standard error", async () => {
    const { code, out, err } = await stayput(["explain", file, "--draws", "20"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^Test job\. Upington/);
    for (const line of out.split("\n")) expect(stringWidth(line)).toBeLessThanOrEqual(80);
    expect(out.replaceAll("\n", "")).not.toMatch(/\p{Cc}|NaN|undefined|null/u);
    for (const head of [
      "HOW LONG IT LASTS",
      "WHERE IT GOES: A  Now",
      "WHERE IT GOES: B  More",
      "CHARGE AGAINST DAYS",
    ]) {
      expect(out).toContain(head);
    }
  });

  it("answers in one JSON document with the fields that were promised", async () => {
    const { code, out, err } = await stayput(["explain", file, "--json", "--draws", "20", "--seed", "5"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const answer = answerIn(out);
    expect(answer).toMatchObject({ seed: 5, draws: 20, nights: 4 });
    expect(answer.setups.map((setup) => setup.id)).toEqual(["now", "more"]);
    const now = answer.setups[0]!;
    const daysOrNever = (value: unknown) => value === null || Number.isFinite(value);
    for (const days of [now.days, now.reserveDays]) {
      const all = [days.dark, days.average, days.drawn.p10, days.drawn.p50, days.drawn.p90];
      expect(all.every(daysOrNever)).toBe(true);
    }
    expect(now.chanceOfLasting).toBeGreaterThanOrEqual(0);
    expect(now.use_Wh_day.byLoad.map(({ id }) => id).sort()).toEqual(["fridge", "lights"]);
    expect(now.sun_Wh_day.used + now.sun_Wh_day.unused).toBeCloseTo(now.sun_Wh_day.available, 6);
    expect(now.without).toHaveLength(2);
    expect(Object.keys(now.food)).toEqual(
      expect.arrayContaining(["hoursFromCutOffTo5C", "hoursFromCutOffTo8C", "hoursAbove5C"]),
    );
  });

  it("reads standard input for -, keeps to one setup and moves the month", async () => {
    const { code, out } = await stayput(
      ["explain", "-", "--json", "--setup", "more", "--month", "7", "--draws", "10"],
      JSON.stringify(job),
    );
    expect(code).toBe(0);
    const answer = answerIn(out);
    expect(answer.arrive).toEqual({ month: 7, day: 10 });
    expect(answer.setups.map((setup) => setup.id)).toEqual(["more"]);
  });

  it("gives the same answer for the same seed and another for another", async () => {
    const run = async (seed: string) =>
      (await stayput(["explain", file, "--json", "--draws", "20", "--seed", seed])).out;
    const [first, again, other] = await Promise.all([run("3"), run("3"), run("4")]);
    expect(again).toBe(first);
    expect(other).not.toBe(first);
  });

  it("reads quantities in words and says what it took them to be", async () => {
    const loads = [{ ...job.loads[0], watts: "3 A" }, job.loads[1]];
    const { code, out } = await stayput(["explain", "-", "--draws", "10"], JSON.stringify({ ...job, loads }));
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, " ")).toMatch(/loads\[0\]\.watts: .*12 V/);
  });
});

describe("explain --skies", { timeout: 60_000 }, () => {
  const skies = async (name: string, rows: readonly (readonly (number | string)[])[]) => {
    const path = join(dir, name);
    await writeFile(path, rows.map((row) => row.join(",")).join("\n"));
    return path;
  };
  const days = (n: number, clearness: number | string) => Array.from({ length: n }, () => clearness);

  it("runs under the skies of a file, a head row passed over", async () => {
    const head = Array.from({ length: 61 }, (_, i) => `day ${i + 1}`);
    const path = await skies("dark.csv", [head, days(61, 0), days(61, 0)]);
    const { code, out } = await stayput(["explain", file, "--json", "--skies", path]);
    expect(code).toBe(0);
    const answer = answerIn(out);
    expect(answer).toMatchObject({ seed: null, draws: 2 });
    // no sun in the file: what is drawn from it is the dark answer
    for (const { days } of answer.setups) expect(days.drawn.p50).toBeCloseTo(days.dark ?? NaN, 9);
  });

  it("takes spaces beside the commas", async () => {
    const path = await skies("spaced.csv", [["0, 1 ,0,1, 0.5 "], [" 0 , 1,0 ,1,0 "]]);
    expect((await stayput(["explain", file, "--json", "--skies", path])).code).toBe(0);
  });

  it("looks no further than a short file goes", async () => {
    const { code, out } = await stayput([
      "explain",
      file,
      "--json",
      "--skies",
      await skies("short.csv", [days(5, 0.7)]),
    ]);
    expect(code).toBe(0);
    expect(JSON.parse(out).horizon_days).toBeLessThan(5);
  });

  it("sizes for the nights asked under the skies of a file, in one month", async () => {
    const path = await skies("bright.csv", [days(8, 0.7), days(8, 0.7)]);
    const asked = ["size", file, "--json", "--nights", "7", "--skies", path];
    const { code, out } = await stayput([...asked, "--month", "3"]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ seed: null, draws: 2, nights: 7, months: [3] });
    expect(await stayput([...asked, "--months", "6-8"])).toMatchObject({ code: 2, out: "" });
    const longer = asked.map((word) => (word === "7" ? "9" : word));
    expect((await stayput(longer)).err).toMatch(/8 days were given; the trip needs 10/);
  });

  it.each([
    ["a clearness over 1", [[0.5, 0.5, 1.2, 0.5, 0.5]], 'day 3: "1.2" was given; accepted is a clearness from 0 to 1'],
    ["a word", [days(5, 0.5), [0.5, "cloudy", 0.5, 0.5, 0.5]], ':2: day 2: "cloudy" was given'],
    ["an empty cell", [[0.5, "", 0.5, 0.5, 0.5]], 'day 2: "" was given'],
    ["too few days", [days(4, 0.5)], "4 days were given; the trip needs 5, the day of arrival included"],
    ["rows of unlike length", [days(6, 0.5), days(5, 0.5)], ":2: 5 days were given; the first sky has 6"],
    ["no rows", [], "0 rows were given"],
    ["semicolons", [["0.5;0.5;0.5;0.5;0.5"]], ":1: semicolons, tabs or spaces part the days; accepted is a comma"],
    ["decimal commas", [["a;b;c"], ["0,5;0,5;0,5;0,5;1"]], ":2: semicolons, tabs or spaces part the days"],
    ["tabs", [["0.5\t0.5\t0.5\t0.5\t.5"]], ":1: semicolons, tabs or spaces part the days"],
  ])("refuses %s", async (what, rows, message) => {
    const path = await skies(`${what.replaceAll(" ", "-")}.csv`, rows);
    const { code, out, err } = await stayput(["explain", file, "--skies", path]);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain(message);
  });
});

describe("hours", { timeout: 60_000 }, () => {
  const table = (out: string): Record<string, string>[] => {
    const [head = "", ...lines] = out.trimEnd().split("\n");
    const names = head.split(",");
    return lines.map((line) => Object.fromEntries(line.split(",").map((cell, i) => [names[i]!, cell])));
  };

  it("gives each hour of the trip as CSV, units in the names, and the energies of a row balance", async () => {
    const { code, out, err } = await stayput(["hours", file, "--setup", "more"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const rows = table(out);
    expect(rows).toHaveLength(job.trip.nights * 24);
    expect(rows[0]).toMatchObject({ from_arrival_h: "0", date: "01-10", clock_h: "15" });
    expect(rows[9]).toMatchObject({ date: "01-11", clock_h: "0" });
    for (const row of rows) {
      const of = (name: string) => Number(row[name]);
      const given = of("sun_used_Wh") + of("feed_Wh") + of("mains_Wh") + of("bank_out_Wh");
      expect(given).toBeCloseTo(of("served_Wh") + of("bank_in_Wh"), 4);
      const loads = of("load_lights_Wh") + of("load_fridge_Wh") + of("inverter_idle_Wh");
      expect(loads).toBeCloseTo(of("served_Wh"), 4);
    }
  });

  it("takes the first setup where none is named, and says so beside the answer", async () => {
    const { code, out, err } = await stayput(["hours", file]);
    expect({ code, err }).toEqual({ code: 0, err: "setup now; --setup chooses another: more\n" });
    expect(out).toBe((await stayput(["hours", file, "--setup", "now"])).out);
  });

  it("takes the first sky of a file, and prints JSON by column", async () => {
    const path = join(dir, "night.csv");
    await writeFile(path, "0,0,0,0,0");
    const { out } = await stayput(["hours", file, "--setup", "now", "--skies", path, "--json"]);
    const { setup, hours } = JSON.parse(out) as { setup: string; hours: Record<string, (number | string)[]> };
    expect(setup).toBe("now");
    expect(hours["sun_available_Wh"]).toEqual(Array.from({ length: 96 }, () => 0));
    expect(Math.min(...(hours["charge_pct"] as number[]))).toBeLessThan(60);
  });
});

describe("the verbs that answer a job in text and JSON", { timeout: 60_000 }, () => {
  const demos = ["shared/demo/family-caravan.json", "shared/demo/bush-camper.json"];
  const jobVerbs = ["explain", "compare", "size", "year", "upgrades", "wiring", "match"];
  const cases = jobVerbs.flatMap((verb) => demos.map((demo) => [verb, demo] as const));

  it.each(cases)("%s %s fits 80 columns and holds no holes", async (verb, demo) => {
    const draws = verb === "wiring" ? [] : ["--draws", "10"];
    const { code, out, err } = await stayput([verb, join(root, demo), ...draws]);
    if (verb === "match" && demo.includes("bush")) {
      expect(err).toMatch(/match: nothing was given; accepted is/);
      return;
    }
    expect(code).toBe(0);
    expect(err).toMatch(verb === "upgrades" ? /^to setup [\w-]+; --to chooses another: / : /^$/);
    for (const line of out.split("\n")) expect(stringWidth(line), line).toBeLessThanOrEqual(80);
    expect(out.replaceAll("\n", "")).not.toMatch(/\p{Cc}|NaN|undefined|null|Infinity|\[object/u);
    const printed = JSON.parse((await stayput([verb, join(root, demo), "--json", ...draws])).out) as object;
    expect(printed).toHaveProperty("assumed");
  });

  it("compare holds each setup against the first under the same skies", async () => {
    const { out } = await stayput(["compare", file, "--json", "--draws", "10"]);
    const { setups } = JSON.parse(out) as CompareAnswer;
    expect(setups[0]?.gain).toBeNull();
    expect(setups[1]?.gain?.least_days).toBeGreaterThan(0);
    expect((await stayput(["compare", file, "--draws", "10"])).out).toMatch(/^B {2}More: .* more than A \(Now\)/m);
  });

  it("compare keeps to one setup, and size to the month of --month where --months names none", async () => {
    const { out } = await stayput(["compare", file, "--json", "--setup", "more", "--draws", "5"]);
    expect((JSON.parse(out) as CompareAnswer).setups.map(({ id, gain }) => [id, gain])).toEqual([["more", null]]);
    const sized = async (...asked: string[]) =>
      (JSON.parse((await stayput(["size", file, "--json", "--draws", "5", ...asked])).out) as SizeAnswer).months;
    expect(await sized("--month", "7")).toEqual([7]);
    expect(await sized("--month", "7", "--months", "2,3")).toEqual([2, 3]);
  });

  it("size gives the smallest pairs for the nights, chance and months asked, and marks its pick", async () => {
    const asked = ["--nights", "5", "--chance", "80%", "--months", "12-2", "--chemistry", "lfp", "--draws", "20"];
    const { out } = await stayput(["size", file, "--json", ...asked]);
    const answer = JSON.parse(out) as SizeAnswer;
    expect(answer).toMatchObject({ nights: 5, chance: 0.8, months: [12, 1, 2] });
    expect(answer.staircases.map(({ chemistry }) => chemistry)).toEqual(["lfp"]);
    for (const { chance } of answer.staircases[0]!.corners) expect(chance).toBeGreaterThanOrEqual(0.8);
    expect((await stayput(["size", file, ...asked])).out).toMatch(/^> {2}lithium/m);
  });

  it("size says nothing of a charger where no panels are asked", async () => {
    const idle = JSON.stringify({ ...job, loads: [] });
    const { out } = await stayput(["size", "-", "--draws", "5"], idle);
    expect(out).toMatch(/with no panels/);
    expect(out).not.toMatch(/charger of/);
  });

  it("year says in which months each setup is good, and says every month once", async () => {
    const { code, out, err } = await stayput(["year", file, "--draws", "10"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^A {2}Now: /m);
    const months = [...out.matchAll(/^(\w+) .*%$/gm)].map(([, month]) => month);
    expect(months).toHaveLength(12);
    expect([months[0], months[11]]).toEqual(["January", "December"]);
    const one = JSON.parse(
      (await stayput(["year", file, "--json", "--setup", "more", "--draws", "5"])).out,
    ) as YearAnswer;
    expect(one.setups.map(({ id, months: all }) => [id, all.length])).toEqual([["more", 12]]);
  });

  it("upgrades goes from the first setup or that of --setup to the second or that of --to", async () => {
    const ask = async (...args: string[]) => {
      const { out } = await stayput(["upgrades", file, "--json", "--draws", "10", ...args]);
      return JSON.parse(out) as UpgradesAnswer;
    };
    const there = await ask();
    const back = await ask("--setup", "more");
    expect([there.from, there.to, back.from, back.to]).toEqual(["now", "more", "more", "now"]);
    expect(there.days.before).toBeCloseTo(back.days.after, 9);
    expect(there.changes.map(({ id }) => id)).toEqual(["bank", "panels"]);
    const text = (await stayput(["upgrades", file, "--draws", "10"])).out;
    for (const row of ["as it is", "the bank alone", "panels and charger alone", "all together"])
      expect(text).toMatch(new RegExp(`^${row} `, "m"));
  });

  it("upgrades wants two setups, and a proposal that is there", async () => {
    const single = JSON.stringify({ ...job, setups: job.setups.slice(0, 1) });
    const one = await stayput(["upgrades", "-"], single);
    expect(one).toMatchObject({ code: 1, out: "" });
    expect(one.err).toMatch(/setups: one setup was given; accepted are two or more/);
    const lost = await stayput(["upgrades", file, "--to", "now"]);
    expect(lost).toMatchObject({ code: 2, out: "" });
    expect(lost.err).toMatch(/--to: there is no setup "now"; accepted: more/);
  });

  it("wiring knows the other setups even where one is asked for", async () => {
    const demo = join(root, demos[0]!);
    const { out } = await stayput(["wiring", demo, "--setup", "lithium"]);
    expect(out).toContain("WIRING: C");
    expect(out).not.toContain("WIRING: A");
    expect(out).toMatch(/stage|Pulled once for/);
  });

  it("match says what would explain what was seen, and asks for it where nothing was", async () => {
    const seen = JSON.stringify({ ...job, match: [{ flatOnMorning: 2 }] });
    const { code, out } = await stayput(["match", "-", "--json", "--draws", "10"], seen);
    expect(code).toBe(0);
    const { setup, explanations } = JSON.parse(out) as MatchAnswer & { setup: string };
    expect(setup).toBe("now");
    expect(explanations.map(({ id }) => id).sort()).toEqual(["condition", "fridge", "shade"]);
    expect(await stayput(["match", file])).toMatchObject({ code: 1, out: "" });
  });
});

describe("check and places", { timeout: 60_000 }, () => {
  it("check says that a job is valid and what it holds", async () => {
    const { code, out, err } = await stayput(["check", file]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out.replace(/\s+/g, " ")).toMatch(
      /^Valid\. Test job\. Upington.*4 nights from 10 January; 2 loads, 2 setups\. /,
    );
    expect(JSON.parse((await stayput(["check", file, "--json"])).out)).toMatchObject({ valid: true, nights: 4 });
  });

  it("places finds by name and by country, and gives the id that a job takes", async () => {
    const { code, out } = await stayput(["places", "uping", "--json"]);
    expect(code).toBe(0);
    expect(JSON.parse(out).places[0]).toMatchObject({ id: "za-upington", country: "ZA" });
    expect((await stayput(["places", "namibia", "--limit", "3"])).out).toMatch(/Namibia/);
    expect((await stayput(["places", "zzqqxx"])).out).toMatch(/^No place/);
  });
});

describe("misuse", { timeout: 60_000 }, () => {
  it.each([
    ["no verb", [], "a verb is missing"],
    ["an unknown verb", ["frobnicate"], 'there is no verb "frobnicate"; accepted: explain'],
    ["no job", ["explain"], "explain needs JOB.json"],
    ["two jobs", ["explain", "a.json", "b.json"], '"b.json" is too much'],
    ["an unknown option", ["explain", "a.json", "--colour"], "--colour"],
    ["an option without its value", ["explain", "a.json", "--month"], "--month"],
    ["an option twice", ["explain", "a.json", "--seed", "1", "--seed", "2"], "--seed is given twice"],
    [
      "a month out of range",
      ["explain", "a.json", "--month", "13"],
      '"13" was given; accepted is a whole number from 1 to 12',
    ],
    ["a negative seed", ["explain", "a.json", "--seed", "-1"], '--seed: "-1" was given; accepted is a whole number'],
    ["a seed that is no number", ["explain", "a.json", "--seed", "x"], '--seed: "x" was given'],
    ["a chance that is certain", ["size", "a.json", "--chance", "100%"], "accepted is 0.01 to 0.999, or 1% to 99.9%"],
    ["months that are none", ["size", "a.json", "--months", "0-3"], "accepted is months from 1 to 12"],
    ["a chemistry that is none", ["size", "a.json", "--chemistry", "nimh"], "accepted is agm, gel, flooded, lfp"],
    ["draws out of range", ["explain", "a.json", "--draws", "0"], "--draws"],
    ["a file that is not there", ["explain", "/nowhere/a.json"], "there is no such file"],
    ["a directory", ["explain", "tests"], "is a directory"],
    ["a setup that the job has not", ["explain", "JOB", "--setup", "lost"], 'no setup "lost"; accepted: now, more'],
  ])("%s: exit 2, nothing on standard output, the reason on standard error", async (_what, args, reason) => {
    const { code, out, err } = await stayput(args.map((word) => (word === "JOB" ? file : word)));
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(reason);
    expect(err).not.toMatch(/\n\s+at /);
  });

  it("is not to give any verb the options of all, and what changes nothing is said", async () => {
    const all = ["--json", "--setup", "more", "--month", "7", "--seed", "3", "--draws", "5"];
    for (const verb of ["explain", "compare", "size", "wiring", "hours", "check"]) {
      const { code, out } = await stayput([verb, file, ...all]);
      expect(code, verb).toBe(0);
      expect(JSON.parse(out), verb).toBeTypeOf("object");
    }
    const { code, out, err } = await stayput(["wiring", file, "--draws", "5"]);
    expect({ code, err }).toEqual({ code: 0, err: "--draws changes nothing in wiring\n" });
    expect(out).toBe((await stayput(["wiring", file])).out);
    expect(await stayput(["wiring", file, "--draws", "x"])).toMatchObject({ code: 2, out: "" });
  });

  it("help fits 80 columns", async () => {
    const pages = [["--help"], ...verbs.map(({ name }) => [name, "--help"])];
    for (const words of pages)
      for (const line of (await stayput(words)).out.split("\n"))
        expect(stringWidth(line), line).toBeLessThanOrEqual(80);
  });

  it("help is an answer, not a fault, and lists only verbs that work", async () => {
    const { code, out, err } = await stayput(["--help"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const listed = [...out.matchAll(/^ {2}(\w+) {2,}/gm)].map(([, verb]) => verb).filter((verb) => verb !== "stayput");
    for (const verb of listed) expect((await stayput([verb!, "--help"])).code).toBe(0);
    expect(listed).toContain("explain");
  });
});
