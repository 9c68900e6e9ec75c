import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bounded } from "../../../../packages/handout/src/words/bounded.ts";

describe("a person's text on a line of print", () => {
  it.each([
    ["is left as it is", "N. Fourie", 20, "N. Fourie"],
    ["is cut by characters as read", "abcdef", 3, "abc…"],
    ["counts a family of emoji as one", "👨‍👩‍👧‍👦👨‍👩‍👧‍👦👨‍👩‍👧‍👦", 2, "👨‍👩‍👧‍👦👨‍👩‍👧‍👦…"],
    ["keeps right-to-left letters", "משפחה", 20, "משפחה"],
    ["drops marks that turn what follows", "a\u202egnp.exe\u2066b\u2069", 20, "agnp.exeb"],
    ["stays on one line", "a\nb\tc\u0000d\u2028e", 20, "a b c d e"],
    ["drops half a character", "a\ud800b", 20, "a b"],
    ["may be empty", "", 5, ""],
  ])("%s", (_what, text, most, expected) => expect(bounded(text, most)).toBe(expected));

  it("holds 100 kB, and a pile of accents, to a line", () => {
    expect(bounded("x".repeat(100_000), 40)).toBe(`${"x".repeat(40)}…`);
    expect(bounded(`a${"\u0301".repeat(100_000)}`, 40).length).toBeLessThan(40);
  });

  it("is never longer than asked, for any text", () => {
    const anyText = fc.string({ unit: "binary", maxLength: 400 });
    fc.assert(
      fc.property(anyText, fc.integer({ min: 1, max: 80 }), (text, most) => {
        const kept = bounded(text, most);
        expect(kept.length).toBeLessThanOrEqual(most * 12 + 1);
        expect(kept).not.toMatch(/[\u202a-\u202e\u2066-\u2069]|\p{Cc}|\p{Cs}/u);
      }),
    );
  });
});
