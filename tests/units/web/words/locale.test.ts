import { afterEach, expect, it, vi } from "vitest";
import { locale } from "../../../../apps/web/src/words/locale.ts";

afterEach(() => void vi.unstubAllGlobals());

it.each([
  ["af-ZA", "af-ZA"],
  ["en-US@posix", "en-US"],
  ["C", "en"],
  ["", "en"],
])("a browser that tells %j is written for in %j, which Intl takes", (language, expected) => {
  vi.stubGlobal("navigator", { language });
  expect(locale()).toBe(expected);
  expect(() => new Intl.NumberFormat(locale())).not.toThrow();
});
