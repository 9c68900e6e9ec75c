import { svg, type SVGTemplateResult } from "lit";

/** Where energy comes from. */
export type EnergyKind = "sun" | "road" | "mains";

/** Fine dots for sun, diagonals for road, cross-hatch for mains: told apart with no colour at all. */
export const hatchFill = (kind: EnergyKind, id: string): string => `url(#${id}-${kind})`;

const cell = (id: string, size: number, marks: SVGTemplateResult): SVGTemplateResult =>
  svg`<pattern id=${id} patternUnits="userSpaceOnUse" width=${size} height=${size}>${marks}</pattern>`;

const sun = svg`<rect width="4" height="4" class="sunTint"></rect><circle cx="1" cy="1" r="0.7" class="sunMark"></circle><circle cx="3" cy="3" r="0.7" class="sunMark"></circle>`;
const road = svg`<rect width="7" height="7" class="roadTint"></rect><path d="M-1 8L8 -1M-1 1L1 -1M6 8L8 6" class="roadMark"></path>`;
const mains = svg`<rect width="6" height="6" class="mainsTint"></rect><path d="M0 0L6 6M0 6L6 0" class="mainsMark"></path>`;

/** The three patterns; the ids start with the picture's own, so that two pictures on a page do not share them. */
export const hatchDefs = (id: string): SVGTemplateResult =>
  svg`<defs>${cell(`${id}-sun`, 4, sun)}${cell(`${id}-road`, 7, road)}${cell(`${id}-mains`, 6, mains)}</defs>`;

/** Classes of flat tones for the loads, in their order of use, and of whatever is left over. */
export const toneClass = (index: number): string => (index < 6 ? `tone${index + 1}` : "toneRest");
export const restTone = "toneRest";
