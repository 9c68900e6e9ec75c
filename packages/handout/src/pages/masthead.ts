import { html, nothing, type TemplateResult } from "lit";
import { checkedLogo } from "../file/logo.ts";
import type { Handover } from "../handover.ts";
import { bounded } from "../words/bounded.ts";
import { dateSaid } from "../words/figures.ts";

/** The head of a page: the workshop with its mark, what the page is, and the day. */
export function masthead({ job: { workshop }, logo, date, locale = "en" }: Handover, kind: string): TemplateResult {
  const [name, contact] = [bounded(workshop.name, 50), bounded(workshop.contact, 90)];
  const mark = logo === undefined || logo === null ? nothing : markOf(checkedLogo(logo), name);
  return html`<header class="masthead">
    ${mark}
    <p class="shop">
      <b><bdi>${name}</bdi></b
      ><bdi>${contact}</bdi>
    </p>
    <p class="stamp"><b>${kind}</b>${dateSaid(date, locale)}</p>
  </header>`;
}

const markOf = (logo: string, name: string): TemplateResult =>
  html`<img class="logo" src=${logo} alt=${name === "" ? "Workshop" : name} />`;

/** The same in a line, for the workshop's own use. */
export const plainHead = ({ job: { workshop }, date, locale = "en" }: Handover, kind: string): TemplateResult =>
  html`<header class="masthead">
    <p class="shop">
      <b><bdi>${bounded(workshop.name, 50)}</bdi></b>
    </p>
    <p class="stamp"><b>${kind}</b>${dateSaid(date, locale)}</p>
  </header>`;

/** Whom it is for; empty where the job does not say. */
export const customerSaid = ({ customer }: Pick<Handover["job"], "customer">): string => bounded(customer.name, 40);

/** What the job is called, and for whom. */
export function titled({ job }: Handover, where: string): TemplateResult {
  const name = customerSaid(job);
  const whom =
    name === ""
      ? nothing
      : html`For <b><bdi>${name}</bdi></b
          >. `;
  return html`<div class="titled">
    <h1><bdi>${bounded(job.title, 90)}</bdi></h1>
    <p>${whom}${where}</p>
  </div>`;
}
