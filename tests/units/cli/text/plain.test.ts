import fc from "fast-check";
import stringWidth from "string-width";
import { describe, expect, it } from "vitest";
import { plain } from "../../../../apps/cli/src/text/plain.ts";

describe("plain", () => {
  it.each([
    ["an escape sequence", "a\u001b[31mred", "a [31mred"],
    ["a right-to-left override", "abc\u202egnp", "abc gnp"],
    ["line breaks and tabs", "one\r\n\ttwo", "one two"],
    [
      "an emoji joined of several",
      "tent \u{1f468}\u200d\u{1f469}\u200d\u{1f467}",
      "tent \u{1f468}\u200d\u{1f469}\u200d\u{1f467}",
    ],
  ])("makes %s fit for a terminal", (_what, given, expected) => expect(plain(given)).toBe(expected));

  it("cuts what is too wide, between characters", () => {
    expect(plain("188 L fridge-freezer", 8)).toBe("188 L f…");
    expect(plain("\u{1f468}\u200d\u{1f469}\u200d\u{1f467}xyz", 4)).toBe("\u{1f468}\u200d\u{1f469}\u200d\u{1f467}x…");
    expect(plain("x".repeat(100_000), 10)).toBe(`${"x".repeat(9)}…`);
  });

  it("is never wider than asked nor holds a control character", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 80 }), fc.integer({ min: 4, max: 60 }), (text, widest) => {
        const shown = plain(text, widest);
        expect(stringWidth(shown)).toBeLessThanOrEqual(widest);
        expect(shown).not.toMatch(/\p{Cc}/u);
      }),
    );
  });
});
