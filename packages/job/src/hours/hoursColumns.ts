import { dayOfYear, unusedCauses, type HoursAnswer, type Trip } from "@stayput/sim";
import type { CsvColumn } from "./csv.ts";

/** The hourly ledger as columns, units in their names. Sums are over the hour; charge and volts stand at its end. */
export function hoursColumns(answer: HoursAnswer, trip: Pick<Trip, "month" | "day">): CsvColumn[] {
  const { hours, firstHour, ledger } = answer;
  const clock = (i: number): number => firstHour + i;
  const each = <Value extends number | string>(of: (i: number) => Value): Value[] =>
    Array.from({ length: hours }, (_, i) => of(i));
  return [
    { name: "from_arrival_h", values: each((i) => i) },
    { name: "date", values: each((i) => dateAfter(trip, Math.floor(clock(i) / 24))) },
    { name: "clock_h", values: each((i) => clock(i) % 24) },
    { name: "air_C", values: answer.air_C },
    { name: "driving_share", values: answer.driving },
    { name: "mains_share", values: answer.mains },
    { name: "sun_available_Wh", values: ledger.sunAvailable_Wh },
    { name: "sun_used_Wh", values: ledger.sunUsed_Wh },
    { name: "sun_unused_Wh", values: each((i) => Math.max(0, ledger.sunAvailable_Wh[i]! - ledger.sunUsed_Wh[i]!)) },
    { name: "sun_unused_why", values: each((i) => unusedCauses[ledger.unusedCause[i]!] ?? "none") },
    { name: "sun_over_charger_Wh", values: ledger.sunClipped_Wh },
    { name: "feed_Wh", values: ledger.feed_Wh },
    { name: "mains_Wh", values: ledger.mains_Wh },
    ...answer.byLoad.map(({ id, Wh }) => ({ name: `load_${id}_Wh`, values: Wh })),
    { name: "inverter_idle_Wh", values: answer.inverterIdle_Wh },
    { name: "served_Wh", values: ledger.served_Wh },
    { name: "powered_h", values: ledger.powered_h },
    { name: "bank_in_Wh", values: ledger.bankIn_Wh },
    { name: "bank_out_Wh", values: ledger.bankOut_Wh },
    { name: "charge_loss_Wh", values: ledger.chargeLoss_Wh },
    { name: "stored_Ah", values: ledger.stored_Ah },
    { name: "drawn_Ah", values: ledger.drawn_Ah },
    { name: "self_discharge_Ah", values: ledger.selfDischarge_Ah },
    { name: "bank_V", values: ledger.volts_V },
    { name: "charge_pct", values: each((i) => 100 * answer.charge[i]!) },
  ];
}

/** Month and day so many days after arrival, "07-10"; in a year without a 29 February, as the simulation has it. */
function dateAfter({ month, day }: Pick<Trip, "month" | "day">, days: number): string {
  return new Date(Date.UTC(2001, 0, dayOfYear(month, day) + days)).toISOString().slice(5, 10);
}
