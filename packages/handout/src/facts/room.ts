import { textWidth_px } from "@stayput/charts";

/** The texts of the customer's page whose length is not ours. */
export interface PageTexts {
  /** under the title: for whom, where, when */
  readonly where: string;
  /** it stands taller than the workshop's name */
  readonly hasLogo: boolean;
  readonly lead: string;
  readonly rest: string;
  readonly optionNames: readonly string[];
  readonly advice: string;
  readonly cautions: readonly string[];
  readonly small: string;
  /** loads that could be listed */
  readonly loads: number;
}

/** How many loads and cautions the page has room for. */
export interface Room {
  readonly loads: number;
  readonly cautions: number;
}

const side_mm = 279.5;
const column_px = (175 / 25.4) * 96;
const px = (pt: number): number => (pt * 96) / 72;

/** Lines that a text takes in the page's column, estimated on the long side. */
const lines = (text: string, size_pt: number, width_px = column_px): number =>
  Math.max(1, Math.ceil(textWidth_px(text, px(size_pt)) / width_px));

/** Least height of the picture with its heading and note [mm]. */
const picture_mm = 60;
/** Most first; then fewer loads and fewer cautions by turns, for both are worth having. */
const choices: readonly Room[] = [
  { loads: 5, cautions: 5 },
  { loads: 4, cautions: 4 },
  { loads: 3, cautions: 3 },
  { loads: 3, cautions: 2 },
  { loads: 2, cautions: 1 },
];

/** What to list, so that the picture keeps its size: the page is one side whatever is written in the job. */
export function roomFor(texts: PageTexts): Room {
  const fits = choices.find((room) => side_mm - fixed_mm(texts) - listed_mm(texts, room) >= picture_mm);
  return fits ?? choices.at(-1)!;
}

/** Everything but the lists and the picture, as the style sheet sets it. [mm] */
function fixed_mm({ where, hasLogo, lead, rest, optionNames, advice, small }: PageTexts): number {
  const head = (hasLogo ? 21 : 13) + 11.6 + 4.1 * lines(where, 8.6);
  const short = 10.5 + 5.6 * lines(lead, 12.2) + 4.4 * lines(rest, 9.4);
  const names = optionNames.reduce((sum, name) => sum + 1.6 + 4 * optionLines(name, optionNames.length), 0);
  const options = 15 + names + 3;
  return head + short + options + 11 + 4 * lines(advice, 8.6) + 17.5 + 3 + 2.95 * lines(small, 6.5);
}

/** Names stand in 37 % of the column, less letter and line; of many options they keep to one line. */
const optionLines = (name: string, options: number): number =>
  options > 4 ? 1 : Math.min(2, lines(name, 8.6, 0.26 * column_px));

/** The two tables side by side, and the cautions. [mm] */
function listed_mm({ optionNames, cautions, loads }: PageTexts, room: Room): number {
  const rows = Math.max(optionNames.length, 1 + Math.min(loads, room.loads));
  const shown = cautions.slice(0, room.cautions);
  const more = cautions.length > shown.length ? 4.5 : 0;
  return 7 + 4.4 * rows + more + shown.reduce((sum, text) => sum + 0.5 + 4 * lines(`${text} WWWWWW`, 8.6), 0);
}
