import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import type { Keeper } from "./keeper.ts";

export type LeafName = "jobs" | "send";

/** A leaf of paper laid over the sheet: the jobs of this device, or the ways out for this one. */
@customElement("job-leaf")
export class JobLeaf extends LightElement {
  @property({ attribute: false }) keeper!: Keeper;
  @state() private name: LeafName | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.parentElement?.addEventListener("lay-leaf", this.asked);
    this.addEventListener("click", this.beside);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.parentElement?.removeEventListener("lay-leaf", this.asked);
  }

  protected override render(): TemplateResult {
    return html`<dialog class="leaf" aria-labelledby="leaf-title" @close=${this.closed}>
      <header>
        <h2 id="leaf-title">${this.name === "send" ? "Save or send this job" : "Jobs on this device"}</h2>
        <button type="button" @click=${this.close}>Close</button>
      </header>
      ${this.name === "jobs" ? html`<job-list .keeper=${this.keeper} .close=${this.close}></job-list>` : nothing}
      ${this.name === "send" ? html`<send-job .keeper=${this.keeper}></send-job>` : nothing}
    </dialog>`;
  }

  private readonly asked = (event: Event): void => void this.lay((event as CustomEvent<LeafName>).detail);

  private async lay(name: LeafName): Promise<void> {
    await (name === "jobs" ? import("./jobList.ts") : import("../share/sendJob.ts"));
    this.name = name;
    await this.updateComplete;
    if (!this.dialog.open) this.dialog.showModal();
  }

  private get dialog(): HTMLDialogElement {
    return this.renderRoot.querySelector("dialog")!;
  }

  private readonly close = (): void => this.dialog.close();

  /** A tap beside the leaf puts it away, as Escape does. */
  private readonly beside = (event: Event): void => {
    if (event.target === this.dialog) this.close();
  };

  private closed(): void {
    this.name = null;
  }
}
