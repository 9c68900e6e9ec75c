import { dashOf } from "@stayput/charts";
import { html, nothing, svg, type TemplateResult } from "lit";

export interface Column {
  readonly head: string | TemplateResult;
  /** figures stand to the right */
  readonly figures?: boolean;
}

export type Cell = string | TemplateResult | typeof nothing;

/** A ruled table. The first cell of each row names it. */
export const ruled = (columns: readonly Column[], rows: readonly (readonly Cell[])[], kind = ""): TemplateResult =>
  html`<table class=${`ruled ${kind}`}>
    <thead>
      <tr>
        ${columns.map(({ head, figures }) => html`<th scope="col" class=${figures ? "figures" : "words"}>${head}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (cells) =>
          html`<tr>
            ${cells.map((cell, i) => cellOf(cell, columns[i], i))}
          </tr>`,
      )}
    </tbody>
  </table>`;

function cellOf(cell: Cell, column: Column | undefined, i: number): TemplateResult {
  const kind = column?.figures ? "figures" : "words";
  return i === 0 ? html`<th scope="row" class=${kind}>${cell}</th>` : html`<td class=${kind}>${cell}</td>`;
}

/** An option's letter in its box. */
export const letterMark = (letter: string): TemplateResult => html`<span class="letter">${letter}</span>`;

/** Letters of several options; nothing where it is true of them all. */
export const letterMarks = (letters: readonly string[], all: number): TemplateResult | typeof nothing =>
  letters.length === all ? nothing : html`<span class="letters">${letters.map(letterMark)}</span>`;

/** A short piece of an option's own line, as it is drawn in the picture. */
export const lineSample = (index: number): TemplateResult =>
  html`<svg class="picture sample" viewBox="0 0 40 6" width="40" height="6" aria-hidden="true">
    ${svg`<path class="plain" d="M0 3H40" stroke-dasharray=${dashOf(index) || nothing}></path>`}
  </svg>`;

/** A numbered row of the sheet. */
export const numbered = (number: number, title: string, body: unknown, kind = ""): TemplateResult =>
  html`<section class=${`numbered ${kind}`}>
    <h2><b>${number}</b>${title}</h2>
    <div class="body">${body}</div>
  </section>`;
