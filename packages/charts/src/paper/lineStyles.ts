import { svg, type SVGTemplateResult } from "lit";
import { px } from "./numbers.ts";

const dashes = ["", "12 5", "4 3", "10 3 2 3", "1.5 3", "12 3 2 3 2 3"];

/** How a setup's line is broken: solid, long, short, dot-dash, dots, dot-dot-dash; the seventh starts again. */
export const dashOf = (index: number): string => dashes[index % dashes.length] as string;

type Shape = (x: number, y: number) => string;
const shapes: Shape[] = [
  (x, y) => `M${x - 4} ${y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0Z`,
  (x, y) => `M${x - 3.5} ${y - 3.5}h7v7h-7Z`,
  (x, y) => `M${x} ${y - 4.5}L${x + 4.5} ${y + 3.5}H${x - 4.5}Z`,
  (x, y) => `M${x} ${y - 5}L${x + 5} ${y}L${x} ${y + 5}L${x - 5} ${y}Z`,
];

/** A setup's own point mark: filled and hollow by turns, in four shapes. */
export const pointMark = (index: number, x: number, y: number): SVGTemplateResult =>
  svg`<path d=${(shapes[(index >> 1) % shapes.length] as Shape)(px(x), px(y))} class=${index % 2 ? "hollow" : "dot"}></path>`;
