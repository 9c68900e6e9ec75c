import type { SVGTemplateResult } from "lit";
import { resolveMarks } from "./styles.ts";
import { escapeXml, templateText } from "./templateText.ts";
import { darkTheme, lightTheme, type Theme } from "./theme.ts";

/** What stands above and under a saved picture. */
export interface SavedPicture {
  /** written above the picture */
  readonly title?: string | undefined;
  /** written under it: the job, the workshop, the assumptions */
  readonly note?: string | undefined;
}

const margin_px = 16;
const font = 'font-family="system-ui, sans-serif"';

/** Classes become plain attributes, so that a picture keeps its looks in programs that read no style sheet. */
const inlineMarks = (text: string, theme: Theme): string =>
  text.replace(/ class="([^"]*)"/g, (_, classes: string) =>
    Object.entries(resolveMarks(classes, theme))
      .map(([key, value]) => ` ${key}="${escapeXml(value)}"`)
      .join(""),
  );

function sizeOf(text: string): { width_px: number; height_px: number } {
  const found = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(text);
  if (!found) throw new TypeError("expected a chart: its first tag carries a viewBox");
  return { width_px: Number(found[1]), height_px: Number(found[2]) };
}

const line = (text: string, y_px: number, colour: string, weight: number): string =>
  `<text x="${margin_px}" y="${y_px}" fill="${colour}" font-size="14px" font-weight="${weight}">${escapeXml(text)}</text>`;

/**
 * A chart as a self-contained SVG file: colours resolved, generic fonts, its own paper, no style sheet, no reference
 * to anything outside the file.
 *
 * @param template what an `xxxChart` function returned; any other template throws a TypeError
 * @param theme `"light"`, `"dark"`, or a palette of your own
 */
export function toSvgText(
  template: SVGTemplateResult,
  theme: "light" | "dark" | Theme,
  { title, note }: SavedPicture = {},
): string {
  const colours = theme === "light" ? lightTheme : theme === "dark" ? darkTheme : theme;
  const chart = templateText(template).trim();
  const { width_px, height_px } = sizeOf(chart);
  const top_px = margin_px + (title ? 24 : 0);
  const full = { width_px: width_px + 2 * margin_px, height_px: top_px + height_px + margin_px + (note ? 24 : 0) };
  const placed = inlineMarks(chart, colours).replace("<svg", `<svg x="${margin_px}" y="${top_px}"`);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${full.width_px} ${full.height_px}"`,
    ` width="${full.width_px}" height="${full.height_px}" ${font}>`,
    `<rect width="100%" height="100%" fill="${colours.paper}"></rect>`,
    title ? line(title, margin_px + 12, colours.ink, 700) : "",
    placed,
    note ? line(note, full.height_px - margin_px, colours.soft, 400) : "",
    "</svg>\n",
  ].join("");
}
