import { toText } from "../share/jobFile.ts";
import type { JobStore } from "../store/jobStore.ts";
import { saidOf } from "./head.ts";
import { note, strike } from "./journal.ts";
import type { Writing, Written } from "./jobBook.ts";
import { remember } from "./remembered.ts";

export interface Origin {
  readonly id: string;
  /** 0 where nothing is kept yet */
  readonly revision: number;
  /** its text as an older version wrote it, to be kept beside it */
  readonly older?: string;
}

export interface Clerk {
  /** writes to the store; throws where the browser refuses */
  readonly write: (writing: Writing) => Promise<Written>;
  readonly placeName: () => string;
  /** after every write, and when something becomes unsaved or refused */
  readonly onState: (job: OpenJob) => void;
  /** another tab has written this job since; what is on this sheet has not been kept */
  readonly onBehind: (job: OpenJob) => void;
}

/**
 * The job on the sheet, written to the store after every change: at once, one write at a time, the newest text last. A store
 * may be slow: so each change is first noted for the next start, and struck when the store has it, lest a page that dies
 * take it along.
 */
export class OpenJob {
  id: string;
  revision: number;
  /** why the store would not take it; null while it does */
  refused: unknown = null;
  /** the place's name as it was last written; null before the first write */
  listedPlace: string | null = null;
  #older: string | undefined;
  #dirty = false;
  #writing: Promise<void> | null = null;
  readonly #stop: () => void;

  constructor(
    readonly store: JobStore,
    origin: Origin,
    private readonly clerk: Clerk,
  ) {
    this.id = origin.id;
    this.revision = origin.revision;
    this.#older = origin.older;
    this.#stop = store.subscribe(() => this.changed());
  }

  /** Whether something on the sheet is not in the store. */
  get unsaved(): boolean {
    return this.#dirty || this.#writing !== null;
  }
  get text(): string {
    return toText(this.store.job);
  }

  changed(): void {
    this.#dirty = true;
    note(this.id, this.revision, this.text);
    remember(this.id);
    this.#writing ??= this.#write().finally(() => {
      this.#writing = null;
      if (this.#dirty && this.refused === null) this.changed();
      else this.clerk.onState(this);
    });
  }

  /** From now on written under another id, as a job of its own. */
  become(origin: Origin): void {
    strike(this.id);
    this.id = origin.id;
    this.revision = origin.revision;
  }

  /** When all that can be written is. */
  async settled(): Promise<void> {
    while (this.#writing !== null) await this.#writing;
  }

  close(): void {
    this.#stop();
  }

  async #write(): Promise<void> {
    while (this.#dirty) {
      this.#dirty = false;
      try {
        const written = await this.clerk.write(this.#asWritten());
        this.refused = null;
        if (written.kind === "behind") {
          this.#dirty = true;
          this.clerk.onBehind(this);
          continue;
        }
        this.revision = written.revision;
        this.#older = undefined;
        this.#strike();
      } catch (error) {
        this.#dirty = true;
        this.refused = error;
        return;
      }
    }
  }

  /** What is noted stays so while it is newer than what the store has. */
  #strike(): void {
    if (!this.#dirty) strike(this.id);
  }

  #asWritten(): Writing {
    const { id, revision, text } = this;
    const said = saidOf(this.store.job, this.clerk.placeName());
    this.listedPlace = said.place;
    return { id, revision, text, ...said, ...(this.#older === undefined ? {} : { older: this.#older }) };
  }
}
