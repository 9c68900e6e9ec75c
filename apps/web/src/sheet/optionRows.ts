import { sayChance, sayDays, sayList, sayNumber, sayRange, saySigned, sayWh } from "@stayput/charts";
import type { ComparedSetup, ExplainAnswer, SetupAnswer } from "@stayput/sim";
import type { Read } from "../worker/protocol.ts";
import { locale } from "../words/locale.ts";

export interface OptionRow {
  readonly name: string;
  readonly cells: readonly string[];
  readonly strong?: boolean;
}

/** What is compared, a row each; refill hours come with the comparison. */
export function optionRows(read: Read, answer: ExplainAnswer, compared: readonly ComparedSetup[]): OptionRow[] {
  const { horizon_days, nights, setups } = answer;
  const row = (name: string, cell: (setup: SetupAnswer, i: number) => string, strong = false): OptionRow => ({
    name,
    cells: setups.map(cell),
    strong,
  });
  const with_ = (id: string) => compared.find((setup) => setup.id === id);
  const study = (id: string) => read.study.setups.find((setup) => setup.id === id);
  const { currency, payload_kg } = read.job;
  return [
    row("Days, median", ({ days }) => sayDays(days.drawn.p50, horizon_days, locale()), true),
    row("Eight skies in ten", ({ days }) => sayRange(days.drawn.p10, days.drawn.p90, horizon_days, locale())),
    row("No sun at all", ({ days }) => sayDays(days.dark, horizon_days, locale())),
    row(
      `Chance of ${nights === 1 ? "the night" : `${nights} nights`}`,
      ({ chanceOfLasting }) => sayChance(chanceOfLasting, locale()),
      true,
    ),
    ...(Object.values(read.stranded).every((names) => names.length === 0)
      ? []
      : [row("Not running", ({ id }) => sayList(read.stranded[id] ?? []) || "–")]),
    row("Uses", ({ use_Wh_day }) => `${sayWh(use_Wh_day.total, locale())} a day`),
    row("Driving to 80\u00a0%", ({ id }) => hoursText(with_(id)?.refill_h.to80)),
    row("Driving to full", ({ id }) => hoursText(with_(id)?.refill_h.toFull)),
    row("Price", ({ id }) => priceText(study(id)?.price ?? 0, currency)),
    row("Mass against now", ({ id }) => `${saySigned(study(id)?.mass_kg ?? 0, locale(), 0)} kg`),
    ...(payload_kg === null
      ? []
      : [row("Payload left", ({ id }) => `${sayNumber(payload_kg - (study(id)?.mass_kg ?? 0), locale())} kg`)]),
    row("To mind", ({ cautions }) => (cautions.length === 0 ? "nothing" : `${cautions.length}, named above`)),
  ];
}

const hoursText = (hours: number | null | undefined): string =>
  hours === undefined ? "…" : hours === null ? "not in 48 h" : `${sayNumber(hours, locale(), hours < 9.95 ? 1 : 0)} h`;

function priceText(price: number, currency: string | null): string {
  if (price === 0) return "–";
  if (currency === null) return sayNumber(price, locale());
  return new Intl.NumberFormat(locale(), { style: "currency", currency, maximumFractionDigits: 0 }).format(price);
}
