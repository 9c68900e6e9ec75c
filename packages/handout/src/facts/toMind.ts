import type { PeakAnswer, SetupAnswer } from "@stayput/sim";
import { bounded } from "../words/bounded.ts";
import { gathered, type Lettered, type Option } from "./options.ts";

const verdicts: Record<Exclude<PeakAnswer["verdict"], "ok">, string> = {
  "inverter-overloaded": "asks more than the inverter gives",
  "bms-limit": "draws more amps than the bank's BMS lets out",
  "below-cut-off": "pulls the bank under its cut-off at the lowest charge of the stay",
  "no-inverter": "needs an inverter, and there is none",
};

/** Something to mind, and of which kind: two cautions of one kind differ only in their figures. */
interface Minded {
  readonly kind: string;
  readonly text: string;
}

/** All that a fitter must mind, each once, with the letters of the options that it is true of. */
export const forFitter = (options: readonly Option[]): Lettered<string>[] =>
  gathered(
    everything(options).filter(({ row }) => row.kind !== food),
    ({ text }) => text,
  ).map(({ letters, row }) => ({ letters, row: row.text }));

/** What a customer must: one line a kind, and whose figures they are where others differ. */
export function forCustomer(options: readonly Option[]): Lettered<string>[] {
  const all = everything(options);
  return gathered(all, ({ kind }) => kind).map(({ letters, row: { kind, text } }) => {
    const differ = all.some(({ letter, row }) => letter !== letters[0] && row.kind === kind && row.text !== text);
    return { letters, row: differ && letters.length > 1 ? `${text} (${letters[0]}'s figures.)` : text };
  });
}

const food = "food";

const everything = (options: readonly Option[]): { letter: string; row: Minded }[] =>
  options.flatMap(({ letter, answer }) =>
    [
      ...answer.cautions.map(({ code, text }) => ({ kind: code, text })),
      ...peaksSaid(answer).map((text) => ({ kind: text, text })),
      ...foodSaid(answer).map((text) => ({ kind: food, text })),
    ].map(({ kind, text }) => ({ letter, row: { kind, text: bounded(text, 260) } })),
  );

const peaksSaid = ({ peaks, cautions }: SetupAnswer): string[] =>
  peaks.flatMap(({ name, verdict }) =>
    verdict === "ok" || (verdict === "no-inverter" && cautions.some(({ code }) => code === "no-inverter"))
      ? []
      : [`${bounded(name, 60)} ${verdicts[verdict]}.`],
  );

/** Hours until food is past 5 °C, to the half hour: the model is not worth more. */
function foodSaid({ food: { hoursFromCutOffTo5C: hours } }: SetupAnswer): string[] {
  if (hours === null) return [];
  const rounded = Math.max(0.5, Math.round(hours * 2) / 2);
  const about = rounded < 1 ? "half an hour" : rounded === 1 ? "an hour" : `${rounded} h`;
  return [`Once flat, the fridge's food passes 5 °C in about ${about}. Follow the local food authority's rule.`];
}
