import { sayDays, sayNumber, saySigned } from "@stayput/charts";
import { html, nothing, type TemplateResult } from "lit";
import { working, type FigureId } from "../words/working.ts";
import type { Slip } from "./longDesk.ts";
import type { LongAnswer } from "../worker/askLong.ts";
import { locale } from "../words/locale.ts";

export interface Input {
  readonly name: string;
  readonly value: string;
}

interface Sway {
  readonly slip: Slip<Extract<LongAnswer, { kind: "sway" }>>;
  readonly ask: () => void;
}

/** How a figure came about: what went in, the equation in words, its source and standing, and what moved it most. */
export const workingView = (id: FigureId, inputs: readonly Input[], sway: Sway | null): TemplateResult => {
  const { title, steps } = working[id];
  return html`<details class="more working">
    <summary>${title}</summary>
    ${
      inputs.length === 0
        ? nothing
        : html`<h4>What went in</h4>
            <dl>
              ${inputs.map(
                ({ name, value }) =>
                  html`<div>
                    <dt>${name}</dt>
                    <dd>${value}</dd>
                  </div>`,
              )}
            </dl>`
    }
    <h4>How</h4>
    <ol>
      ${steps.map(
        ({ says, source, standing }) => html`<li>${says} <span class="source">${source} (${standing}).</span></li>`,
      )}
    </ol>
    ${sway === null ? nothing : swayView(sway)}
  </details>`;
};

/** To about three figures: a tenth of it shows. */
const figure = (value: number): string => sayNumber(value, locale(), value < 10 ? 2 : value < 100 ? 1 : 0);

const swayView = ({ slip, ask }: Sway): TemplateResult =>
  html`<h4>What moves it most</h4>
    ${
      slip.answer === null || slip.stale
        ? html`<button type="button" class="quiet" ?disabled=${slip.progress !== null} @click=${ask}>
            ${slip.progress !== null ? "Working it out…" : "Turn each assumption up a tenth"}
          </button>`
        : html`<div class="scroll" tabindex="0" role="group" aria-label="What a tenth more of each does">
            <table>
              <thead>
                <tr>
                  <th scope="col">Assumption</th>
                  <th scope="col">Now</th>
                  <th scope="col">Turned</th>
                  <th scope="col">Median days</th>
                  <th scope="col">Change</th>
                </tr>
              </thead>
              <tbody>
                ${slip.answer.sway.rows.map(
                  (row) =>
                    html`<tr>
                      <th scope="row">${row.name}</th>
                      <td>${figure(row.now)} ${row.unit}</td>
                      <td>${figure(row.turned)} ${row.unit}</td>
                      <td>${sayDays(row.p50Turned, slip.answer!.sway.horizon_days, locale())}</td>
                      <td>${saySigned(row.change_days, locale(), 1)}</td>
                    </tr>`,
                )}
              </tbody>
            </table>
          </div>`
    }
    ${slip.fault === null ? nothing : html`<p class="fault">${slip.fault}</p>`}`;
