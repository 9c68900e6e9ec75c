import type { PeakAnswer, SetupAnswer } from "@stayput/sim";
import { whole } from "./numbers.ts";
import { plain } from "./plain.ts";

const verdicts: Record<PeakAnswer["verdict"], string> = {
  ok: "runs",
  "inverter-overloaded": "more than the inverter can give",
  "bms-limit": "more than the bank's own switch allows",
  "below-cut-off": "pulls the bank under its cut-off",
  "no-inverter": "needs an inverter, and there is none",
};

/** Large loads at the lowest charge of the stay. */
export function peaks({ peaks: all }: SetupAnswer): string[] {
  // what has no inverter is among the cautions
  return all
    .filter(({ verdict }) => verdict !== "no-inverter")
    .map(({ name, draw_A, volts_V, verdict }) => {
      const drawn = `${whole(draw_A)} A, bank at ${volts_V.toFixed(1)} V, `;
      return `${plain(name, 40)} at the lowest charge of the stay: ${drawn}${verdicts[verdict]}.`;
    });
}
