import { dashOf } from "@stayput/charts";
import { html, svg, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { LightElement } from "../fields/lightElement.ts";
import { insertAt, removeAt, setAt } from "../store/at.ts";
import { edit } from "../store/edit.ts";
import { blank, faultNote, type Card } from "./card.ts";
import { newId } from "./newId.ts";
import { setupFields } from "./setupFields.ts";

/** Row 3: one column a setup; what differs from the column on its left is marked. */
@customElement("row-fitted")
export class RowFitted extends LightElement {
  @property({ attribute: false }) card!: Card;

  protected override render(): TemplateResult {
    const { setups } = this.card.job;
    return html`<div class="setups" tabindex="0" role="group" aria-label="Setups, one column each">
        ${repeat(
          setups,
          ({ id }) => id,
          (setup, index) => this.column(setup.id, setup.name, index),
        )}
      </div>
      ${faultNote(this.card, ["setups"])}`;
  }

  private column(id: string, name: string, index: number): TemplateResult {
    const { card } = this;
    const alone = card.job.setups.length === 1;
    return html`<section class="setup" aria-label=${name} data-setup=${id}>
      <header>
        ${lineSample(index)}<span class="which">${index === 0 ? "Fitted now" : `Proposal ${index}`}</span>
        ${
          alone
            ? ""
            : html`<button
                type="button"
                class="quiet remove"
                aria-label="Remove ${name}"
                title="Remove"
                @click=${() => this.takeOut(index, name)}
              >
                ×
              </button>`
        }
      </header>
      ${blank(card, ["setups", index, "name"], "Called", { kind: "text" })} ${setupFields(card, index, this)}
      <button type="button" class="copy" @click=${() => this.copy(index)}>Copy as a proposal</button>
    </section>`;
  }

  private copy(index: number): void {
    edit(this, "Copy as a proposal", (job) => {
      const from = job.setups[index];
      if (from === undefined || job.setups.length >= 12) return job;
      const number = job.setups.length;
      const id = newId(
        `proposal-${number}`,
        job.setups.map((setup) => setup.id),
      );
      // structuredClone keeps the two columns from ever sharing a part
      return insertAt(job, ["setups"], { ...structuredClone(from), id, name: `Proposal ${number}` }, index + 1);
    });
    void this.showColumn(index + 1);
  }

  /** The new column, ready to be named. */
  private async showColumn(index: number): Promise<void> {
    await this.updateComplete;
    await new Promise(requestAnimationFrame);
    const name = this.querySelector<HTMLInputElement>(`[data-path="setups[${index}].name"]`);
    name?.scrollIntoView({ block: "nearest", inline: "nearest" });
    name?.focus({ preventScroll: true });
    name?.select();
  }

  private takeOut(index: number, name: string): void {
    edit(this, `Remove ${name}`, (job) => setAt(job, ["setups"], removeAt(job, ["setups"], index).setups));
  }
}

/** How this setup's line is drawn on the bench. */
const lineSample = (index: number): TemplateResult =>
  html`<svg class="sample" width="34" height="10" viewBox="0 0 34 10" aria-hidden="true">
    ${svg`<path d="M1 5H33" stroke="currentColor" stroke-width="2" stroke-dasharray=${dashOf(index)}></path>`}
  </svg>`;
