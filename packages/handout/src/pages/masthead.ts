import { html, nothing, type TemplateResult } from "lit";
import { checkedLogo } from "../file/logo.ts";
import type { Handover } from "../handover.ts";
import { bounded } from "../words/bounded.ts";
import { dateSaid } from "../words/figures.ts";

/** The head of a page: the workshop with its mark, what the page is, and the day. */
export function masthead({ job: { workshop }, logo, date, locale = "en" }: Handover, kind: string): TemplateResult {
  const mark = logo ?? null;
  const [name, contact] = [bounded(workshop.name, 60), bounded(workshop.contact, 120)];
  return html`<header class="masthead">
    ${mark === null ? nothing : html`<img class="logo" src=${checkedLogo(mark)} alt=${name === "" ? "Workshop" : name} />`}
    <p class="shop">
      ${name === "" ? nothing : html`<b><bdi>${name}</bdi></b>`}${contact === "" ? nothing : html`<bdi>${contact}</bdi>`}
    </p>
    <p class="stamp"><b>${kind}</b>${dateSaid(date, locale)}</p>
  </header>`;
}

/** What the job is called, and for whom. */
export function titled({ job: { title, customer } }: Handover, where: string): TemplateResult {
  const name = bounded(customer.name, 60);
  return html`<div class="titled">
    <h1><bdi>${bounded(title, 90)}</bdi></h1>
    <p>
      ${
        name === ""
          ? nothing
          : html`For <b><bdi>${name}</bdi></b
              >. `
      }${where}
    </p>
  </div>`;
}
