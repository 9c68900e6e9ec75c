import { toSvgText, type ChartTable, type Picture, type Readout } from "@stayput/charts";
import { html, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { freshId, LightElement } from "../fields/lightElement.ts";
import { savePng, saveSvg } from "./savePicture.ts";
import { locale } from "../words/locale.ts";

/** Any of the pictures: what it is drawn from is its own affair. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- the kind and its data are set together
export type AnyPicture = Picture<any>;

/**
 * Places a picture: draws it at the width there is, reads values out under a pointer or along a slider, and keeps its data
 * table, its working and its files to save within reach. Computes nothing.
 */
@customElement("bench-picture")
export class BenchPicture extends LightElement {
  @property() heading = "";
  /** names the saved files */
  @property() name = "picture";
  @property({ attribute: false }) kind: AnyPicture | null = null;
  @property({ attribute: false }) data: unknown = null;
  @property({ attribute: false }) more: Readonly<Record<string, unknown>> = {};
  @property({ type: Boolean }) stale = false;
  @property({ type: Number }) height_px = 300;
  /** said in place of the picture when there is nothing to draw */
  @property() empty = "";
  @property({ attribute: false }) above: unknown = nothing;
  @property({ attribute: false }) below: unknown = nothing;
  /** a line under a saved picture */
  @property() note = "";
  @state() private width_px = 0;
  @state() private at: number | null = null;
  @state() private open = false;
  private readonly figureId = freshId("picture");
  private readonly watch = new ResizeObserver(() => this.measure());

  override connectedCallback(): void {
    super.connectedCallback();
    this.watch.observe(this);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watch.disconnect();
  }

  private measure(): void {
    const width = Math.floor(this.clientWidth);
    if (width > 0 && Math.abs(width - this.width_px) >= 1) this.width_px = width;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("kind")) this.at = null;
  }

  protected override render(): TemplateResult {
    const drawn = this.kind !== null && this.data !== null && this.width_px > 0;
    return html`<figure class="picture-box ${this.stale ? "stale" : ""}" aria-labelledby=${this.figureId}>
      <figcaption>
        <h3 id=${this.figureId}>${this.heading}</h3>
        ${drawn ? this.saves() : nothing}
      </figcaption>
      ${this.above} ${drawn ? this.plot(this.kind!) : html`<p class="empty">${this.empty}</p>`}
      <div class="behind">${drawn ? this.table(this.kind!) : nothing} ${this.below}</div>
    </figure>`;
  }

  private get options() {
    return {
      ...this.more,
      width_px: this.width_px,
      height_px: this.height_px,
      id: this.figureId,
      locale: locale(),
    };
  }

  private plot(kind: AnyPicture): TemplateResult {
    const { stops } = kind.geometry(this.data, this.options);
    const readout = this.at === null ? null : kind.readout(this.data, this.at, { locale: locale() });
    const text = readout === null ? "" : readoutText(readout);
    const index = this.at === null ? 0 : Math.max(0, nearestIndex(stops, this.at));
    return html`<div
        class="plot"
        @pointermove=${this.hover}
        @pointerdown=${this.hover}
        @pointerleave=${() => (this.at = null)}
        @click=${this.point}
        @keydown=${(event: KeyboardEvent) => {
          if (event.key === "Enter" || event.key === " ") this.point(event);
        }}
      >
        ${kind.chart(this.data, { ...this.options, at: this.at })}
      </div>
      ${
        stops.length < 2
          ? nothing
          : html`<input
              class="reader"
              type="range"
              min="0"
              max=${stops.length - 1}
              step="1"
              .value=${String(index)}
              aria-label="Read values of ${this.heading}"
              aria-valuetext=${text || "not reading"}
              @focus=${() => (this.at = stops[index] ?? null)}
              @blur=${() => (this.at = null)}
              @input=${(event: Event) => (this.at = stops[Number((event.target as HTMLInputElement).value)] ?? null)}
            />`
      }
      <p class="readout">${readout === null ? nothing : readoutView(readout)}</p>`;
  }

  /** The facts behind the picture, laid out once they are asked for. */
  private table(kind: AnyPicture): TemplateResult {
    return html`<details
      class="more data"
      @toggle=${(event: Event) => (this.open = (event.target as HTMLDetailsElement).open)}
    >
      <summary>Its figures</summary>
      ${this.open ? dataTable(kind.table(this.data, { locale: locale() })) : nothing}
    </details>`;
  }

  /** A point of the picture was taken, by pointer or by key. */
  private point(event: Event): void {
    const mark = (event.target as Element).closest("[data-point]");
    if (mark === null) return;
    event.preventDefault();
    this.dispatchEvent(new CustomEvent<number>("point", { detail: Number(mark.getAttribute("data-point")) }));
  }

  private hover(event: PointerEvent): void {
    const svg = (event.currentTarget as HTMLElement).querySelector("svg");
    if (svg === null || this.kind === null) return;
    const box = svg.getBoundingClientRect();
    const { positionAt, width_px } = this.kind.geometry(this.data, this.options);
    const scale = width_px / box.width;
    this.at = positionAt((event.clientX - box.left) * scale, (event.clientY - box.top) * scale);
  }

  private saves(): TemplateResult {
    const text = () => {
      const chart = this.kind!.chart(this.data, { ...this.options, width_px: Math.max(640, this.width_px), at: null });
      return toSvgText(chart, "light", { title: this.heading, note: this.note });
    };
    return html`<span class="saves"
      ><span class="note" aria-hidden="true">Save as</span>
      <button
        type="button"
        class="quiet"
        aria-label="Save ${this.heading} as SVG"
        @click=${() => saveSvg(this.name, text())}
      >
        SVG
      </button>
      <button
        type="button"
        class="quiet"
        aria-label="Save ${this.heading} as PNG"
        @click=${() => void savePng(this.name, text())}
      >
        PNG
      </button></span
    >`;
  }
}

const nearestIndex = (stops: readonly number[], at: number): number =>
  stops.reduce((best, stop, i) => (Math.abs(stop - at) < Math.abs((stops[best] ?? Infinity) - at) ? i : best), 0);

const readoutText = ({ heading, lines }: Readout): string =>
  `${heading}: ${lines.map(({ name, value }) => `${name} ${value}`).join(", ")}`;

const readoutView = ({ heading, lines }: Readout): TemplateResult =>
  html`<b>${heading}</b> ${lines.map(({ name, value }) => html`<span>${name} <b>${value}</b></span> `)}`;

const dataTable = ({ caption, columns, rows }: ChartTable): TemplateResult =>
  html`<div class="scroll" tabindex="0" role="group" aria-label=${caption}>
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${columns.map((column) => html`<th scope="col">${column}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([first, ...others]) =>
            html`<tr>
              <th scope="row">${first}</th>
              ${others.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
