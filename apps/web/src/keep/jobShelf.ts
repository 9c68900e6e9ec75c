import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import type { Keeper } from "./keeper.ts";

type Leaf = "jobs" | "send";

/** The two buttons for what goes beyond the sheet, and the leaf of paper that each lays over it. */
@customElement("job-shelf")
export class JobShelf extends LightElement {
  @property({ attribute: false }) keeper!: Keeper;
  @state() private leaf: Leaf | null = null;

  protected override render(): TemplateResult {
    return html`<button type="button" aria-haspopup="dialog" @click=${() => this.lay("jobs")}>Jobs</button>
      <button type="button" aria-haspopup="dialog" @click=${() => this.lay("send")}>Save or send</button>
      <dialog class="leaf" aria-labelledby="leaf-title" @close=${this.closed} @click=${this.beside}>
        <header>
          <h2 id="leaf-title">${this.leaf === "send" ? "Save or send this job" : "Jobs on this device"}</h2>
          <button type="button" @click=${this.close}>Close</button>
        </header>
        ${this.leaf === "jobs" ? html`<job-list .keeper=${this.keeper} .close=${this.close}></job-list>` : nothing}
        ${this.leaf === "send" ? html`<send-job .keeper=${this.keeper}></send-job>` : nothing}
      </dialog>`;
  }

  private async lay(leaf: Leaf): Promise<void> {
    await (leaf === "jobs" ? import("./jobList.ts") : import("../share/sendJob.ts"));
    this.leaf = leaf;
    await this.updateComplete;
    this.dialog.showModal();
  }

  private get dialog(): HTMLDialogElement {
    return this.renderRoot.querySelector("dialog")!;
  }

  private readonly close = (): void => this.dialog.close();

  private closed(): void {
    this.leaf = null;
  }

  /** A tap beside the leaf puts it away. */
  private beside(event: Event): void {
    if (event.target === this.dialog) this.close();
  }
}
