import { describe, expect, it } from "vitest";
import { chartStyles, colourNames, darkTheme, lightTheme, themeProperties, type Theme } from "@stayput/charts";

/** Relative luminance and contrast ratio: WCAG 2.2, definitions of both terms. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

const tones = ["tone-1", "tone-2", "tone-3", "tone-4", "tone-5", "tone-6", "tone-rest"] as const;

describe.each<[string, Theme]>([
  ["light", lightTheme],
  ["dark", darkTheme],
])("the %s theme", (_name, theme) => {
  it.each(["ink", "soft", "accent"] as const)("reads: %s on paper and on night at 4.5 to 1", (name) => {
    expect(contrast(theme[name], theme.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(theme[name], theme.night)).toBeGreaterThanOrEqual(4.5);
  });
  it.each(tones)("carries ink on %s at 4.5 to 1, and its edge shows at 3 to 1", (tone) => {
    expect(contrast(theme.ink, theme[tone])).toBeGreaterThanOrEqual(4.5);
    expect(contrast(theme.ink, theme.paper)).toBeGreaterThanOrEqual(3);
  });
  it.each(["sun", "road", "mains"] as const)("shows the hatch of %s at 3 to 1 on its own tint", (kind) => {
    expect(contrast(theme[`${kind}-mark`], theme[`${kind}-tint`])).toBeGreaterThanOrEqual(3);
  });
  it("steps neighbouring tones apart in grey", () => {
    for (let i = 1; i < 6; i++)
      expect(
        contrast(theme[tones[i] as (typeof tones)[number]], theme[tones[i - 1] as (typeof tones)[number]]),
      ).toBeGreaterThanOrEqual(1.25);
  });
});

it("writes every colour as a custom property, and the style sheet asks for each by that name", () => {
  for (const name of colourNames) {
    expect(themeProperties(lightTheme)).toContain(`--${name}: ${lightTheme[name]};`);
    expect(chartStyles.cssText).toContain(`var(--${name}, ${darkTheme[name]})`);
  }
});
