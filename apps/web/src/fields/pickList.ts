/* eslint-disable lit-a11y/accessible-name, lit-a11y/click-events-have-key-events --
   the box is named by its label, and the keys for the options are heard in the box, after the ARIA combobox pattern */
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { freshId, LightElement } from "./lightElement.ts";

export interface Found {
  readonly id: string;
  readonly title: string;
  readonly note: string;
}

/**
 * A box to type in with a list of what is found, after the ARIA combobox pattern: arrows move, Enter takes, Escape closes.
 * Dispatches `pick` with what was taken.
 */
@customElement("pick-list")
export class PickList extends LightElement {
  @property() label = "";
  @property() hint = "";
  /** stands in the box while it is not being typed in */
  @property() text = "";
  @property() fault = "";
  /** said where nothing is found */
  @property() none = "";
  /** leaving the box takes what was named: the only one found that begins so, or the only one called so */
  @property({ type: Boolean }) takesNamed = false;
  @property({ attribute: false }) find: (text: string) => Promise<readonly Found[]> = () => Promise.resolve([]);
  @state() private found: readonly Found[] = [];
  @state() private open = false;
  /** what the list was found for */
  @state() private looked = "";
  @state() private active = 0;
  private asked = 0;
  private readonly boxId = freshId("pick");

  protected override render(): TemplateResult {
    const listId = `${this.boxId}-list`;
    return html`<label class="label" for=${this.boxId}>${this.label}</label>
      <span class="blank ${this.fault === "" ? "" : "faulty"}"
        ><input
          id=${this.boxId}
          type="text"
          role="combobox"
          autocomplete="off"
          spellcheck="false"
          aria-autocomplete="list"
          aria-expanded=${this.open ? "true" : "false"}
          aria-controls=${listId}
          aria-activedescendant=${this.open && this.found.length > 0 ? `${listId}-${this.active}` : nothing}
          aria-invalid=${this.fault === "" ? "false" : "true"}
          aria-describedby=${this.fault === "" ? nothing : `${this.boxId}-fault`}
          placeholder=${this.hint}
          @input=${this.typed}
          @focus=${this.entered}
          @keydown=${this.key}
          @blur=${this.blurred}
      /></span>
      <ul
        class="found"
        id=${listId}
        role="listbox"
        aria-label=${this.label}
        ?hidden=${!this.open || this.found.length === 0}
      >
        ${this.found.map((each, i) => this.option(each, i, listId))}
      </ul>
      <p class="none" role="status">${this.nothingFound() ? this.none : ""}</p>
      ${this.fault === "" ? nothing : html`<p class="fault" id="${this.boxId}-fault">${this.fault}</p>`}`;
  }

  private nothingFound(): boolean {
    return this.found.length === 0 && this.looked.trim() !== "";
  }

  private option({ title, note }: Found, i: number, listId: string): TemplateResult {
    return html`<li
      id="${listId}-${i}"
      role="option"
      aria-selected=${i === this.active ? "true" : "false"}
      @pointerdown=${(event: Event) => event.preventDefault()}
      @click=${() => this.take(i)}
    >
      <span>${title}</span><span class="note">${note}</span>
    </li>`;
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has("text") && !this.open) this.box.value = this.text;
    if (changed.has("active"))
      this.renderRoot.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: "nearest" });
  }

  private get box(): HTMLInputElement {
    return this.renderRoot.querySelector("input")!;
  }

  private entered(): void {
    this.box.select();
  }

  private typed(): void {
    void this.look(this.box.value);
  }

  /** Only the newest search counts, however late the others come in. */
  private async look(text: string): Promise<void> {
    const asked = ++this.asked;
    const found = await this.find(text);
    if (asked !== this.asked) return;
    this.found = found;
    this.looked = text;
    this.active = 0;
    this.open = true;
  }

  private key(event: KeyboardEvent): void {
    const { length } = this.found;
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      if (!this.open) void this.look(this.box.value === this.text ? "" : this.box.value);
      else if (length > 0) this.active = (this.active + (event.key === "ArrowDown" ? 1 : length - 1)) % length;
    } else if (event.key === "Enter" && this.open && length > 0) {
      event.preventDefault();
      this.take(this.active);
    } else if (event.key === "Escape" && this.open) {
      event.stopPropagation();
      this.left();
    }
  }

  private blurred(): void {
    const named = this.open && this.takesNamed ? this.named(this.box.value.trim().toLowerCase()) : -1;
    if (named === -1) this.left();
    else this.take(named);
  }

  private named(typed: string): number {
    const titles = this.found.map(({ title }) => title.toLowerCase());
    if (typed === "") return -1;
    if (titles.length === 1 && titles[0]!.startsWith(typed)) return 0;
    return titles.filter((title) => title === typed).length === 1 ? titles.indexOf(typed) : -1;
  }

  private left(): void {
    this.open = false;
    this.asked++;
    this.box.value = this.text;
  }

  private take(index: number): void {
    const taken = this.found[index];
    if (taken === undefined) return;
    this.open = false;
    this.looked = "";
    this.asked++;
    this.box.value = this.text;
    this.dispatchEvent(new CustomEvent<Found>("pick", { detail: taken }));
  }
}
