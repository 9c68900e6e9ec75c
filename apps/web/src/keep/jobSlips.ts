import type { TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import type { Keeper } from "./keeper.ts";
import { noticeSlips } from "./notice.ts";

/** What the keeper has to say, under the head of the sheet. */
@customElement("job-slips")
export class JobSlips extends LightElement {
  @property({ attribute: false }) keeper!: Keeper;
  private forget: () => void = () => undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.forget = this.keeper.subscribe(() => this.requestUpdate());
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.forget();
  }

  protected override render(): TemplateResult {
    return noticeSlips(this.keeper.notices, ({ about }) => this.keeper.unsay(about));
  }
}
