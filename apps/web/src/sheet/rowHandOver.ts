import { html, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import { blank, type Card } from "./card.ts";

/** Row 6: whom it is for and from, and the printed page. */
@customElement("row-hand-over")
export class RowHandOver extends LightElement {
  @property({ attribute: false }) card!: Card;

  protected override render(): TemplateResult {
    const { card } = this;
    const text = { kind: "text" } as const;
    return html`<div class="line">
        ${blank(card, ["customer", "name"], "Customer", text)}
        ${blank(card, ["customer", "notes"], "What they say", text)}
      </div>
      <div class="line">
        ${blank(card, ["workshop", "name"], "Workshop", text)}
        ${blank(card, ["workshop", "contact"], "Telephone or address", text)}
      </div>
      <div class="line">
        ${blank(card, ["currency"], "Currency of prices", { ...text, standard: "ZAR, EUR, AUD …" })}
        ${blank(card, ["payload_kg"], "Payload left", { unit: "kg", standard: "not known" })}
      </div>
      <div class="line">
        <button type="button" class="main" ?disabled=${card.answer === null} @click=${() => window.print()}>
          Print one page for the customer
        </button>
      </div>`;
  }
}
