import type { Fault } from "@stayput/job";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { pathText, type Keys } from "../store/at.ts";
import { set, settle } from "../store/edit.ts";
import { freshId, LightElement } from "./lightElement.ts";
import { acceptedIn, readTyped, shown, type FieldKind } from "./typed.ts";

/**
 * One blank on the sheet: a label, what is typed, its unit, its default in grey, and its fault in words beneath. It keeps
 * what is typed, right or wrong, and never rewrites it while the cursor is in it.
 */
@customElement("value-field")
export class ValueField extends LightElement {
  @property() label = "";
  @property({ attribute: false }) keys: Keys = [];
  @property() kind: FieldKind = "number";
  @property() unit = "";
  /** shown in grey while nothing is typed */
  @property() standard = "";
  /** what the setup on the left has, where this differs */
  @property() was = "";
  @property({ type: Boolean }) quiet = false;
  /** has no default: emptied, it stays in the job as nothing, so that its fault is said here */
  @property({ type: Boolean }) needed = false;
  /** more than one: a box of several lines */
  @property({ type: Number }) lines = 1;
  @property({ attribute: false }) value: unknown = undefined;
  @property({ attribute: false }) fault: Fault | undefined = undefined;
  private readonly inputId = freshId("field");

  protected override render(): TemplateResult {
    const faulty = this.fault !== undefined;
    return html`<label class=${this.quiet ? "unseen" : "label"} for=${this.inputId}>${this.label}</label>
      <span class="blank ${faulty ? "faulty" : ""} ${this.was === "" ? "" : "differs"}">
        ${this.lines > 1 ? this.box(faulty) : this.blank(faulty)}${this.unit === "" ? nothing : html`<span class="unit">${this.unit}</span>`}
      </span>
      ${this.was === "" ? nothing : html`<span class="was">was ${this.was}</span>`}
      ${this.fault === undefined ? nothing : html`<p class="fault" id="${this.inputId}-fault">${this.says(this.fault)}</p>`}`;
  }

  private blank(faulty: boolean): TemplateResult {
    return html`<input
      id=${this.inputId}
      data-path=${pathText(this.keys)}
      type="text"
      autocomplete="off"
      spellcheck="false"
      inputmode=${this.kind === "text" ? nothing : "text"}
      placeholder=${this.standard}
      aria-invalid=${faulty ? "true" : "false"}
      aria-describedby=${faulty ? `${this.inputId}-fault` : nothing}
      @input=${this.typed}
      @change=${() => settle(this)}
    />`;
  }

  private box(faulty: boolean): TemplateResult {
    return html`<textarea
      id=${this.inputId}
      data-path=${pathText(this.keys)}
      rows=${this.lines}
      aria-invalid=${faulty ? "true" : "false"}
      aria-describedby=${faulty ? `${this.inputId}-fault` : nothing}
      @input=${this.typed}
      @change=${() => settle(this)}
    ></textarea>`;
  }

  protected override updated(): void {
    const input = this.renderRoot.querySelector<HTMLInputElement | HTMLTextAreaElement>("input, textarea");
    if (input === null || same(readTyped(this.kind, input.value), this.value)) return;
    input.value = shown(this.kind, this.value);
  }

  private says({ given, accepted }: Fault): string {
    const wanted = acceptedIn(this.kind, accepted);
    const typed = shown(this.kind, this.value);
    if (typed === "") return `Needed: ${wanted}.`;
    const what = typed === given || this.kind === "text" ? "This" : `“${typed}”`;
    return `${what} will not do here. Accepted: ${wanted}.`;
  }

  private typed(event: Event): void {
    const { value } = event.target as HTMLInputElement;
    const typed = readTyped(this.kind, value) ?? (this.needed ? null : undefined);
    set(this, `Change ${this.label.toLowerCase()}`, this.keys, typed, pathText(this.keys));
  }
}

/** Text and nothing are the same in a field. */
const same = (a: unknown, b: unknown): boolean => a === b || ((a ?? "") === "" && (b ?? "") === "");
