import { html, nothing, type TemplateResult } from "lit";
import { insertAt, removeAt, type Keys } from "../store/at.ts";
import { edit, set } from "../store/edit.ts";
import { faultNote } from "./card.ts";
import { group, wasPart, type Column } from "./column.ts";

type Feed = NonNullable<Column["setup"]["feed"]>;
type Piece = Feed["path"][number];

const kinds = { none: "none", relay: "a relay", converter: "a DC-DC charger" } as const;

/** What charges the bank on the road: the source, the way to the bank, and what stands at its end. */
export function feedFields(column: Column): TemplateResult {
  const { card, setup, index, host, at, blank: b } = column;
  const feed = setup.feed ?? null;
  const choices = [
    { value: "none", label: "none", stands: undefined },
    { value: "relay", label: "a relay", stands: turned(feed, "relay") },
    { value: "converter", label: "a DC-DC charger", stands: turned(feed, "converter") },
  ];
  return group(
    "Road feed",
    html`<choice-field
        class="field"
        label="Charged on the road by"
        .keys=${at(["feed"])}
        .value=${feed?.kind ?? "none"}
        .choices=${choices}
        .was=${wasPart(card, index, "feed", (value) => kinds[(value as Feed | null | undefined)?.kind ?? "none"])}
        @pick=${(event: CustomEvent) => {
          event.preventDefault();
          set(host, "Change road feed", at(["feed"]), event.detail);
        }}
      ></choice-field>
      ${
        feed === null
          ? nothing
          : html`${
              feed.kind === "converter"
                ? html`<div class="pair">
                    ${b(["feed", "rated_A"], "Output", { unit: "A" })}${b(["feed", "count"], "How many in parallel")}
                    ${b(["feed", "efficiency"], "Efficiency", { kind: "percent", unit: "%" })}
                    ${b(["feed", "minInput_V"], "Stops below", { unit: "V in" })}
                  </div>`
                : nothing
            }
            ${source(column)} ${path(column, feed)}`
      }`,
  );
}

/** The feed as the other kind, its source and path kept. */
function turned(feed: Feed | null, kind: "relay" | "converter"): unknown {
  const path = feed?.path ?? [
    { kind: "fuse", rated_A: 50 },
    { kind: "cable", length_m: 7, area_mm2: 10 },
    { kind: "plug", limit_A: 50 },
  ];
  const source = feed?.source === undefined ? {} : { source: feed.source };
  return kind === "relay" ? { kind, ...source, path } : { kind, rated_A: 25, ...source, path };
}

function source({ blank: b }: Column): TemplateResult {
  return html`<details class="more">
    <summary>The vehicle’s side</summary>
    <div class="pair">
      ${b(["feed", "source", "volts"], "Alternator volts", { unit: "V", standard: "14.2" })}
      ${b(["feed", "source", "spare_A"], "Amps to spare", { unit: "A" })}
      ${b(["feed", "source", "low_V"], "If variable, sits at", { unit: "V", standard: "fixed" })}
      ${b(["feed", "source", "lowShare"], "For this much of a drive", { kind: "percent", unit: "%" })}
    </div>
  </details>`;
}

function path(column: Column, feed: Feed): TemplateResult {
  const { card, host, at } = column;
  const add = (label: string, piece: unknown) =>
    html`<button
      type="button"
      class="quiet"
      @click=${() => edit(host, `Add ${label}`, (job) => insertAt(job, at(["feed", "path"]), piece))}
    >
      + ${label}
    </button>`;
  return html`<details class="more">
    <summary>The way to the bank: ${feed.path.map(pieceText).join(", ") || "nothing yet"}</summary>
    <ol class="path">
      ${feed.path.map((piece, i) => html`<li>${pieceFields(column, piece, i)}</li>`)}
    </ol>
    ${faultNote(card, at(["feed", "path"]))}
    <div class="buttons">
      ${add("fuse", { kind: "fuse", rated_A: 50 })} ${add("cable", { kind: "cable", length_m: 5, area_mm2: 16 })}
      ${add("plug", { kind: "plug", limit_A: 50 })} ${add("fed load", { kind: "load", amps: 10 })}
    </div>
  </details>`;
}

function pieceText(piece: Piece): string {
  switch (piece.kind) {
    case "fuse":
      return `${piece.rated_A} A fuse`;
    case "cable":
      return `${piece.length_m} m of ${sizeText(piece)}`;
    case "plug":
      return `${piece.limit_A} A plug`;
    case "load":
      return `${piece.name ?? "a load"}, ${piece.amps} A`;
  }
}

function sizeText({ area_mm2, awg, autoSize_mm }: Extract<Piece, { kind: "cable" }>): string {
  if (area_mm2 !== undefined) return typeof area_mm2 === "number" ? `${area_mm2} mm²` : String(area_mm2);
  if (awg !== undefined) return `${awg} AWG`;
  return autoSize_mm === undefined ? "no size yet" : `${autoSize_mm} mm auto`;
}

function pieceFields(column: Column, piece: Piece, i: number): TemplateResult {
  const { card, host, at, blank: b } = column;
  const keys: Keys = ["feed", "path", i];
  const fields: Record<Piece["kind"], () => TemplateResult> = {
    fuse: () => html`${b([...keys, "rated_A"], "Fuse", { unit: "A" })}`,
    cable: () =>
      html`${b([...keys, "length_m"], "Cable, one way", { unit: "m" })}
      ${
        piece.kind === "cable" && piece.awg !== undefined
          ? b([...keys, "awg"], "Gauge", { kind: "text", unit: "AWG" })
          : piece.kind === "cable" && piece.autoSize_mm !== undefined
            ? b([...keys, "autoSize_mm"], "Auto cable", { unit: "mm" })
            : b([...keys, "area_mm2"], "Copper", { unit: "mm²" })
      }`,
    plug: () =>
      html`${b([...keys, "limit_A"], "Plug carries", { unit: "A" })}${b([...keys, "resistance_mOhm"], "Resistance", { unit: "mΩ" })}`,
    load: () =>
      html`${b([...keys, "amps"], "Fed on the way", { unit: "A" })}${b([...keys, "name"], "Which is", { kind: "text" })}`,
  };
  return html`<div class="piece">
      ${fields[piece.kind]()}
      <button
        type="button"
        class="quiet remove"
        aria-label="Remove ${pieceText(piece)}"
        title="Remove"
        @click=${() => edit(host, `Remove ${pieceText(piece)}`, (job) => removeAt(job, at(["feed", "path"]), i))}
      >
        ×
      </button>
    </div>
    ${faultNote(card, at(keys))}`;
}
