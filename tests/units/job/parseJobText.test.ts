/* eslint-disable @typescript-eslint/no-unsafe-return -- jobs are spoilt here on purpose */
import { LONGEST_TEXT, parseJobText, readJobText } from "@stayput/job";
import { words } from "@stayput/job/quantities";
import { describe, expect, it } from "vitest";
import { changed, demo, type Loose } from "./helpers.ts";

const only = (text: string): string => {
  const read = parseJobText(text);
  if (read.ok) throw new Error("it was taken");
  return read.faults[0]!.message;
};

describe("text that is not JSON", () => {
  it("cut off in the middle says where", () => {
    const text = demo("family-caravan");
    expect(only(text.slice(0, text.indexOf('"payload_kg"') + 3))).toMatch(
      /line \d+, column \d+: the text ends too early/,
    );
    expect(only(text.slice(0, -3))).toMatch(/ends too early/);
  });
  it("with a slip says line and column", () => {
    expect(only('{\n  "format": "stayput-job",,\n}')).toMatch(/line 2, column 27: property name expected/);
    expect(only("{'a': 1}")).toMatch(/line 1, column 2/);
    expect(only('{"a": NaN}')).toMatch(/line 1, column 7/);
  });
  it("with more after its end says so there, and not that it is cut off", () => {
    const second = /line 2, column 1: a second value begins here; a file holds one job$/;
    expect(only('{ "a": 1 }\n{ "a": 2 }')).toMatch(second);
    expect(only('{ "a": 1 }\n"b"')).toMatch(second);
    expect(only('{ "a": 1 }}')).toMatch(/line 1, column 11: the job has ended before this "}"$/);
  });
  it("with a quote left open says where, or that it is cut off", () => {
    expect(only('{ "a": "x,\n  "b": 1 }')).toMatch(/line 1, column 8: the text that begins here has no closing quote/);
    expect(only('{ "a": "x')).toMatch(/ends too early/);
  });
  it("that is empty, or only space, says so", () => {
    expect(only("")).toBe("the text is empty");
    expect(only(" \n\t")).toBe("the text is empty");
  });
  it("of over 5 MB is not looked at", () => {
    expect(only(`"${"x".repeat(LONGEST_TEXT)}"`)).toMatch(/a job file has at most 5000000/);
  });
  it("of brackets without end does not run out of stack", () => {
    expect(only("[".repeat(1_000_000))).toMatch(/nest deeper than 200/);
    expect(only('{"a":'.repeat(1_000_000))).toMatch(/nest deeper than 200/);
  });
  it("of nothing but faults is bounded", () => {
    expect(only(`{"loads":[${"1,".repeat(1_000_000)}1]}`)).toMatch(/a list of 1000001 was given/);
    expect(only(`{${Array.from({ length: 100_000 }, (_, i) => `"k${i}":1`).join()}}`)).toMatch(/100000 fields/);
  });
});

describe("text that is JSON", () => {
  it("may begin with a byte order mark", () => {
    expect(parseJobText(`\uFEFF${demo("bush-camper")}`).ok).toBe(true);
  });
  it("with a field twice in one object is refused, since one of the two would be lost", () => {
    const text = changed(() => undefined).replace('"nights": 6', '"nights": 6, "nights": 9');
    expect(only(text)).toMatch(/trip.nights: the field "nights" stands twice/);
  });
});

describe("values in words", () => {
  const spoken = changed((job) => {
    job["loads"][1].watts = "1.5 A";
    job["loads"][1].use[0] = { from: "18:30", to: "10 pm" };
    job["loads"][0].rated_Wh_day = "60 Ah/day";
    job["setups"][0].feed.path[1] = { kind: "cable", length_m: "20 ft", area_mm2: "8 B&S" };
    job["setups"][0].bank.condition = "85 %";
    job["trip"].drives.hours = "2 h 30";
  });
  it("are read where quantities stand, and what they assume is noted", () => {
    const read = parseJobText(spoken, { words });
    if (!read.ok) throw new Error(read.faults[0]?.message);
    expect(read.job.loads[1]).toMatchObject({ watts: 18, use: [{ from: 18.5, to: 22 }] });
    expect(read.job.loads[0]).toMatchObject({ rated_Wh_day: 720 });
    expect(read.job.setups[0]!.bank.condition).toBe(0.85);
    expect(read.job.trip.drives!.hours).toBe(2.5);
    expect(read.job.setups[0]!.feed!.path[1]).toMatchObject({ length_m: 6.096, area_mm2: 8.36556406008 });
    expect(read.notes).toEqual([
      "loads[0].rated_Wh_day: 60 Ah is taken at 12 V, which makes 720 Wh",
      "loads[1].watts: 1.5 A is taken at 12 V, which makes 18 W",
    ]);
  });
  it("are read by readJobText, which loads the reader itself", async () => {
    expect((await readJobText(spoken)).ok).toBe(true);
  });
  it("without a reader are refused, and the refusal says that one is needed", () => {
    const read = parseJobText(spoken);
    expect(!read.ok && read.needsWords).toBe(true);
  });
  it("take the setup's volts, and mains volts for what runs on mains", () => {
    const text = changed((job) => {
      job["setups"][0].bank.nominal_V = 24;
      job["loads"][1].watts = "2 A";
      job["loads"][4].supply = "ac";
      job["loads"][4].watts = "2 A";
    });
    const read = parseJobText(text, { words });
    expect(read.ok && read.job.loads.map((load) => "watts" in load && load.watts)).toEqual([false, 48, 48, 10, 460]);
  });
  it("out of range, or of another kind, are faults like any other", () => {
    const read = parseJobText(
      changed((job) => Object.assign(job["loads"][1], { watts: "-3 A", name: "3 A" })),
      { words },
    );
    expect(!read.ok && read.faults.map(({ message }) => message)).toEqual([
      'loads[1].watts: "-3 A" (-36) was given; accepted is a number from 0 to 20000 (W)',
    ]);
    const other = parseJobText(
      changed((job) => (job["loads"][1].watts = "3 kg")),
      { words },
    );
    expect(!other.ok && other.faults[0]!.message).toMatch(
      /"3 kg" was given; accepted is a running draw in watts or amps/,
    );
  });
});

describe("a value in words that is refused", () => {
  it.each<[string, (job: Loose) => void, string]>([
    ["a time", (j) => (j["trip"].drives.hours = "5 min"), '"5 min" (0.08333) was given; accepted is a number from 0.1'],
    ["watts", (j) => (j["loads"][1].watts = "-3 W"), '"-3 W" was given; accepted is a number from 0'],
    ["a share", (j) => (j["setups"][0].bank.condition = "101 %"), '"101 %" (1.01) was given'],
    ["a temperature", (j) => (j["loads"][0].inside_C = "100 F"), '"100 F" (37.78) was given'],
    [
      "by another field",
      (j) => (j["setups"][0].feed.source.low_V = "15 V"),
      '"15 V" was given; accepted is at most volts',
    ],
  ])("is told as it was typed: %s", (_, change, says) => {
    const read = parseJobText(changed(change), { words });
    expect(!read.ok && read.faults.map(({ message }) => message.replace(/^\S+: /, ""))).toEqual([
      expect.stringContaining(says),
    ]);
  });
});

describe("readJobText looks places up", () => {
  const lost = (change: (job: Loose) => void) =>
    readJobText(
      changed((job) => {
        job["place"].id = "au-charlevile";
        change(job);
      }),
    );

  it("and tells one that is not there with the other faults, in the order of the file, with its line", async () => {
    const read = await lost((job) => Object.assign(job, { title: "", payload_kg: -1 }));
    expect(!read.ok && read.faults.map(({ path }) => path)).toEqual(["title", "place.id", "payload_kg"]);
    const at = changed((job) => (job["place"].id = "au-charlevile"))
      .split("\n")
      .findIndex((row) => row.includes("au-charlevile"));
    expect(!read.ok && read.faults[1]).toMatchObject({ given: '"au-charlevile"', line: at + 1 });
    expect(!read.ok && read.faults[1]!.message).toMatch(/no place "au-charlevile"; the nearest are au-charleville /);
  });

  it("where that is the only fault too, and where values are in words", async () => {
    const alone = await lost(() => undefined);
    expect(!alone.ok && alone.faults.map(({ path }) => path)).toEqual(["place.id"]);
    const spoken = await lost((job) => (job["loads"][1].watts = "3 kg"));
    expect(!spoken.ok && spoken.faults.map(({ path }) => path)).toEqual(["place.id", "loads[1].watts"]);
  });

  it("but says of what can be no id only that", async () => {
    for (const id of ["", "x".repeat(15_000), 7]) {
      const read = await lost((job) => (job["place"].id = id));
      expect(!read.ok && read.faults.map(({ accepted }) => accepted)).toEqual(["the id of a place in the catalogue"]);
    }
  });
});
