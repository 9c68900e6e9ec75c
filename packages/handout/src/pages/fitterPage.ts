import { sayNumber } from "@stayput/charts";
import type { StandardRow } from "@stayput/sim";
import { html, nothing, type TemplateResult } from "lit";
import { loomRows, safetyRows, standardRows, standingsOf } from "../facts/loom.ts";
import { optionsOf, type Lettered, type Option } from "../facts/options.ts";
import { partsList, type PartRow } from "../facts/partsList.ts";
import { chargeColumns, chargeRows } from "../facts/chargeRows.ts";
import { faultRange_kA, wireRows } from "../facts/wireRows.ts";
import { forFitter } from "../facts/toMind.ts";
import type { Handover } from "../handover.ts";
import { plainHead, titled } from "./masthead.ts";
import { letterMark, letterMarks, numbered, ruled, type Cell } from "./tables.ts";

/**
 * The fitter's page: the parts of each option, the runs of wire, the fuses, and what to pull while the loom is open. A4;
 * one side for an ordinary job, running on where there are many options.
 * @throws RangeError where an answer is missing, or the date or the logo is not as it must be
 */
export function fitterPage(handover: Handover): TemplateResult {
  const options = optionsOf(handover);
  const {
    locale = "en",
    job: { currency },
  } = handover;
  return html`<article class="handout sheet fitter">
    ${plainHead(handover, "For the fitter")} ${titled(handover, "")}
    ${numbered(1, "Parts", sideBySide(partsList(options, { currency, locale }), options, "list"))}
    ${numbered(2, "Charge run", chargeTable(chargeRows(options, locale), options))}
    ${numbered(3, "Wire and fuses", wire(options, locale))}${numbered(4, "While the loom is open", loom(options))}
    ${numbered(5, "To mind", minded(options))}${credit(options)}
  </article>`;
}

/** Parts side by side, a few options to a table. */
const columnsATable = 4;

function sideBySide(
  rows: readonly PartRow[],
  options: readonly Option[],
  kind: "list" | "wire",
): TemplateResult | TemplateResult[] {
  if (rows.length === 0) return html`<p>None.</p>`;
  const starts = options.map((_, i) => i).filter((i) => i % columnsATable === 0);
  return starts.map((start) => {
    const shown = options.slice(start, start + columnsATable);
    const columns = [
      { head: "" },
      ...shown.map(({ letter, name }) => ({
        head: html`${letterMark(letter)}${kind === "list" ? html`<bdi>${name}</bdi>` : nothing}`,
      })),
    ];
    return ruled(
      columns,
      rows.map(({ part, cells }) => [
        part,
        ...shown.map(({ index }) => partCell(cells, index, options[0]?.letter ?? "")),
      ]),
      `parts ${kind}`,
    );
  });
}

/** What is as with the first option is said to be; what is not stands bold, for that is the work. */
function partCell(cells: readonly (readonly string[])[], index: number, first: string): Cell {
  const lines = cells[index] ?? [];
  const same = index > 0 && lines.join("\n") === (cells[0] ?? []).join("\n");
  if (lines.length === 0) return html`<span class="none">–</span>`;
  if (same) return html`<span class="none">as ${first}</span>`;
  const body = lines.map((line) => html`<span class="line">${line}</span>`);
  return index > 0 ? html`<span class="changed">${body}</span>` : html`${body}`;
}

function chargeTable(rows: readonly Lettered<readonly string[]>[], options: readonly Option[]): TemplateResult {
  if (rows.length === 0) return html`<p>Nothing charges the bank on the road.</p>`;
  return ruled(
    [{ head: "" }, ...chargeColumns.map((head) => ({ head }))],
    rows.map(({ letters, row }) => [lettersCell(letters, options.length), ...row]),
    "runs",
  );
}

const lettersCell = (letters: readonly string[], all: number): Cell =>
  letters.length === all && all > 1 ? html`<span class="none">all</span>` : html`${letters.map(letterMark)}`;

function wire(options: readonly Option[], locale: string): TemplateResult {
  const fault = faultRange_kA(options);
  const short =
    fault === null
      ? ""
      : `A dead short could draw ${sayRangeOf(fault, locale)} kA at the batteries: each kind of fuse is the weakest that still opens it.`;
  return html`${sideBySide(wireRows(options, locale), options, "wire")}
    <p class="note">
      Metres are of single conductor, there and back, for 3 % drop and the amps it carries; gauge (AWG) in brackets;
      “about” is a usual length, for the job gives none. Measure all lengths on the vehicle. ${short}
    </p>`;
}

function sayRangeOf([least, most]: readonly [number, number], locale: string): string {
  const [low, high] = [sayNumber(least, locale, 1), sayNumber(most, locale, 1)];
  return low === high ? low : `${low} to ${high}`;
}

const raised = ["¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"] as const;

function loom(options: readonly Option[]): TemplateResult {
  const rows = loomRows(options);
  if (rows.length === 0) return html`<p>Nothing is pulled for a charge run.</p>`;
  const standings = standingsOf(rows.map(({ row }) => row));
  const mark = (standing: string) => raised[standings.indexOf(standing)] ?? "";
  return html`<ul class="ticks">
      ${rows.map(
        ({ letters, row }) =>
          html`<li>
            <span class="box"></span>${letterMarks(letters, options.length)}<b>${row.item}.</b>
            ${row.reason}${mark(row.standing)}
          </li>`,
      )}
    </ul>
    <p class="note">${standings.map((standing) => `${mark(standing)} ${standing}`).join("; ")}.</p>`;
}

function minded(options: readonly Option[]): TemplateResult {
  const cautions = forFitter(options).map(({ letters, row }) => ({ letters, text: row }));
  const safety = safetyRows(options).map(({ letters, row }) => ({
    letters,
    text: `${capital(row.where)}: ${row.text}`,
  }));
  return html`<ul class="marks columns">
    ${[...cautions, ...safety].map(
      ({ letters, text }) => html`<li>${letterMarks(letters, options.length)}${text}</li>`,
    )}
  </ul>`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function credit(options: readonly Option[]): TemplateResult | typeof nothing {
  const standards = standardRows(options);
  if (standards.length === 0) return nothing;
  const table = options.flatMap(({ wired }) => wired?.charge ?? wired?.others[0] ?? wired?.fridges[0] ?? [])[0];
  const ampacity =
    table === undefined ? "" : `Ampacity: ${table.ampacityTable.name} (${table.ampacityTable.standing}). `;
  return html`<footer class="small">
    <p>
      <b>Estimate for planning; local codes and licensed trades decide.</b> ${ampacity}Where to look:
      ${whereToLook(standards)}
    </p>
  </footer>`;
}

/** Standards by how far to trust what is said of them, so that it is said once. */
const whereToLook = (standards: readonly StandardRow[]): string =>
  standingsOf(standards)
    .map((standing) => {
      const named = standards
        .filter((row) => row.standing === standing)
        .map(({ name, covers }) => `${name}, ${covers}`);
      return `${named.join("; ")} (${standing}).`;
    })
    .join(" ");
