import type { ChargeMoment, ChargeRunAnswer } from "@stayput/sim";
import { sayNumber, sayPercent } from "@stayput/charts";
import { bounded } from "../words/bounded.ts";
import { ampsSaid } from "../words/figures.ts";
import { gathered, type Lettered, type Option } from "./options.ts";

type Cells = readonly string[];
const sameCells = (cells: Cells): string => cells.join("\u0000");

export const chargeColumns = [
  "feed",
  "source (share of a drive)",
  "into the bank at the start",
  "mid-charge",
  "near full",
  "at its end",
  "what holds it at the start",
] as const;

/** The charge runs: a row for each voltage that the source stands at. */
export function chargeRows(options: readonly Option[], locale: string): Lettered<Cells>[] {
  const rows = options.flatMap(({ letter, wired }) =>
    wired === null ? [] : wired.charge === null ? [] : sourceRows(wired.charge, locale).map((row) => ({ letter, row })),
  );
  return gathered(rows, sameCells);
}

function sourceRows(charge: ChargeRunAnswer, locale: string): Cells[] {
  const starts = charge.moments.filter(({ when }) => when === "start");
  return starts.map((start) => {
    const at = (when: ChargeMoment["when"]) =>
      charge.moments.find((moment) => moment.when === when && moment.source_V === start.source_V);
    const amps = (moment: ChargeMoment | undefined) => (moment ? `${ampsSaid(moment.delivered_A, locale)} A` : "");
    const share = start.weight < 1 ? ` (${sayPercent(start.weight, locale)})` : "";
    return [
      charge.feed === "relay" ? "relay" : "DC-DC",
      `${volts(start.source_V, locale)}${share}`,
      amps(start),
      amps(at("mid-charge")),
      amps(at("near full")),
      volts(start.points.at(-1)?.volts_V ?? start.source_V, locale),
      heldSaid(start, locale),
    ];
  });
}

const volts = (value: number, locale: string): string => `${sayNumber(value, locale, 1)} V`;

function heldSaid({ limitedBy, limit, gain_A }: ChargeMoment, locale: string): string {
  const what = limitedBy === "bank" ? "the bank takes no more" : bounded(limit.name, 50);
  return gain_A >= 0.5 ? `${what}: ${ampsSaid(gain_A, locale)} A more without it` : what;
}
