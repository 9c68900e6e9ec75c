import { html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { pathText, type Keys } from "../store/at.ts";
import { set } from "../store/edit.ts";
import { freshId, LightElement } from "./lightElement.ts";

export interface Choice {
  readonly value: string;
  readonly label: string;
  /** what the job keeps for it; left out: the value itself */
  readonly stands?: unknown;
}

/** One of a few words. */
@customElement("choice-field")
export class ChoiceField extends LightElement {
  @property() label = "";
  @property({ attribute: false }) keys: Keys = [];
  @property() value = "";
  @property() was = "";
  @property({ type: Boolean }) quiet = false;
  @property({ attribute: false }) choices: readonly Choice[] = [];
  private readonly inputId = freshId("choice");

  protected override render(): TemplateResult {
    return html`<label class=${this.quiet ? "unseen" : "label"} for=${this.inputId}>${this.label}</label>
      <span class="blank ${this.was === "" ? "" : "differs"}">
        <select id=${this.inputId} data-path=${pathText(this.keys)} .value=${live(this.value)} @change=${this.picked}>
          ${this.choices.map(
            ({ value, label }) => html`<option value=${value} ?selected=${value === this.value}>${label}</option>`,
          )}
        </select>
      </span>
      ${this.was === "" ? nothing : html`<span class="was">was ${this.was}</span>`}`;
  }

  private picked(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    const choice = this.choices.find((each) => each.value === value);
    if (choice === undefined) return;
    const stands = "stands" in choice ? choice.stands : choice.value;
    if (this.dispatchEvent(new CustomEvent("pick", { detail: stands, cancelable: true })))
      set(this, `Change ${this.label.toLowerCase()}`, this.keys, stands);
  }
}
