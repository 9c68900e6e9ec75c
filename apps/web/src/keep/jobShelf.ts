import { html, type TemplateResult } from "lit";
import { customElement } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import type { LeafName } from "./jobLeaf.ts";

/** The two buttons for what goes beyond the sheet. */
@customElement("job-shelf")
export class JobShelf extends LightElement {
  protected override render(): TemplateResult {
    return html`<button type="button" aria-haspopup="dialog" @click=${() => this.lay("jobs")}>Jobs</button>
      <button type="button" aria-haspopup="dialog" @click=${() => this.lay("send")}>Save or send</button>`;
  }

  private lay(detail: LeafName): void {
    this.dispatchEvent(new CustomEvent<LeafName>("lay-leaf", { detail, bubbles: true }));
  }
}
