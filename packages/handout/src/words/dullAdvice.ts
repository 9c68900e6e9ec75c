import { sayDays } from "@stayput/charts";
import type { DullWeeks } from "../facts/dullWeeks.ts";
import type { Option } from "../facts/options.ts";
import type { Handover } from "../handover.ts";
import { momentSaid } from "./figures.ts";

/** When the first option is in trouble with no sun at all, and what to leave off first. */
export function dullAdvice({ explained, locale = "en" }: Handover, option: Option, { first }: DullWeeks): string {
  const { reserveDays, days } = option.answer;
  const { letter } = option;
  const flat = days.dark === null ? "" : ` and flat ${momentSaid(days.dark)}`;
  const when =
    reserveDays.dark === null
      ? `With no sun at all ${letter} stays above its reserve for ${sayDays(null, explained.horizon_days, locale)}.`
      : `With no sun at all ${letter} is down to its reserve ${momentSaid(reserveDays.dark)}${flat}.`;
  if (first === null) return when;
  return `${when} First to leave off: ${first.name}, which buys ${sayDays(first.buys_days, explained.horizon_days, locale)}.`;
}
