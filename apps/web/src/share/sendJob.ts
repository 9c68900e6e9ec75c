import type { Fault } from "@stayput/job";
import { html, nothing, svg, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import type { Keeper } from "../keep/keeper.ts";
import { fileNameOf, saveJob, saveText } from "./jobFile.ts";
import type { Qr } from "./qr.ts";
import type { Text } from "./remoteFiles.ts";

type Link = { readonly text: string } | { readonly faults: readonly Fault[] } | "no address" | "making";

/** The job as a file, a link, a code for the customer's phone, and its figures to work on elsewhere. */
@customElement("send-job")
export class SendJob extends LightElement {
  @property({ attribute: false }) keeper!: Keeper;
  @state() private link: Link = "making";
  @state() private code: Qr | null | "none" = "none";
  @state() private said = "";
  @state() private setup = "";
  @state() private busy = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.setup = this.job?.setups[0]?.id ?? "";
    void this.makeLink();
  }

  private get job() {
    return this.keeper.now?.store.job;
  }

  private async makeLink(): Promise<void> {
    if (location.protocol === "file:") {
      this.link = "no address";
      return;
    }
    const packed = await this.keeper.files.packLink(this.job);
    if (!packed.ok) {
      this.link = { faults: packed.faults };
      return;
    }
    const text = `${location.origin}${location.pathname}#${packed.text}`;
    this.link = { text };
    const { qrOf } = await import("./qr.ts");
    this.code = qrOf(text);
  }

  protected override render(): TemplateResult {
    return html`<ol class="kept ways-out">
        ${part(1, "A job file", this.fileWay())} ${part(2, "A link with the whole job in it", this.linkWay())}
        ${part(3, "For the customer’s phone", this.codeWay())} ${part(4, "The figures", this.figuresWay())}
      </ol>
      <p class="note" role="status">${this.said}</p>`;
  }

  private fileWay(): TemplateResult {
    return html`<p class="note">Everything on the sheet as it stands, to keep or to open elsewhere.</p>
      <div class="buttons">
        <button type="button" class="main" @click=${this.saveFile}>Save the job file</button>
      </div>`;
  }

  private linkWay(): TemplateResult {
    const { link } = this;
    if (link === "making") return html`<p class="note">Packing it…</p>`;
    if (link === "no address")
      return html`<p class="note">
        This page was opened from a file, so a link to it would lead nowhere on another device. Send the job file.
      </p>`;
    if ("faults" in link)
      return html`<p class="note">
        A link holds only a job without faults.
        ${link.faults.length === 1 ? "One blank needs" : `${link.faults.length} blanks need`} another look first; the
        file can be saved as it is.
      </p>`;
    return html`<label class="label" for="job-link"
        >It opens as a new job; the part after the # is never sent to a server</label
      >
      <span class="blank"
        ><input
          id="job-link"
          type="text"
          readonly
          .value=${link.text}
          @focus=${(event: Event) => (event.target as HTMLInputElement).select()}
      /></span>
      <div class="buttons">
        <button type="button" @click=${() => this.copy(link.text)}>Copy the link</button>
        ${"share" in navigator ? html`<button type="button" @click=${() => this.share(link.text)}>Send it…</button>` : nothing}
      </div>`;
  }

  private codeWay(): TemplateResult {
    const { code, link } = this;
    if (code === "none" || typeof link === "string" || !("text" in link))
      return html`<p class="note">${link === "making" ? "" : "Comes with the link."}</p>`;
    if (code === null)
      return html`<p class="note">
        The link has ${link.text.length} characters, too many for a code that a phone can read. Send the link or the
        file.
      </p>`;
    return html`${codePicture(code)}
      <p class="note">
        Point the phone’s camera at it: it opens this job
        there.${code.version > 20 ? " It is a fine one; hold the phone near." : ""}
      </p>`;
  }

  private figuresWay(): TemplateResult {
    const setups = this.job?.setups ?? [];
    return html`<div class="field">
        <label class="label" for="hours-of">Hour by hour, the trip as described, under the average sky</label>
        <span class="blank"
          ><select id="hours-of" @change=${(event: Event) => (this.setup = (event.target as HTMLSelectElement).value)}>
            ${setups.map(({ id, name }) => html`<option value=${id} ?selected=${id === this.setup}>${name}</option>`)}
          </select></span
        >
      </div>
      <div class="buttons">
        <button type="button" ?disabled=${this.busy} @click=${this.saveHours}>Save the hours as CSV</button>
        <button type="button" ?disabled=${this.busy} @click=${this.saveAnswer}>Save the answer as JSON</button>
      </div>`;
  }

  private readonly saveFile = async (): Promise<void> => {
    const { job } = this;
    if (job !== undefined && (await saveJob(job))) this.said = "The file is saved.";
  };

  private async copy(text: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(text);
      this.said = "The link is copied.";
    } catch {
      this.querySelector<HTMLInputElement>("#job-link")?.select();
      this.said = "The browser would not copy it. It is marked: copy it by hand.";
    }
  }

  private async share(url: string): Promise<void> {
    try {
      await navigator.share({ url, title: this.job?.title ?? "" });
    } catch (error) {
      if (!(error instanceof DOMException && error.name === "AbortError"))
        this.said = "This device would not send it. Copy the link.";
    }
  }

  private readonly saveHours = (): Promise<void> =>
    this.save(".hours.csv", "text/csv", () => this.keeper.files.hoursCsv(this.job, this.setup));
  private readonly saveAnswer = (): Promise<void> =>
    this.save(".answer.json", "application/json", () => this.keeper.files.answerJson(this.job));

  private async save(ending: string, type: string, make: () => Promise<Text>): Promise<void> {
    this.busy = true;
    this.said = "Working it out…";
    try {
      const made = await make();
      if (made.ok) await saveText(fileNameOf(this.job?.title, ending), made.text, type);
      this.said = made.ok
        ? ""
        : `There is no answer yet: ${made.faults[0]?.message ?? "some blank needs another look"}.`;
    } catch (error) {
      this.said = error instanceof Error ? error.message : String(error);
    } finally {
      this.busy = false;
    }
  }
}

const part = (number: number, title: string, body: TemplateResult): TemplateResult =>
  html`<li>
    <b>${number}</b>
    <div class="what">
      <h3>${title}</h3>
      ${body}
    </div>
  </li>`;

/** Always dark on light, whatever the lights: cameras want it so. */
const codePicture = ({ size, path }: Qr): TemplateResult =>
  html`<svg
    class="code"
    viewBox="0 0 ${size} ${size}"
    role="img"
    aria-label="QR code of the link to this job"
    shape-rendering="crispEdges"
  >
    ${svg`<rect width=${size} height=${size} fill="#fff" /><path d=${path} fill="#000" />`}
  </svg>`;
