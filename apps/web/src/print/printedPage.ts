import { chargeChart, sayMonth, usesChart, usesPictureOf } from "@stayput/charts";
import type { ComparedSetup, ExplainAnswer } from "@stayput/sim";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { chargeData } from "../bench/pictures.ts";
import { LightElement } from "../fields/lightElement.ts";
import { optionsTable } from "../sheet/rowOptions.ts";
import { sentence } from "../words/sentence.ts";
import type { Read } from "../worker/protocol.ts";

/** An A4 side within its margins, less a hair for rounding, at 96 dots an inch. */
const side_px = ((297 - 22 - 3) / 25.4) * 96;

/** The page that is handed over: A4, one side. Seen only in print. */
@customElement("printed-page")
export class PrintedPage extends LightElement {
  @property({ attribute: false }) read: Read | null = null;
  @property({ attribute: false }) answer: ExplainAnswer | null = null;
  @property({ attribute: false }) compared: readonly ComparedSetup[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("beforeprint", this.fit);
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("beforeprint", this.fit);
  }

  /**
   * Many setups or cautions make it longer than a side: then all of it is made a little smaller. Smaller print leaves wider
   * lines and pictures, so it takes a few goes.
   */
  private readonly fit = (): void => {
    let fit = 1;
    this.toggleAttribute("data-measured", true);
    for (let go = 0; go < 8; go++) {
      this.style.setProperty("--fit", String(fit));
      const tall_px = this.getBoundingClientRect().height;
      if (tall_px <= side_px) break;
      fit *= Math.min(0.99, side_px / tall_px);
    }
    this.toggleAttribute("data-measured", false);
  };

  protected override render(): TemplateResult | typeof nothing {
    const { read, answer } = this;
    if (read === null || answer === null) return nothing;
    const said = sentence(answer, read);
    const [first] = answer.setups;
    return html`<header>
        <p class="shop"><b>${read.job.workshop.name || "Workshop:"}</b> ${read.job.workshop.contact}</p>
        <p class="day">${new Intl.DateTimeFormat(undefined, { dateStyle: "long" }).format(new Date())}</p>
      </header>
      <h1>${read.job.title}</h1>
      <p class="for">
        ${read.job.customer.name === "" ? nothing : html`For ${read.job.customer.name}. `}${read.job.about}
      </p>
      <p class="sentence">${said.lead} ${said.takes}</p>
      <h2>How long it lasts</h2>
      ${chargeChart(chargeData(answer, read), { width_px: 700, height_px: 190, id: "printed-charge", locale: navigator.language })}
      <h2>Where it goes${answer.setups.length > 1 && first !== undefined ? `, ${first.name}` : ""}</h2>
      ${
        first === undefined
          ? nothing
          : usesChart(topRows(usesPictureOf(first, answer.horizon_days)), {
              width_px: 700,
              height_px: 60,
              id: "printed-uses",
              locale: navigator.language,
            })
      }
      <h2>Options side by side</h2>
      ${optionsTable(read, answer, this.compared, true)} ${cautionsOf(answer)}
      <footer>
        <p><b>Estimate for planning.</b> ${assumptions(read, answer)}</p>
        <p>
          Batteries can give very large currents, and mains, gas and lithium have rules of their own: have the work done
          to the local code by someone licensed for it.
        </p>
      </footer>`;
  }
}

/** Each once; the table counts them. */
function cautionsOf({ setups }: ExplainAnswer): TemplateResult | typeof nothing {
  const texts = [...new Set(setups.flatMap(({ cautions }) => cautions.map(({ text }) => text)))];
  if (texts.length === 0) return nothing;
  return html`<h2>To mind</h2>
    <ul class="mind">
      ${texts.slice(0, 4).map((text) => html`<li>${text}</li>`)}
    </ul>`;
}

/** Few enough rows to leave the page room. */
const topRows = (picture: ReturnType<typeof usesPictureOf>): ReturnType<typeof usesPictureOf> => {
  const rows = picture.rows.toSorted((a, b) => b.Wh_day - a.Wh_day);
  const rest = rows.slice(4);
  if (rest.length < 2) return picture;
  const others = {
    id: "others",
    name: `${rest.length} others`,
    Wh_day: rest.reduce((sum, row) => sum + row.Wh_day, 0),
  };
  return { ...picture, rows: [...rows.slice(0, 4), others] };
};

function assumptions({ place, study, notes }: Read, { draws, nights }: ExplainAnswer): string {
  const month = sayMonth(study.trip.month, navigator.language, "long");
  return `${place.name} in ${month}, ${nights} nights, parked from arrival at 15:00 for the days, as travelled for the chance; ${draws} drawn skies about the month's mean sun. ${notes.slice(0, 2).join(" ")} Sunshine: NASA Langley Research Center, SSE Release 6.0. Temperatures: Deutscher Wetterdienst, CLIMAT, processed.`;
}
