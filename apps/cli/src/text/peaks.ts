import type { PeakAnswer, SetupAnswer } from "@stayput/sim";
import { whole } from "./numbers.ts";
import { plain } from "./plain.ts";
import { item } from "./wrap.ts";

const verdicts: Record<PeakAnswer["verdict"], string> = {
  ok: "runs",
  "inverter-overloaded": "more than the inverter can give",
  "bms-limit": "more than the bank's own switch allows",
  "below-cut-off": "pulls the bank under its cut-off",
  "no-inverter": "needs an inverter, and there is none",
};

/** Large loads at the lowest charge of the stay. */
export function peaks({ peaks: all }: SetupAnswer): string[] {
  return all.flatMap(({ name, draw_A, volts_V, verdict }) => {
    const drawn = verdict === "no-inverter" ? "" : `${whole(draw_A)} A, bank at ${volts_V.toFixed(1)} V, `;
    return item(`${plain(name, 40)} at the lowest charge of the stay: ${drawn}${verdicts[verdict]}.`);
  });
}
