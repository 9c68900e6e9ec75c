import { upgradesKind } from "@stayput/charts";
import type { ComparedSetup, ExplainAnswer } from "@stayput/sim";
import { html, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { LongDesk } from "../bench/longDesk.ts";
import { upgradesData } from "../bench/pictures.ts";
import { workingView } from "../bench/workingView.ts";
import { LightElement } from "../fields/lightElement.ts";
import type { Read } from "../worker/protocol.ts";
import { optionRows } from "./optionRows.ts";

/** Row 5: the options in a plain table, and what each change of the last proposal is worth. */
@customElement("row-options")
export class RowOptions extends LightElement {
  @property({ attribute: false }) read: Read | null = null;
  @property({ attribute: false }) answer: ExplainAnswer | null = null;
  @property({ attribute: false }) desk!: LongDesk;
  @property({ type: Number }) news = 0;
  @property({ type: Boolean }) stale = false;

  protected override render(): TemplateResult {
    const { read, answer } = this;
    if (read === null || answer === null) return html`<p class="empty">Comes with the answer.</p>`;
    const compared = this.desk.slip({ kind: "compare" });
    return html`<div class="${this.stale ? "stale" : ""}">
        ${optionsTable(read, answer, compared.answer?.compare.setups ?? [])}
      </div>
      ${
        answer.setups.length < 2
          ? html`<p class="note">
              Copy what is fitted as a proposal in row 3, change it, and both stand here side by side.
            </p>`
          : this.worth(answer)
      }
      ${workingView("options", [], null)}`;
  }

  private worth({ setups }: ExplainAnswer): TemplateResult {
    const [from, to] = [setups[0]!.id, setups.at(-1)!.id];
    const { answer, stale } = this.desk.slip({ kind: "upgrades", from, to });
    if (answer === null || answer.upgrades.changes.length === 0) return html``;
    return html`<bench-picture
        heading="What each change is worth: ${setups.at(-1)!.name}"
        name="what-each-change-is-worth"
        .kind=${upgradesKind}
        .data=${upgradesData(answer.upgrades)}
        .stale=${stale}
        .height_px=${80 + 44 * answer.upgrades.changes.length}
      ></bench-picture>
      <p class="says">${answer.upgrades.said}</p>`;
  }
}

/** Measures down, setups across. */
export const optionsTable = (
  read: Read,
  answer: ExplainAnswer,
  compared: readonly ComparedSetup[],
  short = false,
): TemplateResult =>
  html`<div class="scroll" tabindex="0" role="group" aria-label="Options side by side">
    <table class="options">
      <thead>
        <tr>
          <td></td>
          ${answer.setups.map(({ name }) => html`<th scope="col">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${optionRows(read, answer, compared)
          .filter((row) => !short || row.minor !== true)
          .map(
            ({ name, cells, strong }) =>
              html`<tr class=${strong ? "strong" : ""}>
                <th scope="row">${name}</th>
                ${cells.map((cell) => html`<td>${cell}</td>`)}
              </tr>`,
          )}
      </tbody>
    </table>
  </div>`;
