import { chartStyles, darkTheme, lightTheme, themeProperties } from "@stayput/charts";

export type Choice = "light" | "dark" | null;

/** The charts' own colours are the sheet's: one palette for all, on screen and in print. */
const palette = `
:root { color-scheme: light; ${themeProperties(lightTheme)} }
@media (prefers-color-scheme: dark) { :root:not([data-theme="light"]) { color-scheme: dark; ${themeProperties(darkTheme)} } }
:root[data-theme="dark"] { color-scheme: dark; ${themeProperties(darkTheme)} }
@media print { :root, :root[data-theme="dark"], :root:not([data-theme="light"]) { color-scheme: light; ${themeProperties(lightTheme)} } }
`;

export function layPaper(): void {
  const colours = new CSSStyleSheet();
  colours.replaceSync(palette);
  const charts = chartStyles.styleSheet;
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, colours, ...(charts === undefined ? [] : [charts])];
  show(remembered());
}

const key = "stayput-theme";

/** A browser that refuses storage has the system's choice. */
function remembered(): Choice {
  try {
    const value = localStorage.getItem(key);
    return value === "light" || value === "dark" ? value : null;
  } catch {
    return null;
  }
}

function show(choice: Choice): void {
  if (choice === null) delete document.documentElement.dataset["theme"];
  else document.documentElement.dataset["theme"] = choice;
}

export const isDark = (): boolean =>
  document.documentElement.dataset["theme"] === "dark" ||
  (document.documentElement.dataset["theme"] === undefined && matchMedia("(prefers-color-scheme: dark)").matches);

/** Turns the lights the other way, and remembers it. */
export function turnLights(): void {
  const choice = isDark() ? "light" : "dark";
  show(choice);
  try {
    localStorage.setItem(key, choice);
  } catch {
    // it holds for this visit
  }
}
