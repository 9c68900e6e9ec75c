import type { JobInput } from "@stayput/job";
import { describe, expect, it } from "vitest";
import { copyTitle, retitled, saidOf } from "../../../../apps/web/src/keep/head.ts";
import { matches } from "../../../../apps/web/src/keep/matches.ts";
import { emptyJob } from "../../../../apps/web/src/store/emptyJob.ts";

describe("what the list says of a job", () => {
  it("is short and on one line, whatever was typed", () => {
    const job = { ...emptyJob, title: ` a\n\tb ${"x".repeat(100_000)}`, customer: { name: 7 } } as unknown as JobInput;
    const said = saidOf(job, "");
    expect(said.title).toMatch(/^a b x+$/);
    expect(said.title).toHaveLength(200);
    expect(said.customer).toBe("");
  });
  it("has a name where none was given, and the place by its name once that is known", () => {
    expect(saidOf({ ...emptyJob, title: "  " }).title).toBe("No name yet");
    expect(saidOf({ ...emptyJob, place: { id: "za-upington" } }).place).toBe("za-upington");
    expect(saidOf({ ...emptyJob, place: { id: "za-upington" } }, "Upington, South Africa").place).toBe(
      "Upington, South Africa",
    );
    expect(saidOf({ ...emptyJob, place: { name: "The dam", latitude: -30, sky: "clear" } }).place).toBe("The dam");
  });
});

describe("the title of a copy", () => {
  it.each([
    ["North", "North, copy"],
    ["North, copy", "North, copy 2"],
    ["North, copy 2", "North, copy 3"],
    ["", ", copy"],
  ])("of %j is %j", (title, copy) => expect(copyTitle(title)).toBe(copy));
  it("stays within what a title may have", () => {
    expect(copyTitle("x".repeat(500)).length).toBeLessThanOrEqual(200);
  });
  it("is put into the text of a job, and into no other text", () => {
    expect(JSON.parse(retitled('{"title":"a","loads":[]}', "b"))).toEqual({ title: "b", loads: [] });
    for (const text of ["", "{", "[1]", "null", "7"]) expect(retitled(text, "b")).toBe(text);
  });
});

describe("the search of the list", () => {
  const job = { title: "Café run", customer: "N. Fourie", place: "Upington, South Africa" };
  it.each(["", "  ", "cafe", "CAFÉ", "fourie run", "south upi"])("finds it by %j", (sought) => {
    expect(matches(job, sought)).toBe(true);
  });
  it.each(["coast", "cafe coast", ".*"])("does not by %j", (sought) => expect(matches(job, sought)).toBe(false));
});
