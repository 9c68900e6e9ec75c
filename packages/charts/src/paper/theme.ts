/** Every colour a chart may use, by name. The page sets the same names as custom properties (`--ink`, `--paper`, …). */
export const colourNames = [
  "paper",
  "ink",
  "soft",
  "rule",
  "night",
  "accent",
  "sun-tint",
  "sun-mark",
  "road-tint",
  "road-mark",
  "mains-tint",
  "mains-mark",
  "tone-1",
  "tone-2",
  "tone-3",
  "tone-4",
  "tone-5",
  "tone-6",
  "tone-rest",
] as const;

/** The names of colours. */
export type ColourName = (typeof colourNames)[number];
/** A colour for each name, as CSS writes it. */
export type Theme = Readonly<Record<ColourName, string>>;

/**
 * Warm job paper under shop lights. Tones step light and dark by turns, so that neighbours in a pile differ on a mono
 * print too; ink reads on every one of them at 4.5 to 1 or better (tests/units/charts/paper/theme.test.ts).
 */
export const lightTheme: Theme = {
  paper: "#fbf7ec",
  ink: "#211b14",
  soft: "#61574a",
  rule: "#cdc2ae",
  night: "#ece5d5",
  accent: "#a62f17",
  "sun-tint": "#fae7a6",
  "sun-mark": "#8a5f00",
  "road-tint": "#d3e4ee",
  "road-mark": "#1f5578",
  "mains-tint": "#eadcf0",
  "mains-mark": "#6a3d8a",
  "tone-1": "#cf8a5e",
  "tone-2": "#c5dde0",
  "tone-3": "#8fa66b",
  "tone-4": "#f0d9b5",
  "tone-5": "#9d97c4",
  "tone-6": "#e3e3c3",
  "tone-rest": "#bdb4a4",
};

/** The same sheet with the lights off. */
export const darkTheme: Theme = {
  paper: "#1f1b16",
  ink: "#f2eadb",
  soft: "#b9ae9c",
  rule: "#4d4538",
  night: "#15120e",
  accent: "#ff9070",
  "sun-tint": "#4a3b10",
  "sun-mark": "#f3cf60",
  "road-tint": "#1c3a4e",
  "road-mark": "#a3cfec",
  "mains-tint": "#3b2a4a",
  "mains-mark": "#d5b8ee",
  "tone-1": "#8a4a22",
  "tone-2": "#2b4a52",
  "tone-3": "#5a6f35",
  "tone-4": "#4b3a1e",
  "tone-5": "#625a94",
  "tone-6": "#3c3d24",
  "tone-rest": "#6a6153",
};

/** Custom properties of a theme, ready to stand in a style sheet's rule. */
export const themeProperties = (theme: Theme): string =>
  colourNames.map((name) => `--${name}: ${theme[name]};`).join("\n");
