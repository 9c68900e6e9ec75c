import { describe, expect, it } from "vitest";
import { compare } from "./compare.ts";
import { topics } from "./topics.ts";

describe.each(topics)("$name", ({ checks }) => {
  it("has something to compare", () => expect(checks.length).toBeGreaterThan(0));
  it.each(checks.map((check) => [`${check.quantity}: ${check.id}`, check] as const))("%s", (_title, check) => {
    const { got, difference, allowed, ok } = compare(check);
    const said = `got ${got} ${check.unit}, ${check.source} (${check.standing}) says ${check.expected} ± ${allowed}; off by ${difference}`;
    expect(ok, said).toBe(true);
  });
});
