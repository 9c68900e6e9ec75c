import type { ChartTable, FactOptions, Readout } from "../paper/picture.ts";
import { sayDays, sayDaysShort, saySigned } from "../paper/words.ts";
import type { UpgradesPicture } from "./upgradesPicture.ts";

/** What each change is worth, row by row. */
export function upgradesTable(picture: UpgradesPicture, { locale }: FactOptions = {}): ChartTable {
  const days = (value: number | null) => sayDaysShort(value, picture.horizon_days, locale);
  return {
    caption: "What each change is worth, in days; the shares add up to the whole gain",
    columns: ["Change", "Days with it alone", "Share of the gain, days"],
    rows: [
      ["As it is", days(picture.from_days), "–"],
      ...picture.changes.map((change) => [
        change.name,
        days(change.alone_days),
        saySigned(change.share_days, locale, 1),
      ]),
      ["All together", days(picture.together_days), "–"],
    ],
  };
}

/** The changes in a sentence: all together, and the one that gives most. */
export function upgradesSummary(picture: UpgradesPicture, { locale }: FactOptions = {}): string {
  const [most] = [...picture.changes].sort((a, b) => b.share_days - a.share_days);
  if (!most) return "What would change it: no changes to weigh yet.";
  const say = (value: number | null) => sayDays(value, picture.horizon_days, locale);
  return `What would change it: from ${say(picture.from_days)} to ${say(picture.together_days)} with all changes; ${most.name} gives most, ${saySigned(most.share_days, locale, 1)} days.`;
}

/** One row's figures. */
export function upgradesReadout(picture: UpgradesPicture, index: number, { locale }: FactOptions = {}): Readout {
  const say = (value: number | null) => sayDays(value, picture.horizon_days, locale);
  const whole = (heading: string, days: number | null) => ({ heading, lines: [{ name: "Lasts", value: say(days) }] });
  if (picture.changes.length === 0) return { heading: "", lines: [] };
  if (index <= 0) return whole("As it is", picture.from_days);
  const change = picture.changes[index - 1];
  if (!change) return whole("All together", picture.together_days);
  return {
    heading: change.name,
    lines: [
      { name: "Share of the gain", value: `${saySigned(change.share_days, locale, 1)} days` },
      { name: "Alone", value: say(change.alone_days) },
    ],
  };
}
