import { html, type TemplateResult } from "lit";

/** Something to be said in words, with what can be done about it. */
export interface Notice {
  /** a later notice about the same thing takes its place */
  readonly about: string;
  readonly words: string;
  readonly deeds: readonly Deed[];
  /** something may be lost */
  readonly grave?: boolean;
}

export interface Deed {
  readonly label: string;
  readonly run: () => void;
}

export const noticeSlips = (notices: readonly Notice[], dismiss: (notice: Notice) => void): TemplateResult =>
  html`<div class="slips" role="status">
    ${notices.map(
      (notice) =>
        html`<div class="slip ${notice.grave === true ? "grave" : ""}">
          <p>${notice.words}</p>
          <div class="buttons">
            ${notice.deeds.map(
              ({ label, run }) =>
                html`<button
                  type="button"
                  @click=${() => {
                    dismiss(notice);
                    run();
                  }}
                >
                  ${label}
                </button>`,
            )}
            <button type="button" class="quiet" @click=${() => dismiss(notice)}>
              Close<span class="unseen">: ${notice.words}</span>
            </button>
          </div>
        </div>`,
    )}
  </div>`;
