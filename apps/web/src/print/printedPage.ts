import { chartStyles } from "@stayput/charts";
import { adoptStyles, css, html, LitElement, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { handoverNow } from "./handoverNow.ts";
import { handoutNow, loadHandout, type HandoutParts } from "./loadHandout.ts";
import type { PrintSettings } from "./printSettings.ts";
import type { ToPrint } from "./toPrint.ts";

/** Until the pages' own styles are in. */
const plain = css`
  .notYet {
    color: #000;
    font: 400 12pt/1.4 var(--sheet-font);
  }
  h1 {
    font-size: 16pt;
    line-height: 1.2;
  }
`;

/**
 * The pages that are handed over, seen only in print. In a root of its own, so that the sheet's styles do not reach them and
 * they are what the command line writes. Laid out ahead, since a browser that is about to print waits for nothing: not for
 * code to arrive, nor for a logo to be drawn.
 */
@customElement("printed-page")
export class PrintedPage extends LitElement {
  static override styles = plain;
  @property({ attribute: false }) toPrint: ToPrint = { waiting: "" };
  @property({ attribute: false }) settings: PrintSettings = { fitter: false, logo: null };
  private styled = false;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("beforeprint", this.lay);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("beforeprint", this.lay);
  }

  /** As of now: the day may have changed since it was laid out. */
  private readonly lay = (): void => {
    this.requestUpdate();
    this.performUpdate();
  };

  /** Resolves once the pages stand with their pictures drawn. @throws an Error in words where their code cannot be had */
  async laidOut(): Promise<void> {
    await loadHandout();
    this.lay();
    const images = this.renderRoot.querySelectorAll("img");
    await Promise.all(Array.from(images, (image) => image.decode().catch(() => undefined)));
  }

  protected override updated(): void {
    if (!("answered" in this.toPrint) || handoutNow() !== null) return;
    // what stands on the screen comes first; where it cannot be fetched now, the button asks again
    whenIdle(
      () =>
        void loadHandout().then(
          () => this.requestUpdate(),
          () => undefined,
        ),
    );
  }

  protected override render(): TemplateResult {
    const { toPrint } = this;
    if ("waiting" in toPrint) return notYet(toPrint.waiting);
    const parts = handoutNow();
    if (parts === null) return notYet("The pages are still being fetched: print again in a moment.");
    this.takeStyles(parts);
    const handover = handoverNow(toPrint.answered, this.settings);
    try {
      return html`${parts.customerPage(handover)}${this.settings.fitter ? parts.fitterPage(handover) : nothing}`;
    } catch (error) {
      return notYet(error instanceof Error ? error.message : String(error));
    }
  }

  private takeStyles({ handoutStyles }: HandoutParts): void {
    if (this.styled) return;
    this.styled = true;
    // in the order in which a file has them: a picture's own sizes of type come last
    adoptStyles(this.renderRoot as ShadowRoot, [plain, handoutStyles, chartStyles]);
    // the size of the paper is read from the document only
    const { styleSheet } = handoutStyles;
    if (styleSheet !== undefined) document.adoptedStyleSheets = [...document.adoptedStyleSheets, styleSheet];
  }
}

const notYet = (words: string): TemplateResult =>
  html`<section class="notYet">
    <h1>Not ready to be handed over</h1>
    <p>${words}</p>
  </section>`;

/** Safari has no such callback. */
const whenIdle = (run: () => void): void => {
  if ("requestIdleCallback" in window) requestIdleCallback(run, { timeout: 2000 });
  else setTimeout(run, 200);
};
