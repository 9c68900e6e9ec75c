import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import { loadHandout } from "../print/loadHandout.ts";
import { keepLogo, type PrintSettings } from "../print/printSettings.ts";
import type { ToPrint } from "../print/toPrint.ts";
import { pickFile } from "../share/jobFile.ts";
import { blank, type Card } from "./card.ts";

/** Row 6: whom it is for and from, and the printed pages. */
@customElement("row-hand-over")
export class RowHandOver extends LightElement {
  @property({ attribute: false }) card!: Card;
  @property({ attribute: false }) toPrint: ToPrint = { waiting: "" };
  @property({ attribute: false }) settings!: PrintSettings;
  @property({ attribute: false }) print!: () => Promise<void>;
  @state() private said = "";
  @state() private logoFault = "";
  @state() private busy = false;

  protected override render(): TemplateResult {
    const { card } = this;
    const text = { kind: "text" } as const;
    return html`<div class="line">
        ${blank(card, ["customer", "name"], "Customer", text)}
        ${blank(card, ["customer", "notes"], "What they say", { ...text, lines: 3 })}
      </div>
      <div class="line">
        ${blank(card, ["workshop", "name"], "Workshop", text)}
        ${blank(card, ["workshop", "contact"], "Telephone or address", text)}
      </div>
      <div class="line">
        ${blank(card, ["currency"], "Currency of prices", { ...text, standard: "ZAR, EUR, AUD …" })}
        ${blank(card, ["payload_kg"], "Payload left", { unit: "kg", standard: "not known" })}
      </div>
      ${this.logo()}${this.pages()}`;
  }

  private logo(): TemplateResult {
    const { logo } = this.settings;
    return html`<div class="logo">
      ${logo === null ? nothing : html`<img src=${logo} alt="The workshop’s logo" />`}
      <div class="buttons">
        <button type="button" @click=${this.chooseLogo}>
          ${logo === null ? "Add the workshop’s logo" : "Another logo"}
        </button>
        ${
          logo === null
            ? nothing
            : html`<button type="button" class="quiet" @click=${() => this.setLogo(null)}>Take the logo off</button>`
        }
      </div>
      <p class="note">PNG, JPEG or SVG, at most 200 kB; kept in this browser for all jobs.</p>
      <p class="fault" role="alert">${this.logoFault}</p>
    </div>`;
  }

  private pages(): TemplateResult {
    const { toPrint, busy } = this;
    const { fitter } = this.settings;
    const waiting = "waiting" in toPrint;
    return html`<label class="tick"
        ><input
          type="checkbox"
          .checked=${fitter}
          @change=${(event: Event) => this.set({ fitter: (event.target as HTMLInputElement).checked })}
        />With the fitter’s page: parts, charge run, wire and fuses, what to pull while the loom is open</label
      >
      <div class="buttons">
        <button
          type="button"
          class="main"
          ?disabled=${waiting || busy}
          @click=${() =>
            this.run("", async () => {
              await this.print();
              return true;
            })}
        >
          ${fitter ? "Print both pages" : "Print the customer’s page"}
        </button>
        <button type="button" ?disabled=${waiting || busy} @click=${this.save}>
          ${fitter ? "Save both pages as a file" : "Save the page as a file"}
        </button>
      </div>
      <p class="note">${waiting ? toPrint.waiting : ""}</p>
      <p class="note" role="status">${this.said}</p>`;
  }

  private set(change: Partial<PrintSettings>): void {
    const detail: PrintSettings = { ...this.settings, ...change };
    this.dispatchEvent(new CustomEvent("print-settings", { detail, bubbles: true }));
  }

  private setLogo(logo: string | null): void {
    this.logoFault = keepLogo(logo);
    this.set({ logo });
  }

  private readonly chooseLogo = async (): Promise<void> => {
    const file = await pickFile(".png,.jpg,.jpeg,.svg,image/png,image/jpeg,image/svg+xml");
    if (file === null) return;
    try {
      const { readLogo } = await loadHandout();
      this.setLogo(await readLogo(file));
    } catch (error) {
      this.logoFault = `${file.name.slice(0, 80)}: ${error instanceof Error ? error.message : String(error)}`;
    }
  };

  private readonly save = (): Promise<void> =>
    this.run("The file is saved.", async () => {
      const { savePage } = await loadHandout();
      return "answered" in this.toPrint && savePage(this.toPrint.answered, this.settings);
    });

  /** What was done is said, unless it was called off. */
  private async run(done: string, deed: () => Promise<boolean>): Promise<void> {
    this.busy = true;
    this.said = "";
    try {
      this.said = (await deed()) ? done : "";
    } catch (error) {
      this.said = error instanceof Error ? error.message : String(error);
    } finally {
      this.busy = false;
    }
  }
}
