import type { Fault } from "@stayput/job";
import { html, nothing, type TemplateResult } from "lit";

/** Every fault in words, each leading to its blank, so that none is out of sight. */
export function faultList(faults: readonly Fault[]): TemplateResult | typeof nothing {
  if (faults.length === 0) return nothing;
  return html`<div class="faults" role="status">
    <p>
      ${faults.length === 1 ? "One blank needs another look" : `${faults.length} blanks need another look`}; until then
      the answer below is the one from before.
    </p>
    <ul>
      ${faults.map(
        ({ path, given, accepted }) =>
          html`<li>
            <button type="button" class="link" @click=${() => goTo(path)}>${placeOf(path)}</button>:
            ${given === "null" ? "nothing" : given} was given; accepted is
            ${accepted.replace(/, or null$/, ", or nothing")}.
          </li>`,
      )}
    </ul>
  </div>`;
}

function goTo(path: string): void {
  const input = document.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`);
  for (let box = input?.parentElement; box; box = box.parentElement)
    if (box instanceof HTMLDetailsElement) box.open = true;
  input?.scrollIntoView({ block: "center" });
  input?.focus();
}

/** A blank by its label and what it belongs to. */
function placeOf(path: string): string {
  const input = document.querySelector(`[data-path="${CSS.escape(path)}"]`);
  const group = input?.closest("[aria-label]")?.getAttribute("aria-label");
  const label = input?.closest(".field")?.querySelector("label")?.textContent;
  // a quiet label names its line already
  const names = label?.startsWith(`${group}: `) === true ? [label] : [group, label];
  return names.filter(Boolean).join(", ") || path;
}
