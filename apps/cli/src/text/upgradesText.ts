import type { GainShares, Setup, UpgradeChange, UpgradesAnswer } from "@stayput/sim";
import { standing, titled, type Of } from "./headAndFoot.ts";
import { assumedOf } from "./grouped.ts";
import { heading, letterOf } from "./heading.ts";
import { chanceCell, daysCell, daysMore, signed, thousands } from "./numbers.ts";
import { plain } from "./plain.ts";
import { table, type Column } from "./table.ts";
import { item, wrap } from "./wrap.ts";

interface Sheet extends Of {
  readonly nights: number;
  readonly from: Setup;
  readonly to: Setup;
  /** all of the job, which gives the letters */
  readonly setups: readonly Setup[];
  readonly answer: UpgradesAnswer;
  readonly seed: number | null;
  readonly draws: number;
  readonly currency: string | null;
  readonly assumed: readonly string[];
}

/** What each change of a proposal is worth, for a terminal of 80 columns. */
export function upgradesText(sheet: Sheet): string {
  const { answer, from, to, setups } = sheet;
  const letter = (setup: Setup): string => letterOf(setups.indexOf(setup));
  const name = (setup: Setup): string => `${letter(setup)} (${plain(setup.name, 40)})`;
  const sections = [
    titled(sheet, sheet.nights),
    wrap(`From ${name(from)} to ${name(to)}. ${answer.said}${price(sheet)}`),
    answer.changes.length === 0 ? [] : [heading("What each change is worth"), ...worth(sheet)],
    [
      heading("Taken as given"),
      ...assumedOf(sheet.assumed, [from, to], [from, to].map(letter)),
      ...item(standing({ ...sheet, ...answer })),
    ],
  ];
  const said = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${said.join("\n\n")}\n`;
}

function price({ from, to, currency }: Sheet): string {
  const more = to.price - from.price;
  if (Math.round(more) === 0) return "";
  const unit = currency === null ? "" : `${currency} `;
  return ` The price of it all: ${unit}${thousands(Math.abs(more))}${more < 0 ? " less" : ""}.`;
}

const names: Readonly<Record<UpgradeChange["id"], string>> = {
  bank: "the bank",
  panels: "panels and charger",
  feed: "the road feed",
  inverter: "the inverter",
  mains: "the mains charger",
  loads: "what runs",
};

const right = (head: string): Column => ({ head, align: "right" });

/** Each change alone, and its share of the gain of all of them, by each of the three measures. */
function worth({ answer, draws }: Sheet): string[] {
  const { changes, days, dullDays, chance, horizon_days } = answer;
  const inDays = (value: number): string => daysCell(value >= horizon_days ? null : value, horizon_days);
  const inTrips = (value: number): string => chanceCell(value, draws);
  const columns = [
    { head: "", align: "left" } as const,
    right("days\nP50"),
    right("its\nshare"),
    right("days\nP10"),
    right("its\nshare"),
    right("chance of\nlasting"),
    right("its\nshare"),
  ];
  const row = (first: string, of: (measure: GainShares) => number, shareOf: (measure: GainShares) => number | null) => [
    first,
    inDays(of(days)),
    share(shareOf(days), daysMore),
    inDays(of(dullDays)),
    share(shareOf(dullDays), daysMore),
    inTrips(of(chance)),
    share(shareOf(chance), points),
  ];
  const rows = [
    row(
      "as it is",
      ({ before }) => before,
      () => null,
    ),
    ...changes.map(({ id }, i) =>
      row(
        `${names[id]} alone`,
        ({ alone }) => alone[i]!,
        ({ shares }) => shares[i]!,
      ),
    ),
    row(
      "all together",
      ({ after }) => after,
      ({ before, after }) => after - before,
    ),
  ];
  const key =
    "Days are parked. A share is what a change adds on average over every order of making the changes; the shares sum to the whole gain. Shares of the chance are in trips of a hundred.";
  return [...table(columns, rows), ...wrap(key)];
}

const share = (value: number | null, said: (value: number) => string): string => {
  if (value === null) return "";
  const text = said(value);
  return value > 0 && Number(text) !== 0 ? `+${text}` : text.replace(/^-(0(\.0)?)$/, "$1");
};

/** A difference of chances in points of a hundred. */
const points = (value: number): string => signed(100 * value).replace("+", "");
