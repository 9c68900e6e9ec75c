import {
  chargeKind,
  chargePanelsKind,
  dayKind,
  runKind,
  sayNumber,
  sayPercent,
  usesKind,
  usesPictureOf,
  yearKind,
  yearPictureOf,
  type DayPicture,
} from "@stayput/charts";
import type { ChargeRunAnswer, ExplainAnswer, SetupAnswer } from "@stayput/sim";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { LightElement } from "../fields/lightElement.ts";
import type { Card } from "../sheet/card.ts";
import { sentence, type Said } from "../words/sentence.ts";
import type { Read } from "../worker/protocol.ts";
import type { LongQuestion } from "../worker/askLong.ts";
import type { AnyPicture } from "./benchPicture.ts";
import type { LongDesk } from "./longDesk.ts";
import { chargeData, runData } from "./pictures.ts";
import { sizeView } from "./sizeView.ts";
import { workingView, type Input } from "./workingView.ts";
import { locale } from "../words/locale.ts";

/** Row 4: what the job comes to, always live. Computes nothing: it places what the worker answered. */
@customElement("the-bench")
export class TheBench extends LightElement {
  @property({ attribute: false }) card!: Card;
  @property({ attribute: false }) read: Read | null = null;
  @property({ attribute: false }) answer: ExplainAnswer | null = null;
  @property({ attribute: false }) days: readonly DayPicture[] = [];
  @property({ attribute: false }) desk!: LongDesk;
  /** counts the desk's news, so that they are drawn */
  @property({ type: Number }) news = 0;
  /** the drawn skies are of the job before */
  @property({ type: Boolean }) stale = false;
  @property({ attribute: false }) empty = "";
  @state() private chosen = "";
  @state() private chemistry = "";
  @state() private sizeKind: AnyPicture | null = null;

  private get faulty(): boolean {
    return this.card.faults.size > 0;
  }

  protected override render(): TemplateResult {
    const { read, answer } = this;
    if (read === null || answer === null) return html`<p class="invite">${this.empty}</p>`;
    const said = sentence(answer, read);
    return html`<div class="answer ${this.stale || this.faulty ? "stale" : ""}">${this.sentence(said)}</div>
      ${this.howLong(answer, read)} ${this.cautions(answer)} ${this.chooser(answer)} ${this.aDay(answer)}
      ${this.whereItGoes(answer)} ${this.roundTheYear(read)} ${this.sizes(read)} ${this.chargeRun(read)}`;
  }

  private sentence({ lead, takes, others }: Said): TemplateResult {
    return html`<p class="sentence" aria-live="polite">${lead} <span>${takes}</span></p>
      ${others.map(({ name, says }) => html`<p class="other"><b>${name}</b>: ${says}.</p>`)}`;
  }

  /** Each said once, with the setups that it is of. */
  private cautions({ setups }: ExplainAnswer): TemplateResult | typeof nothing {
    const wiring = this.desk.slip({ kind: "wiring" }).answer?.wiring ?? [];
    const all = [...setups, ...wiring].flatMap(({ name, cautions }) => cautions.map(({ text }) => ({ name, text })));
    const texts = [...new Set(all.map(({ text }) => text))];
    if (texts.length === 0) return nothing;
    return html`<section class="cautions" aria-label="Cautions">
      <h3>Mind</h3>
      <ul>
        ${texts.map((text) => html`<li>${text} <i>${namesOf(all, text)}</i></li>`)}
      </ul>
    </section>`;
  }

  private howLong(answer: ExplainAnswer, read: Read): TemplateResult {
    const apart = this.clientWidth < 520 && answer.setups.length > 1;
    return html`<bench-picture
      heading="How long it lasts"
      name="how-long-it-lasts"
      .kind=${apart ? chargePanelsKind : chargeKind}
      .data=${chargeData(answer, read)}
      .more=${{ showAverage: this.stale }}
      .stale=${this.stale || this.faulty}
      .height_px=${apart ? 180 * answer.setups.length : 340}
      .note=${`${read.place.name}; estimate for planning`}
      .below=${html`<p class="note">
          Line: the middle sky. Grey: eight skies in ten. Square: when it goes flat under the middle sky; the rule
          through it, eight in ten.
        </p>
        ${workingView("days", this.inputs(answer, read), this.sway())}`}
    ></bench-picture>`;
  }

  private get setup(): string {
    const ids = this.answer?.setups.map(({ id }) => id) ?? [];
    return ids.includes(this.chosen) ? this.chosen : (ids[0] ?? "");
  }
  private get setupAnswer(): SetupAnswer | undefined {
    return this.answer?.setups.find(({ id }) => id === this.setup);
  }

  private chooser({ setups }: ExplainAnswer): TemplateResult | typeof nothing {
    if (setups.length < 2) return nothing;
    return html`<fieldset class="chooser">
      <legend>A day, where it goes, sizes and charge run are of</legend>
      ${setups.map(
        ({ id, name }) =>
          html`<label
            ><input
              type="radio"
              name="bench-setup"
              .checked=${id === this.setup}
              @change=${() => (this.chosen = id)}
            />${name}</label
          >`,
      )}
    </fieldset>`;
  }

  /** What a picture is of, and of which setup where there are several. */
  private ofSetup(heading: string): string {
    const several = (this.answer?.setups.length ?? 0) > 1;
    return several ? `${heading}: ${this.setupAnswer?.name ?? ""}` : heading;
  }

  private aDay(answer: ExplainAnswer): TemplateResult {
    const day = this.days[answer.setups.findIndex(({ id }) => id === this.setup)];
    return html`<bench-picture
      .heading=${this.ofSetup("A day of it")}
      name="a-day-of-it"
      .kind=${dayKind}
      .data=${day ?? null}
      .stale=${this.faulty}
      .height_px=${320}
      .below=${workingView("day", [], null)}
    ></bench-picture>`;
  }

  private whereItGoes(answer: ExplainAnswer): TemplateResult {
    const setup = this.setupAnswer;
    return html`<bench-picture
      .heading=${this.ofSetup("Where it goes")}
      name="where-it-goes"
      .kind=${usesKind}
      .data=${setup === undefined ? null : usesPictureOf(setup, answer.horizon_days)}
      .stale=${this.faulty}
      .height_px=${60}
      .below=${workingView("uses", setup === undefined ? [] : useInputs(setup), null)}
    ></bench-picture>`;
  }

  private roundTheYear(read: Read): TemplateResult {
    const { answer, stale, progress, fault } = this.desk.slip({ kind: "year" });
    const { nights, month } = read.study.trip;
    return html`<bench-picture
      heading="Round the year"
      name="round-the-year"
      .kind=${yearKind}
      .data=${answer === null ? null : yearPictureOf(answer.year, answer.horizon_days, { nights, month })}
      .stale=${stale || this.faulty}
      .height_px=${280}
      .empty=${fault ?? (progress === null ? "Comes once the drawn skies are in." : "Going round the months…")}
      .below=${workingView("year", [], null)}
    ></bench-picture>`;
  }

  private sizes(read: Read): TemplateResult {
    const question = { kind: "sizes", setup: this.setup } as const;
    if (this.desk.slip(question).progress !== null) void this.fetchSizeKind();
    return sizeView({
      host: this,
      card: this.card,
      read,
      setup: this.setup,
      heading: this.ofSetup("What size"),
      slip: this.desk.slip(question),
      kind: this.sizeKind,
      chemistry: this.chemistry,
      choose: (chemistry) => (this.chemistry = chemistry),
      ask: () => this.ask(question),
      cancel: () => this.desk.cancel(question),
    });
  }

  private async fetchSizeKind(): Promise<void> {
    if (this.sizeKind !== null) return;
    const { sizeKind } = await import("./sizeKind.ts");
    this.sizeKind = sizeKind;
  }

  private chargeRun(read: Read): TemplateResult {
    const { answer, stale, fault } = this.desk.slip({ kind: "wiring" });
    const wiring = answer?.wiring.find(({ id }) => id === this.setup);
    const feed = read.study.setups.find(({ id }) => id === this.setup)?.feed;
    const charge = wiring?.charge ?? null;
    const minimum_V = feed?.kind === "converter" ? feed.minInput_V : undefined;
    return html`<bench-picture
        .heading=${this.ofSetup("Charge run")}
        name="charge-run"
        .kind=${runKind}
        .data=${charge === null ? null : runData(charge, minimum_V)}
        .stale=${stale || this.faulty}
        .height_px=${260}
        .empty=${fault ?? (feed === null ? "Nothing charges this bank on the road." : "Following the cable…")}
        .below=${html`${
          charge === null
            ? nothing
            : html`<ul class="says">
                  ${shortOf(charge).map((text) => html`<li>${text}</li>`)}
                </ul>
                <details class="more">
                  <summary>All of it in words</summary>
                  <ul class="says">
                    ${charge.sentences.map((text) => html`<li>${text}</li>`)}
                  </ul>
                </details>`
        }${workingView("run", [], null)}`}
      ></bench-picture>
      ${
        wiring === undefined || charge === null
          ? nothing
          : html`<aside class="safety" aria-label="Before anyone touches the wiring">
              <ul>
                ${wiring.safety.map(({ where, text }) => html`<li><b>${where.charAt(0).toUpperCase()}${where.slice(1)}.</b> ${text}</li>`)}
              </ul>
            </aside>`
      }`;
  }

  private ask(question: LongQuestion): void {
    this.desk.ask(this.card.job, [question]);
  }

  private sway(): Parameters<typeof workingView>[2] {
    const question = { kind: "sway", setup: this.setup } as const;
    return { slip: this.desk.slip(question), ask: () => this.ask(question) };
  }

  private inputs(answer: ExplainAnswer, { study, place }: Read): Input[] {
    const { climate, trip } = study;
    const i = trip.month - 1;
    const number = (value: number | undefined, digits = 1) => sayNumber(value ?? 0, locale(), digits);
    return [
      {
        name: "Place",
        value: `${place.name}, ${number(Math.abs(climate.latitude_deg))}° ${climate.latitude_deg < 0 ? "south" : "north"}`,
      },
      { name: "Sun on the flat, mean", value: `${number(climate.ghi_kWh_m2_day[i], 2)} kWh/m² a day` },
      { name: "Air by day and night, mean", value: `${number(climate.tmax_C[i])} and ${number(climate.tmin_C[i])} °C` },
      { name: "Charge on arrival", value: sayPercent(trip.startCharge, locale()) },
      ...study.setups.map((setup) => ({
        name: setup.name,
        value: `${number(setup.bank.capacity_Ah)} Ah ${setup.bank.nominal_V} V, ${sayPercent(setup.bank.condition)} left; ${number(
          setup.arrays.reduce((sum, { watts }) => sum + watts, 0),
          0,
        )} W of panels; ${number(answer.setups.find(({ id }) => id === setup.id)?.use_Wh_day.total, 0)} Wh a day`,
      })),
      { name: "Skies drawn", value: `${answer.draws}` },
    ];
  }
}

/** What it delivers, the cable to use and the fuses. */
const shortOf = ({ sentences, use, fuses }: ChargeRunAnswer): string[] => [
  ...new Set([
    ...sentences.slice(0, 1),
    ...(use === null ? [] : [use.sentence]),
    ...fuses.map(({ sentence }) => sentence),
  ]),
];

const namesOf = (all: readonly { name: string; text: string }[], text: string): string =>
  [...new Set(all.filter((each) => each.text === text).map(({ name }) => name))].join(", ");

const useInputs = ({ use_Wh_day, losses_Wh_day }: SetupAnswer): Input[] => [
  { name: "All loads", value: `${sayNumber(use_Wh_day.total, locale())} Wh a day` },
  { name: "Of it lost in the inverter", value: `${sayNumber(losses_Wh_day.inverter, locale())} Wh a day` },
  { name: "Lost in charging", value: `${sayNumber(losses_Wh_day.charging, locale())} Wh a day` },
];
