import type { DayPicture } from "@stayput/charts";
import type { Fault, JobInput } from "@stayput/job";
import type { ExplainAnswer } from "@stayput/sim";
import { html, nothing, type TemplateResult } from "lit";
import { customElement, state } from "lit/decorators.js";
import { LongDesk } from "./bench/longDesk.ts";
import { withOldBeyond, withOldWithout, withStaleBand } from "./bench/merged.ts";
import { LightElement } from "./fields/lightElement.ts";
import { isDark, turnLights } from "./look/theme.ts";
import type { Keeper } from "./keep/keeper.ts";
import { keptLogo, logoKey, type PrintSettings } from "./print/printSettings.ts";
import type { PrintedPage } from "./print/printedPage.ts";
import { sameOr, toPrintOf, type ToPrint } from "./print/toPrint.ts";
import { blank, type Card } from "./sheet/card.ts";
import { faultList } from "./sheet/faultList.ts";
import { emptyJob } from "./store/emptyJob.ts";
import type { EditDetail } from "./store/edit.ts";
import { JobStore } from "./store/jobStore.ts";
import { sentence } from "./words/sentence.ts";
import { startAnswers } from "./worker/startAnswers.ts";
import type { LongQuestion } from "./worker/askLong.ts";
import type { Read, Update } from "./worker/protocol.ts";

/** The whole sheet: keeps the job, asks the worker after every change, and hands plain data to the rows. */
@customElement("stay-sheet")
export class StaySheet extends LightElement {
  store = new JobStore(emptyJob);
  readonly answers = startAnswers();
  private readonly desk = new LongDesk(startAnswers(), () => this.news++);
  @state() private job: JobInput = emptyJob;
  @state() private read: Read | null = null;
  @state() private answer: ExplainAnswer | null = null;
  @state() private days: readonly DayPicture[] = [];
  @state() private faults: readonly Fault[] = [];
  @state() private failure = "";
  @state() private stale = false;
  @state() private news = 0;
  @state() placeName = "";
  /** keeps the jobs of this device; null until the page has begun */
  @state() keeper: Keeper | null = null;
  @state() private dark = isDark();
  @state() private printSettings: PrintSettings = { fitter: false, logo: keptLogo() };
  private toPrint: ToPrint = { waiting: "" };
  /** how far the answer to the job as it stands has come */
  @state() private answered: "nothing" | "faults" | "average" | "drawn" | "whole" | "complete" = "nothing";
  private drawn: ExplainAnswer | null = null;
  private asked = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener("job-edit", this.edited as EventListener);
    this.addEventListener("job-settle", () => this.store.settle());
    window.addEventListener("keydown", this.shortcut);
    this.addEventListener("print-settings", (({ detail }: CustomEvent<PrintSettings>) => {
      this.printSettings = detail;
    }) as EventListener);
    window.addEventListener("storage", ({ key }) => {
      if (key === logoKey) this.printSettings = { ...this.printSettings, logo: keptLogo() };
    });
    this.open(this.store);
  }

  /** Shows another job, with its own history. */
  open(store: JobStore): void {
    this.store = store;
    store.subscribe(() => this.changed());
    this.changed();
  }

  private readonly edited = ({ detail }: CustomEvent<EditDetail>): void => {
    this.store.edit(detail.label, detail.change, detail.merge);
  };

  private readonly shortcut = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key === "z" && event.shiftKey) this.store.redo();
    else if (key === "y") this.store.redo();
    else if (key === "z") this.store.undo();
    else return;
    event.preventDefault();
  };

  private changed(): void {
    this.job = this.store.job;
    this.desk.outdate();
    this.stale = true;
    this.answered = "nothing";
    const asked = ++this.asked;
    performance.mark("job-changed");
    void this.answers.answer(this.job, this.allKnown(), (update: Update) => {
      if (asked === this.asked) this.take(update);
    });
    void this.namePlace();
  }

  /** Whether every setup has an answer to stand in until the new one is whole. */
  private allKnown(): boolean {
    const known = this.drawn?.setups.map(({ id }) => id) ?? [];
    return this.job.setups.every(({ id }) => known.includes(id));
  }

  private take(update: Update): void {
    this.answered = update.kind === "failed" ? "faults" : update.kind;
    switch (update.kind) {
      case "faults":
        this.faults = update.faults;
        return;
      case "failed":
        this.failure = update.message;
        return;
      case "average":
        this.faults = [];
        this.failure = "";
        this.read = update.read;
        this.days = update.days;
        this.answer = withStaleBand(update.answer, this.drawn);
        return;
      case "drawn":
        this.answer = this.drawn = withOldBeyond(update.answer, this.drawn);
        this.stale = false;
        return;
      case "whole":
        this.answer = this.drawn = withOldWithout(update.answer, this.drawn);
        return;
      case "complete":
        this.answer = this.drawn = update.answer;
        this.desk.ask(this.job, this.standing());
    }
  }

  /** What is always wanted, quickest first. */
  private standing(): LongQuestion[] {
    const setups = this.answer?.setups ?? [];
    const [from, to] = [setups[0]?.id, setups.at(-1)?.id];
    const upgrades: LongQuestion[] =
      from !== undefined && to !== undefined && from !== to ? [{ kind: "upgrades", from, to }] : [];
    return [{ kind: "wiring" }, { kind: "compare" }, ...upgrades, { kind: "year" }];
  }

  protected override updated(): void {
    // told to the page's own clock, so that the time from a change to its picture can be read off anywhere
    if (this.dataset["answered"] === this.answered) return;
    this.dataset["answered"] = this.answered;
    performance.mark(`answered-${this.answered}`);
  }

  private async namePlace(): Promise<void> {
    const { place } = this.job;
    if (!("id" in place) || place.id === "") {
      this.placeName = "";
      return;
    }
    const found = await this.answers.placeCalled(place.id);
    if (this.job.place !== place) return;
    this.placeName = found === null ? place.id : `${found.name}, ${found.country}`;
    this.dispatchEvent(new Event("place-named"));
  }

  protected override render(): TemplateResult {
    const { job, read, answer } = this;
    const faults = new Map(this.faults.map((fault) => [fault.path, fault]));
    const card: Card = { job, faults, read, answer };
    const empty = this.unanswerable();
    const shown = empty === "" ? answer : null;
    this.toPrint = sameOr(this.toPrint, this.toPrintNow(empty));
    return html`${this.head(card)}${this.pinned()}
      <main>
        <div class="sheet">
          ${this.about()}
          ${row(1, "Where and when", html`<row-where .card=${card} .answers=${this.answers} .placeName=${this.placeName}></row-where>`)}
          ${row(2, "What runs", html`<row-runs .card=${card} .answers=${this.answers}></row-runs>`)}
          ${row(3, "What is fitted", html`<row-fitted .card=${card}></row-fitted>`)}
        </div>
        <div class="bench">
          ${row(
            4,
            "The answer",
            html`${empty === "" ? faultList(this.faults) : nothing}
              ${this.failure === "" ? nothing : html`<p class="fault">${this.failure}</p>`}
              <the-bench
                .card=${card}
                .read=${empty === "" ? read : null}
                .answer=${shown}
                .days=${this.days}
                .desk=${this.desk}
                .news=${this.news}
                .stale=${this.stale}
                .empty=${empty}
              ></the-bench>`,
          )}
          ${row(
            5,
            "Options side by side",
            html`<row-options
              .read=${read}
              .answer=${shown}
              .desk=${this.desk}
              .news=${this.news}
              .stale=${this.stale || this.faults.length > 0}
            ></row-options>`,
          )}
          ${row(
            6,
            "Hand over",
            html`<row-hand-over
              .card=${{ ...card, answer: shown }}
              .toPrint=${this.toPrint}
              .settings=${this.printSettings}
              .print=${this.printPages}
            ></row-hand-over>`,
          )}
        </div>
      </main>
      <printed-page .toPrint=${this.toPrint} .settings=${this.printSettings}></printed-page>`;
  }

  private toPrintNow(wanting: string): ToPrint {
    // what was amiss with the job before may be mended
    const amiss = this.answered === "faults";
    return toPrintOf({
      wanting,
      faults: amiss ? this.faults : [],
      failure: amiss ? this.failure : "",
      read: this.read,
      explained: this.answered === "complete" ? this.answer : null,
      compared: this.desk.slip({ kind: "compare" }),
      wired: this.desk.slip({ kind: "wiring" }),
    });
  }

  private readonly printPages = async (): Promise<void> => {
    await this.querySelector<PrintedPage>("printed-page")?.laidOut();
    window.print();
  };

  /** What is still wanted before there can be an answer, in words; "" where there is enough. */
  private unanswerable(): string {
    const { place, loads } = this.job;
    const noPlace = "id" in place && place.id === "";
    if (noPlace && loads.length === 0) return "Name a place and tick what runs: the answer stands here at once.";
    if (noPlace) return "Name a place: the answer stands here at once.";
    if (loads.length === 0) return "Tick or add what runs: the answer stands here at once.";
    return this.answer === null && this.faults.length === 0 ? "Working it out…" : "";
  }

  private head(card: Card): TemplateResult {
    const { undoes, redoes } = this.store;
    return html`<a class="skip" href="#row-4">To the answer</a>
      <header class="head">
        <p class="mark">Stayput<span>job sheet</span></p>
        ${blank(card, ["title"], "Job", { kind: "text" })}
        <div class="buttons">
          <button type="button" ?disabled=${undoes === null} title=${undoes ?? ""} @click=${() => this.store.undo()}>
            Undo${undoes === null ? nothing : html`<span class="unseen">: ${undoes}</span>`}
          </button>
          <button type="button" ?disabled=${redoes === null} title=${redoes ?? ""} @click=${() => this.store.redo()}>
            Redo${redoes === null ? nothing : html`<span class="unseen">: ${redoes}</span>`}
          </button>
          <button type="button" @click=${this.lights}>${this.dark ? "Light" : "Dark"}</button>
          ${this.keeper === null ? nothing : html`<job-shelf></job-shelf>`}
          <button type="button" class="main" @click=${this.startEmpty}>Start an empty sheet</button>
        </div>
      </header>
      ${this.keeper === null ? nothing : html`<job-slips .keeper=${this.keeper}></job-slips><job-leaf .keeper=${this.keeper}></job-leaf>`}`;
  }

  private lights(): void {
    turnLights();
    this.dark = isDark();
  }

  private startEmpty(): void {
    const month = String(new Date().getMonth() + 1).padStart(2, "0");
    const empty = { ...emptyJob, trip: { ...emptyJob.trip, arrive: `${month}-01` } };
    if (this.keeper === null) this.open(new JobStore(empty));
    else this.keeper.startEmpty(empty);
    this.drawn = this.answer = this.read = null;
    void this.updateComplete.then(() => this.querySelector<HTMLElement>("row-where input")?.focus());
  }

  private pinned(): TemplateResult | typeof nothing {
    const { read, answer } = this;
    if (read === null || answer === null || this.unanswerable() !== "") return nothing;
    const { short } = sentence(answer, read);
    return html`<p class="pinned ${this.stale || this.faults.length > 0 ? "stale" : ""}">
      <a href="#row-4">${short.map(({ name, days }) => html`<span><i>${name}</i> ${days}</span>`)}</a>
    </p>`;
  }

  private about(): TemplateResult | typeof nothing {
    const about = this.job.about ?? "";
    return about === "" ? nothing : html`<p class="about">${about}</p>`;
  }
}

const row = (number: number, title: string, body: TemplateResult): TemplateResult =>
  html`<section class="row" id="row-${number}" aria-labelledby="row-${number}-title">
    <h2 id="row-${number}-title"><b>${number}</b>${title}</h2>
    <div class="body">${body}</div>
  </section>`;
