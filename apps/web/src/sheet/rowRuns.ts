import type { JobInput } from "@stayput/job";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { LightElement } from "../fields/lightElement.ts";
import type { Found } from "../fields/pickList.ts";
import { insertAt } from "../store/at.ts";
import { edit } from "../store/edit.ts";
import { onStrip } from "../strip/uses.ts";
import type { RemoteAnswers } from "../worker/startAnswers.ts";
import { meant, type Card } from "./card.ts";
import { commonLoads } from "./commonLoads.ts";
import { newId } from "./newId.ts";
import { withoutLoad } from "./withoutLoad.ts";

type LoadInput = JobInput["loads"][number];
type ApplianceInput = Extract<LoadInput, { kind: "appliance" }>;

/** One of the catalogue's by its id, or one of the typist's own. */
interface FoundLoad extends Found {
  readonly own?: Pick<ApplianceInput, "watts" | "use">;
}

const evening = { from: 18, to: 22 };

/** Row 2: the load list, and the ways to add to it. */
@customElement("row-runs")
export class RowRuns extends LightElement {
  @property({ attribute: false }) card!: Card;
  @property({ attribute: false }) answers!: RemoteAnswers;

  protected override render(): TemplateResult {
    const { loads } = this.card.job;
    return html`${loads.length < 3 ? this.common() : nothing}
      ${
        loads.length === 0
          ? nothing
          : html`<ul class="loads">
              ${repeat(
                loads,
                ({ id }) => id,
                (load, index) =>
                  html`<li>
                    <load-line .card=${this.card} .load=${load} .index=${index} .Wh_day=${this.useOf(load)}></load-line>
                  </li>`,
              )}
            </ul>`
      }
      <div class="line adding">
        <pick-list
          class="field wide"
          label="Add what runs"
          hint="Type it: fri…, kettle, pump 3 A"
          .find=${(text: string) => this.findLoads(text)}
          @pick=${({ detail }: CustomEvent<FoundLoad>) => this.add(detail)}
        ></pick-list>
      </div>`;
  }

  /** What it takes with the first setup that runs it [Wh a day]. */
  private useOf({ id }: LoadInput): number | null {
    const setups = this.card.answer?.setups ?? [];
    const found = setups.flatMap(({ use_Wh_day }) => use_Wh_day.byLoad.filter((load) => load.id === id));
    return found[0]?.Wh_day ?? null;
  }

  private common(): TemplateResult {
    const has = (id: string) => this.card.job.loads.some((load) => load.id === id);
    return html`<fieldset class="common">
      <legend>What most vans run: tick what yours does</legend>
      ${commonLoads.map(
        ({ id, name }) =>
          html`<label class="tick"
            ><input type="checkbox" .checked=${has(id)} @change=${() => this.tick(id, has(id))} />${name}</label
          >`,
      )}
    </fieldset>`;
  }

  private tick(id: string, on: boolean): void {
    if (on) edit(this, "Take out a load", (job) => withoutLoad(job, id));
    else void this.addRow(id, id);
  }

  /** Rows of the catalogue, and what was typed as a load of its own: first where it says what it draws, else last. */
  private async findLoads(text: string): Promise<FoundLoad[]> {
    const volts_V = meant(this.card, ["setups", 0, "bank", "nominal_V"]) === 24 ? 24 : 12;
    const { rows, typed } = await this.answers.loadsFor(text, volts_V);
    const found = rows.map(({ id, name, draw }) => ({ id, title: name, note: draw }));
    if (typed !== null) {
      const { watts, allDay, said } = typed;
      const own = { watts, use: [allDay ? { from: 0, to: 24 } : evening] };
      return [{ id: "", title: typed.name === "" ? "Something else" : typed.name, note: said, own }, ...found];
    }
    const title = text.trim();
    return title === "" ? found : [...found, { id: "", title, note: "something else: 20 W, to be changed" }];
  }

  private add({ id, title, own = { watts: 20, use: [evening] } }: FoundLoad): void {
    if (id !== "") return void this.addRow(id, this.freshId(id));
    this.put({ id: this.freshId(title), name: title.slice(0, 120), kind: "appliance", supply: "dc", ...own });
  }

  private freshId(stem: string): string {
    const { loads, setups } = this.card.job;
    const added = setups.flatMap((setup) => setup.loads?.add ?? []);
    return newId(
      stem,
      [...loads, ...added].map(({ id }) => id),
    );
  }

  private async addRow(rowId: string, id: string): Promise<void> {
    const load = (await this.answers.loadFromRow(rowId, id)) as LoadInput | null;
    if (load !== null) this.put(plainer(load));
  }

  private put(load: LoadInput): void {
    edit(this, `Add ${load.name}`, (job) => insertAt(job, ["loads"], load));
  }
}

/** A row of the catalogue without the fields that say nothing, so that the job stays short to read. */
function plainer(load: LoadInput): LoadInput {
  if (load.kind !== "appliance") {
    const kept = Object.entries(load).filter(([, value]) => value !== null);
    return Object.fromEntries(kept) as LoadInput;
  }
  const { count, standby_W, surge_W, outside, only, use, ...rest } = load;
  return {
    ...rest,
    ...(count === undefined || count === 1 ? {} : { count }),
    ...(standby_W === undefined || standby_W === 0 ? {} : { standby_W }),
    ...(surge_W === undefined || surge_W === null ? {} : { surge_W }),
    ...(outside === undefined || outside === null ? {} : { outside }),
    ...(only === undefined || only === null ? {} : { only }),
    use: use.filter(onStrip).map((each) => plainUse(each as (typeof use)[number])),
  };
}

function plainUse(use: Extract<LoadInput, { kind: "appliance" }>["use"][number]): typeof use {
  const kept = Object.entries(use).filter(([key, value]) => !((key === "duty" || key === "everyDays") && value === 1));
  return Object.fromEntries(kept) as typeof use;
}
