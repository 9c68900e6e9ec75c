import fc from "fast-check";
import stringWidth from "string-width";
import { expect, it } from "vitest";
import { wrap } from "../../../../apps/cli/src/text/wrap.ts";

it("breaks between words at 80 columns and sets the rest in", () => {
  const lines = wrap(`${"word ".repeat(30)}end`, { first: "- ", hang: 2 });
  expect(lines).toHaveLength(2);
  expect(lines[0]).toMatch(/^- word/);
  expect(lines[1]).toMatch(/^ {2}word.*end$/);
});

it("keeps every character but spaces, in order, and no line is too wide", () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ minLength: 1, maxLength: 200 })),
      fc.integer({ min: 0, max: 6 }),
      (words, hang) => {
        const text = words.join(" ");
        const lines = wrap(text, { hang });
        for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(80);
        expect(lines.join("").replace(/\s/gu, "")).toBe(text.replace(/\s/gu, ""));
      },
    ),
  );
});

it("keeps a figure with its percent sign", () => {
  const before = "x".repeat(76);
  expect(wrap(`${before} 62 % of it`)).toEqual([before, "62 % of it"]);
});
