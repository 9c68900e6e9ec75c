import type { ExplainAnswer, SetupAnswer } from "@stayput/sim";
import { chargeKey, chargePicture } from "./chargePicture.ts";
import { food } from "./food.ts";
import { standing, titled } from "./headAndFoot.ts";
import { heading, letterOf } from "./heading.ts";
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
    ...answer.setups.map((setup, i) =>
      wrap(sentence(setup, answer, answer.setups[i - 1]), { first: `${letterOf(i)}  `, hang: 3 }),
    ),
    [heading("How long it lasts"), ...lasting(answer)],
    ...answer.setups.flatMap((setup, i) => setupSections(setup, letterOf(i), answer)),
    [heading("Charge against days"), ...wrap(chargeKey(answer)), "", ...chargePicture(answer)],
    [heading("Taken as given"), ...[...sheet.assumed.map((text) => plain(text, 600)), standing(answer)].flatMap(item)],
  ];
  return `${sections.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

function setupSections(setup: SetupAnswer, letter: string, { horizon_days }: ExplainAnswer): string[][] {
  const goes = [heading("Where it goes", `${letter}  ${plain(setup.name, 50)}`), ...whereItGoes(setup, horizon_days)];
  const notes = [...setup.cautions.map(({ text }) => plain(text, 600)).flatMap(item), ...peaks(setup), ...food(setup)];
  return [goes, sunUsed(setup), notes].filter((lines) => lines.length > 0);
}
