import { unsafeCSS, type CSSResult } from "lit";
import { darkTheme, lightTheme, colourNames, type ColourName, type Theme } from "./theme.ts";

type Paint = ColourName | "none";
interface Mark {
  readonly fill?: Paint;
  readonly stroke?: Paint;
  readonly rest?: Readonly<Record<string, string>>;
}

const text = (fill: ColourName, size_px = 12, more: Readonly<Record<string, string>> = {}): Mark => ({
  fill,
  rest: { "font-size": `${size_px}px`, ...more },
});
const halo = { "paint-order": "stroke", "stroke-width": "4px", "stroke-linejoin": "round" };
const line = (stroke: ColourName, width_px: number, more: Readonly<Record<string, string>> = {}): Mark => ({
  fill: "none",
  stroke,
  rest: { "stroke-width": `${width_px}px`, ...more },
});
const tone = (name: ColourName): Mark => ({ fill: name, stroke: "ink", rest: { "stroke-width": "0.75px" } });

/**
 * What each class of mark looks like. The page's style sheet and the attributes written into a saved picture both come
 * from this one table, so they cannot drift apart. Where two classes meet on one element the later row wins.
 */
export const marks = {
  label: text("ink"),
  strong: text("ink", 12, { "font-weight": "700" }),
  note: text("soft"),
  alarm: text("accent", 12, { "font-weight": "700" }),
  halo: { stroke: "paper", rest: halo },
  start: { rest: { "text-anchor": "start" } },
  middle: { rest: { "text-anchor": "middle" } },
  end: { rest: { "text-anchor": "end" } },
  night: { fill: "night" },
  grid: line("rule", 1),
  axis: line("ink", 1.25),
  reserve: line("soft", 1, { "stroke-dasharray": "1 3" }),
  asked: line("ink", 1, { "stroke-dasharray": "6 3" }),
  band: { fill: "soft", stroke: "none", rest: { "fill-opacity": "0.2" } },
  bandEdge: line("soft", 0.75),
  plain: line("ink", 2, { "stroke-linejoin": "round" }),
  thin: line("ink", 1),
  leader: line("ink", 1.5),
  after: { rest: { "stroke-opacity": "0.45", "stroke-width": "1.25px" } },
  average: line("soft", 1),
  alarmLine: line("accent", 1.5),
  alarmMark: { fill: "accent", stroke: "paper", rest: { "stroke-width": "1.5px" } },
  foodMark: { fill: "paper", stroke: "accent", rest: { "stroke-width": "2px" } },
  dot: { fill: "ink", stroke: "paper", rest: { "stroke-width": "1.5px" } },
  hollow: { fill: "paper", stroke: "ink", rest: { "stroke-width": "1.75px" } },
  cursor: line("accent", 1),
  outline: line("ink", 0.75),
  unused: { fill: "none", stroke: "sun-mark", rest: { "stroke-width": "1px", "stroke-dasharray": "2 2" } },
  clear: { fill: "none", stroke: "none", rest: { "pointer-events": "all" } },
  step: { fill: "ink", stroke: "none", rest: { "fill-opacity": "0.075" } },
  sunTint: { fill: "sun-tint" },
  sunMark: { fill: "sun-mark" },
  roadTint: { fill: "road-tint" },
  roadMark: line("road-mark", 1.5),
  mainsTint: { fill: "mains-tint" },
  mainsMark: line("mains-mark", 1),
  edge: { stroke: "ink", rest: { "stroke-width": "0.75px" } },
  tone1: tone("tone-1"),
  tone2: tone("tone-2"),
  tone3: tone("tone-3"),
  tone4: tone("tone-4"),
  tone5: tone("tone-5"),
  tone6: tone("tone-6"),
  toneRest: tone("tone-rest"),
} satisfies Record<string, Mark>;

export type MarkName = keyof typeof marks;

const declarations = (mark: Mark, colour: (name: ColourName) => string): [string, string][] => {
  const paint = (value: Paint) => (value === "none" ? value : colour(value));
  return [
    ...(mark.fill === undefined ? [] : [["fill", paint(mark.fill)] as [string, string]]),
    ...(mark.stroke === undefined ? [] : [["stroke", paint(mark.stroke)] as [string, string]]),
    ...Object.entries(mark.rest ?? {}),
  ];
};

const isMark = (name: string): name is MarkName => Object.hasOwn(marks, name);

/** The declarations of a list of classes in one theme; classes the table does not hold are passed over. */
export function resolveMarks(classes: string, theme: Theme): Record<string, string> {
  const asked = new Set(classes.split(/\s+/).filter(isMark));
  const inOrder = (Object.keys(marks) as MarkName[]).filter((name) => asked.has(name));
  return Object.fromEntries(inOrder.flatMap((name) => declarations(marks[name], (colour) => theme[colour])));
}

const rules = (): string =>
  (Object.keys(marks) as MarkName[])
    .map((name) => {
      const body = declarations(marks[name], (colour) => `var(--c-${colour})`).map(([key, value]) => `${key}:${value}`);
      return `.picture .${name}{${body.join(";")}}`;
    })
    .join("\n");

/** The page's own colour where it sets one, else the theme's: `--c-ink: var(--ink, #211b14)`. */
const palette = (theme: Theme): string =>
  `.picture{${colourNames.map((name) => `--c-${name}:var(--${name}, ${theme[name]})`).join(";")}}`;

const sheet = (): string => `
${palette(lightTheme)}
@media (prefers-color-scheme: dark){${palette(darkTheme)}}
@media print{${palette(lightTheme)}}
.picture{display:block;max-width:100%;height:auto;color:var(--c-ink);overflow:visible}
.picture text{font-family:var(--sheet-font, inherit);font-variant-numeric:tabular-nums lining-nums}
${rules()}
.picture [data-point]{cursor:pointer}
.picture [data-point]:focus-visible{outline:none}
.picture [data-point]:focus-visible .clear{stroke:var(--c-accent);stroke-width:2.5px}
`;

/**
 * Style sheet for every chart. Put it into a component's `static styles`, or into the page. It takes the page's
 * `--ink`, `--paper`, … where they are set and falls back to our light and dark themes.
 */
export const chartStyles: CSSResult = /* @__PURE__ */ unsafeCSS(/* @__PURE__ */ sheet());
