import { upgradesKind } from "@stayput/charts";
import type { ComparedSetup, ExplainAnswer } from "@stayput/sim";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
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
  @state() private chosen = "";

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
    const proposals = setups.slice(1);
    const to = proposals.find(({ id }) => id === this.chosen) ?? proposals.at(-1)!;
    const { answer, stale } = this.desk.slip({ kind: "upgrades", from: setups[0]!.id, to: to.id });
    const changes = answer?.upgrades.changes.length ?? 0;
    return html`${proposals.length < 2 ? nothing : this.chooser(setups[0]!.id, to.id, proposals)}
      <bench-picture
        heading="What each change is worth: ${to.name}"
        name="what-each-change-is-worth"
        .kind=${upgradesKind}
        .data=${answer === null || changes === 0 ? null : upgradesData(answer.upgrades)}
        .stale=${stale}
        .height_px=${80 + 44 * changes}
        .empty=${answer === null ? "Comes once the drawn skies are in." : "It is the same as what is fitted."}
      ></bench-picture>
      ${answer === null || changes === 0 ? nothing : html`<p class="says">${answer.upgrades.said}</p>`}`;
  }

  private chooser(from: string, chosen: string, proposals: readonly { id: string; name: string }[]): TemplateResult {
    const choose = (id: string) => {
      this.chosen = id;
      this.desk.askAlso({ kind: "upgrades", from, to: id });
    };
    return html`<fieldset class="chooser">
      <legend>What the changes are worth in</legend>
      ${proposals.map(
        ({ id, name }) =>
          html`<label
            ><input type="radio" name="worth" .checked=${id === chosen} @change=${() => choose(id)} />${name}</label
          >`,
      )}
    </fieldset>`;
  }
}

/** Measures down, setups across. */
const optionsTable = (read: Read, answer: ExplainAnswer, compared: readonly ComparedSetup[]): TemplateResult =>
  html`<div class="scroll" tabindex="0" role="group" aria-label="Options side by side">
    <table class="options">
      <thead>
        <tr>
          <td></td>
          ${answer.setups.map(({ name }) => html`<th scope="col">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${optionRows(read, answer, compared).map(
          ({ name, cells, strong }) =>
            html`<tr class=${strong ? "strong" : ""}>
              <th scope="row">${name}</th>
              ${cells.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
