import { html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { LightElement } from "../fields/lightElement.ts";
import { fileNameOf, pickFile, saveText } from "../share/jobFile.ts";
import { demoJob } from "../store/demoJob.ts";
import { emptyJob } from "../store/emptyJob.ts";
import type { Head } from "./head.ts";
import type { Listed } from "./jobBook.ts";
import type { Keeper } from "./keeper.ts";
import { matches } from "./matches.ts";

/** Rows shown at first; the rest follow on scrolling to them. */
const PAGE = 40;

/** Every job kept on this device, the last changed first. */
@customElement("job-list")
export class JobList extends LightElement {
  @property({ attribute: false }) keeper!: Keeper;
  @property({ attribute: false }) close: () => void = () => undefined;
  @state() private listed: readonly Listed[] | null = null;
  @state() private failure = "";
  @state() private sought = "";
  @state() private shown = PAGE;
  /** deleted while this list has been open: each stays in its place, to be put back */
  private readonly lately = new Set<string>();
  private forget: () => void = () => undefined;
  private asked = 0;
  /** why a job cannot be read, by its id */
  @state() private unreadable: ReadonlyMap<string, string> = new Map();
  private readonly end = new IntersectionObserver((entries) => {
    if (entries.some(({ isIntersecting }) => isIntersecting)) this.shown += PAGE;
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.forget = this.keeper.subscribe(() => void this.refresh());
    void this.refresh();
  }
  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.forget();
    this.end.disconnect();
  }

  private async refresh(): Promise<void> {
    const asked = ++this.asked;
    try {
      const listed = await this.keeper.list();
      if (asked !== this.asked) return;
      this.listed = listed;
      this.failure = "";
      void this.judge(asked);
    } catch {
      this.failure = "This browser does not show its store of jobs.";
      this.listed ??= [];
    }
  }

  /** Reads each job through the schema once the list stands, so that one that is harmed is seen before it is needed. */
  private async judge(asked: number): Promise<void> {
    await new Promise((done) => setTimeout(done, 400));
    for (const { id } of this.listed ?? []) {
      if (asked !== this.asked || !this.isConnected) return;
      const why = await this.keeper.whyUnreadable(id).catch(() => null);
      if (why === null || this.unreadable.get(id) === why) continue;
      this.unreadable = new Map(this.unreadable).set(id, why);
    }
  }

  protected override updated(): void {
    this.end.disconnect();
    const last = this.querySelector(".more-jobs");
    if (last !== null) this.end.observe(last);
  }

  protected override render(): TemplateResult {
    const { listed } = this;
    const all = listed ?? [];
    const kept = all.filter((job) => !isDeleted(job) || this.lately.has(job.id));
    const gone = all.filter((job): job is Head => isDeleted(job) && !this.lately.has(job.id));
    const found = kept.filter((job) => "headless" in job || matches(job, this.sought));
    return html`${this.head(kept.length, found.length)}
      ${this.failure === "" ? nothing : html`<p class="fault">${this.failure}</p>`}
      ${listed !== null && kept.length === 0 ? html`<p class="empty">${nothingKept}</p>` : nothing}
      <ol class="kept">
        ${repeat(
          found.slice(0, this.shown),
          ({ id }) => id,
          (job, i) => this.row(job, i + 1),
        )}
        ${
          found.length > this.shown
            ? html`<li class="more-jobs">
                <button type="button" class="quiet" @click=${() => (this.shown += PAGE)}>
                  and ${found.length - this.shown} more
                </button>
              </li>`
            : nothing
        }
      </ol>
      ${gone.length === 0 ? nothing : this.deletedJobs(gone)}`;
  }

  private head(kept: number, found: number): TemplateResult {
    return html`<div class="line">
        <div class="field wide">
          <label class="label" for="job-search">Find a job by its title, customer or place</label>
          <span class="blank"
            ><input
              id="job-search"
              type="search"
              autocomplete="off"
              spellcheck="false"
              .value=${this.sought}
              @input=${(event: Event) => {
                this.sought = (event.target as HTMLInputElement).value;
                this.shown = PAGE;
              }}
          /></span>
          <p class="note" role="status">${countSaid(kept, found, this.sought)}</p>
        </div>
      </div>
      <div class="buttons">
        <button type="button" @click=${this.openFile}>Open a job file</button>
        <button type="button" @click=${() => this.put(() => void this.keeper.show(demoJob))}>Open the example</button>
      </div>`;
  }

  private row(job: Listed, number: number): TemplateResult {
    const why = this.unreadable.get(job.id);
    if ("headless" in job || (why !== undefined && job.deleted === null)) return this.harmedRow(job, number, why);
    const deleted = job.deleted !== null;
    return html`<li class=${deleted ? "gone" : ""}>
      <b>${number}</b>
      <div class="what">
        ${
          deleted
            ? html`<bdi>${job.title}</bdi> was deleted.`
            : html`<button type="button" class="link" @click=${() => this.openJob(job.id)}>
                  <bdi>${job.title}</bdi>
                </button>
                ${this.keeper.now?.id === job.id ? html`<i>on the sheet</i>` : nothing}`
        }
        <p class="note">${aboutSaid(job)}</p>
      </div>
      <div class="deeds">
        ${
          deleted
            ? html`<button type="button" @click=${() => this.putBack(job)}>Undo</button>`
            : html`<button type="button" class="quiet" @click=${() => void this.keeper.duplicate(job)}>
                  Duplicate<span class="unseen"> ${job.title}</span>
                </button>
                ${job.older ? this.olderFile(job) : nothing}
                <button type="button" class="quiet" @click=${() => this.delete(job)}>
                  Delete<span class="unseen"> ${job.title}</span>
                </button>`
        }
      </div>
    </li>`;
  }

  private harmedRow(job: Listed, number: number, why = ""): TemplateResult {
    const title = "headless" in job ? "A job without its entry in the list" : job.title;
    return html`<li>
      <b>${number}</b>
      <div class="what">
        <bdi>${title}</bdi>
        <p class="fault">${why === "" ? "Looking whether it can be read…" : `Cannot be read: ${why}`}</p>
      </div>
      <div class="deeds">
        ${why === "" ? html`<button type="button" class="quiet" @click=${() => this.openJob(job.id)}>Open</button>` : nothing}
        <button type="button" class="quiet" @click=${() => this.saveFileOf(job.id, "unreadable-job", false)}>
          Save its file
        </button>
        ${"headless" in job ? nothing : html`<button type="button" class="quiet" @click=${() => this.delete(job)}>Delete</button>`}
      </div>
    </li>`;
  }

  private readonly olderFile = (job: Head): TemplateResult =>
    html`<button type="button" class="quiet" @click=${() => this.saveFileOf(job.id, `${job.title} older`, true)}>
      Save the older file
    </button>`;

  private deletedJobs(gone: readonly Head[]): TemplateResult {
    return html`<details class="more">
      <summary>Deleted in the last 30 days: ${gone.length}</summary>
      <ol class="kept">
        ${gone.slice(0, 200).map(
          (job) =>
            html`<li class="gone">
              <b></b>
              <div class="what">
                <bdi>${job.title}</bdi>
                <p class="note">${aboutSaid(job)}</p>
              </div>
              <div class="deeds">
                <button type="button" @click=${() => this.putBack(job)}>
                  Put back<span class="unseen"> ${job.title}</span>
                </button>
              </div>
            </li>`,
        )}
      </ol>
    </details>`;
  }

  private put(show: () => void): void {
    show();
    this.close();
  }

  private async openJob(id: string): Promise<void> {
    await this.keeper.open(id);
    this.close();
  }

  private readonly openFile = async (): Promise<void> => {
    const file = await pickFile();
    if (file === null) return;
    await this.keeper.takeFiles([file]);
    this.close();
  };

  private async delete(job: Head): Promise<void> {
    this.lately.add(job.id);
    await this.keeper.now?.settled();
    await this.keeper.mark(job.id, true);
    // a sheet whose job is deleted would bring it back with the next change
    if (this.keeper.now?.id === job.id) this.keeper.show(emptyJob);
  }

  private async putBack(job: Head): Promise<void> {
    this.lately.delete(job.id);
    await this.keeper.mark(job.id, false);
  }

  private async saveFileOf(id: string, name: string, older: boolean): Promise<void> {
    const text = await this.keeper.textOf(id);
    if (text === null) return;
    await saveText(fileNameOf(name, ".json"), older ? (text.older ?? text.text) : text.text, "application/json");
  }
}

const isDeleted = (job: Listed): boolean => !("headless" in job) && job.deleted !== null;

const nothingKept =
  "Nothing is kept yet. A job is kept on this device from its first change on, and goes nowhere else.";

const countSaid = (kept: number, found: number, sought: string): string =>
  sought.trim() === "" ? (kept === 1 ? "1 job" : `${kept} jobs`) : `${found} of ${kept}`;

const date = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

function aboutSaid({ customer, place, setups, loads, changed }: Head): TemplateResult {
  const what = `${loads} ${loads === 1 ? "load" : "loads"}, ${setups} ${setups === 1 ? "setup" : "setups"}`;
  const named = [customer, place].filter((text) => text !== "");
  return html`${named.map((text) => html`<bdi>${text}</bdi>, `)}${what}, ${date.format(changed)}`;
}
