import { expect, it } from "vitest";
import electrical from "../../../fixtures/reference/electrical.json" with { type: "json" };
import { checks as cable } from "../../../reference/cable.ts";
import { checks as charging } from "../../../reference/charging.ts";

const rows = electrical.checks.filter(({ topic }) => ["cable", "charging", "safety"].includes(topic));
const compared = [...cable, ...charging].map(({ id }) => id);

it("has rows to compare", () => expect(rows.length).toBe(15));

it.each(rows.map(({ id }) => id))("row %s yields a comparison", (id) => {
  expect(compared.some((one) => one.startsWith(`${id}, `))).toBe(true);
});

it("names each comparison once", () => expect(new Set(compared).size).toBe(compared.length));
