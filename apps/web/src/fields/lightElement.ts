import { LitElement } from "lit";

/** Renders into the page itself: one style sheet, labels and errors that point at each other, and one printed page. */
export class LightElement extends LitElement {
  protected override createRenderRoot(): HTMLElement {
    return this;
  }
}

let count = 0;
/** An id that nothing else on the page has. */
export const freshId = (stem: string): string => `${stem}-${++count}`;
