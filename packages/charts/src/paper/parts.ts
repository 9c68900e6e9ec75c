import { svg, nothing, type SVGTemplateResult } from "lit";
import { px } from "./numbers.ts";

export type Part = SVGTemplateResult | typeof nothing;

/** The outer tag every picture shares. `group` where it holds things to focus, else one image to a screen reader. */
export const sheetOf = (
  size: { width_px: number; height_px: number },
  label: string,
  body: unknown,
  role: "img" | "group" = "img",
): SVGTemplateResult =>
  svg`<svg class="picture" viewBox=${`0 0 ${px(size.width_px)} ${px(size.height_px)}`} width=${px(size.width_px)} height=${px(size.height_px)} role=${role} aria-label=${label}>${body}</svg>`;

export const textAt = (x: number, y: number, text: string, classes: string): SVGTemplateResult =>
  svg`<text x=${px(x)} y=${px(y)} class=${classes}>${text}</text>`;

export const ruleAt = (x1: number, y1: number, x2: number, y2: number, classes: string, dash = ""): SVGTemplateResult =>
  svg`<path d=${`M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}`} class=${classes} stroke-dasharray=${dash || nothing}></path>`;

export const rectAt = (
  x: number,
  y: number,
  width: number,
  height: number,
  classes: string,
  fill = "",
): SVGTemplateResult =>
  svg`<rect x=${px(x)} y=${px(y)} width=${px(Math.max(0, width))} height=${px(Math.max(0, height))} class=${classes} fill=${fill || nothing}></rect>`;

/** What stands in a picture's place when there is nothing to draw. */
export const emptyNote = (width_px: number, height_px: number, text: string): SVGTemplateResult =>
  textAt(width_px / 2, height_px / 2, text, "note middle");
