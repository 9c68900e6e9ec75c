import type { ExplainAnswer, SetupAnswer } from "@stayput/sim";
import { chargeKey, chargePicture } from "./chargePicture.ts";
import { foodOnceFlat, fridgesPowered } from "./food.ts";
import { assumedOf, grouped } from "./grouped.ts";
import { standing, titled } from "./headAndFoot.ts";
import { heading, lettered, letterOf } from "./heading.ts";
import { lasting } from "./lasting.ts";
import { peaks } from "./peaks.ts";
import { plain } from "./plain.ts";
import { sentence } from "./sentence.ts";
import type { Sheet } from "./sheet.ts";
import { sunUsed, whereItGoes } from "./whereItGoes.ts";
import { item, wrap } from "./wrap.ts";

/** The whole answer of `explain` for a terminal of 80 columns, without colour. */
export function explainText(sheet: Sheet): string {
  const { answer } = sheet;
  const sections = [
    titled(sheet, answer.nights),
    ...answer.setups.map((setup, i) => wrap(sentence(setup, answer, answer.setups[i - 1]), lettered(i))),
    [heading("How long it lasts"), ...lasting(answer)],
    ...answer.setups.flatMap((setup, i) => setupSections(setup, letterOf(i), answer)),
    mind(answer.setups),
    foodOnceFlat(answer.setups),
    [heading("Charge against days"), ...wrap(chargeKey(answer)), "", ...chargePicture(answer)],
    [heading("Taken as given"), ...assumedOf(sheet.assumed, answer.setups), ...item(standing(answer))],
  ];
  const said = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${said.join("\n\n")}\n`;
}

function setupSections(setup: SetupAnswer, letter: string, { horizon_days }: ExplainAnswer): string[][] {
  const goes = [heading("Where it goes", `${letter}  ${plain(setup.name, 50)}`), ...whereItGoes(setup, horizon_days)];
  return [goes, sunUsed(setup)];
}

/** Cautions, heavy loads and the fridges: each once, with the letters of the setups that it is said of. */
function mind(setups: readonly SetupAnswer[]): string[] {
  const kinds = [(setup: SetupAnswer) => setup.cautions.map(({ text }) => text), peaks, fridgesPowered];
  const lines = kinds.flatMap((said) => grouped(setups.map(said)));
  return lines.length === 0 ? [] : [heading("What to mind"), ...lines];
}
