import type { Fault, JobInput } from "@stayput/job";
import type { RemoteFiles } from "../share/remoteFiles.ts";
import { saveJob, saveText, textOf } from "../share/jobFile.ts";
import { setAt } from "../store/at.ts";
import { JobStore } from "../store/jobStore.ts";
import { copyTitle, harmed, retitled, saidOf, type Head } from "./head.ts";
import * as book from "./jobBook.ts";
import { openJobsDb, type JobsDb } from "./jobsDb.ts";
import { noted, strike, type Unsaved } from "./journal.ts";
import { uniqueId } from "./uniqueId.ts";
import type { Notice } from "./notice.ts";
import { OpenJob, type Clerk, type Origin } from "./openJob.ts";
import { OtherTabs } from "./otherTabs.ts";
import { refusalSaid } from "./refusal.ts";
import { remember } from "./remembered.ts";

/** Where the job is shown and edited. */
export interface Desk {
  readonly open: (store: JobStore) => void;
  /** what is on it now */
  readonly store: () => JobStore;
  readonly files: RemoteFiles;
  readonly placeName: () => string;
}

const DAY_ms = 86_400_000;
/** How long a deleted job can be put back. */
const HELD_ms = 30 * DAY_ms;

/**
 * Keeps the jobs of this device: the one on the desk after every change, the others in a list. Whatever it cannot do it says
 * in words, with what can be done instead; it throws away nothing.
 */
export class Keeper {
  /** when the first job is on the desk */
  begun: Promise<void> = Promise.resolve();
  /** the job on the desk; null until there is one */
  now: OpenJob | null = null;
  notices: readonly Notice[] = [];
  #db: Promise<JobsDb> | null = null;
  #lastBlocked = false;
  /** a newer version of the page has the store: whatever is refused after that has been said already */
  #letGo = false;
  readonly #judged = new Map<string, string | null>();
  readonly #hearers = new Set<() => void>();
  readonly #tabs = new OtherTabs((news) => this.#heard(news));

  constructor(private readonly desk: Desk) {
    window.addEventListener("beforeunload", (event) => {
      // what the store refuses is lost with the page, which no undo can mend
      if (this.now !== null && this.now.refused !== null && this.now.unsaved) event.preventDefault();
    });
  }

  get files(): RemoteFiles {
    return this.desk.files;
  }

  subscribe(hear: () => void): () => void {
    this.#hearers.add(hear);
    return () => this.#hearers.delete(hear);
  }

  say(notice: Notice): void {
    this.notices = [...this.notices.filter(({ about }) => about !== notice.about), notice];
    this.#tell();
  }

  unsay(about: string): void {
    if (!this.notices.some((notice) => notice.about === about)) return;
    this.notices = this.notices.filter((notice) => notice.about !== about);
    this.#tell();
  }

  /** Puts a job on the desk. `origin` is null for one that is only kept once it is changed. */
  show(job: JobInput, origin: Origin | null = null, label = "Open"): OpenJob {
    const before = this.now;
    before?.close();
    if (before !== null) for (const about of ["tabs", "opened"]) this.unsay(about);
    const store = new JobStore(job, label);
    this.now = new OpenJob(store, origin ?? { id: uniqueId(), revision: 0 }, this.#clerk);
    if (origin !== null) remember(origin.id);
    this.desk.open(store);
    this.#tell();
    return this.now;
  }

  /** Keeps what was typed before any job was put on the desk; false where nothing was. */
  adoptTyped(): boolean {
    const store = this.desk.store();
    if (this.now !== null || store.undoes === null) return false;
    this.now = new OpenJob(store, { id: uniqueId(), revision: 0 }, this.#clerk);
    this.now.changed();
    return true;
  }

  /** Puts an empty sheet on the desk, to be kept from its first change on, and says where the other one went. */
  startEmpty(job: JobInput): void {
    const before = this.now;
    this.show(job, null, "Start an empty sheet");
    if (before === null) return;
    this.say({
      about: "opened",
      words: "This is a new sheet.",
      deeds: [{ label: "Back to the one before", run: () => void this.#backTo(before) }],
    });
  }

  /** What was never changed was never kept, and comes back as it was. */
  async #backTo(before: OpenJob): Promise<void> {
    await before.settled();
    const { id, revision, store } = before;
    if (revision === 0 || !(await this.open(id))) this.show(store.job);
  }

  /** Puts a new job on the desk and keeps it at once. */
  take(job: JobInput, label = "Open"): OpenJob {
    this.adoptTyped();
    const taken = this.show(job, null, label);
    taken.changed();
    return taken;
  }

  /** Opens a kept job; says why where it cannot be read. */
  async open(id: string): Promise<boolean> {
    try {
      await this.now?.settled();
      const { head, kept } = await book.read(await this.db(), id);
      if (kept === undefined || typeof kept.text !== "string") {
        this.#unreadable("That job is no longer kept here.", [], null);
        return false;
      }
      const read = await this.files.readText(kept.text);
      if (!read.ok) {
        this.#unreadable(`“${head?.title ?? "A kept job"}” cannot be read`, read.faults, kept.text);
        return false;
      }
      // whoever has begun to type while the store was slow goes on with that
      if (this.adoptTyped()) return true;
      this.show(read.job, { id, revision: head?.revision ?? 0, ...(read.older ? { older: kept.text } : {}) });
      return true;
    } catch (error) {
      this.#refusedBy(error);
      return false;
    }
  }

  /** Goes on with what was noted of a job and the store has not taken, and asks it again; false where nothing was. */
  async openNoted(id: string): Promise<boolean> {
    const unsaved = noted().find((each) => each.id === id);
    if (unsaved === undefined) return false;
    const read = await this.files.readText(unsaved.text);
    if (!read.ok) return false;
    if (!this.adoptTyped()) this.show(read.job, { id, revision: unsaved.revision }).changed();
    return true;
  }

  /** A new job from the text of a file; what is on the desk stays in the list. */
  async takeText(text: string, from: string): Promise<boolean> {
    const read = await this.files.readText(text);
    if (!read.ok) {
      this.#unreadable(`${from} is not a job that can be opened`, read.faults, null);
      return false;
    }
    this.take(read.job, "Open");
    if (read.faults.length > 0) this.#openedFaulty(from, read.faults);
    return true;
  }

  /** A link's job as a new one; says why where it cannot be opened. */
  async takeLink(fragment: string): Promise<boolean> {
    const read = await this.files.readLink(fragment);
    if (read.ok) this.take(read.job, "Open the link");
    else this.#unreadable("This link cannot be opened", read.faults, null);
    return read.ok;
  }

  async takeFiles(files: Iterable<File>): Promise<void> {
    for (const file of files) {
      try {
        await this.takeText(await textOf(file), file.name);
        await this.now?.settled();
      } catch (error) {
        this.say({
          about: "opened",
          words: error instanceof Error ? error.message : String(error),
          deeds: [],
          grave: true,
        });
      }
    }
  }

  /** A copy of a kept job, beside it in the list. */
  async duplicate(head: Head): Promise<void> {
    await this.#with(async (db) => {
      const { kept } = await book.read(db, head.id);
      if (kept === undefined) return;
      const title = copyTitle(head.title);
      const text = retitled(kept.text, title);
      const { id: _, revision: __, changed: ___, deleted: ____, older: _____, ...said } = head;
      await book.write(db, { ...said, id: uniqueId(), revision: 0, title, text });
    });
  }

  /** Deletes a kept job, or puts it back. */
  async mark(id: string, deleted: boolean): Promise<void> {
    await this.#with(async (db) => {
      const head = await book.mark(db, id, deleted ? Date.now() : null);
      if (head === undefined) return;
      // the one on the desk goes on from here: a change of it puts it back by itself
      if (this.now?.id === id) this.now.revision = head.revision + 1;
      this.#tabs.tell({ id, revision: head.revision + 1 });
    });
  }

  /** A place's name is looked up after the place is set, and belongs in the list as well. */
  placeNamed(): void {
    const job = this.now;
    if (job !== null && job.listedPlace !== null && job.listedPlace !== this.desk.placeName()) job.changed();
  }

  async list(): Promise<book.Listed[]> {
    return book.list(await this.db());
  }

  /** The file of a kept job as it stands in the store, readable or not. */
  async textOf(id: string): Promise<{ text: string; older?: string } | null> {
    const { kept } = await book.read(await this.db(), id);
    if (kept === undefined) return null;
    const text = typeof kept.text === "string" ? kept.text : JSON.stringify(kept, null, 2);
    return { text, ...(kept.older === undefined ? {} : { older: kept.older }) };
  }

  /** The first fault of a kept job that cannot be opened, in words; null where it can. Looked at once a revision. */
  async whyUnreadable(id: string): Promise<string | null> {
    const { head, kept } = await book.read(await this.db(), id);
    const key = `${id} ${head?.revision ?? 0}`;
    const known = this.#judged.get(key);
    if (known !== undefined) return known;
    const read = await this.files.readText(typeof kept?.text === "string" ? kept.text : "");
    const why = read.ok ? null : (read.faults[0]?.message ?? "it is no job file");
    this.#judged.set(key, why);
    return why;
  }

  /** Says that the store does not answer. */
  sayStoreSilent(): void {
    this.#refusedBy(new Error("its store of jobs does not answer"));
  }

  /** Takes in what a page noted as it was taken away, and clears away what was deleted long ago. */
  async tidy(): Promise<void> {
    const db = await this.db();
    for (const unsaved of noted()) await this.#restore(db, unsaved);
    await book.clearAway(db, Date.now() - HELD_ms);
  }

  db(): Promise<JobsDb> {
    if (this.#db === null) {
      const opening = openJobsDb({
        onBlocked: () => this.#blocked(),
        onOutdated: () => this.#outdated(),
        onClosed: () => (this.#db = null),
      });
      this.#db = opening;
      opening.then(
        () => {
          if (this.#lastBlocked) this.unsay("store");
        },
        () => (this.#db = null),
      );
    }
    return this.#db;
  }

  readonly #clerk: Clerk = {
    write: async (writing) => {
      const written = await book.write(await this.db(), writing);
      if (written.kind === "written") this.#tabs.tell({ id: writing.id, revision: written.revision });
      return written;
    },
    placeName: this.desk.placeName,
    onState: (job) => {
      if (job !== this.now && job.refused === null) return;
      if (job.refused !== null) this.#refusedBy(job.refused);
      else if (!this.#letGo) this.unsay("store");
      this.#tell();
    },
    onBehind: (job) => this.#fork(job),
  };

  /** Another tab has written the job that was changed here: this sheet goes on as a copy, so that neither is lost. */
  #fork(job: OpenJob): void {
    const { id } = job;
    job.become({ id: uniqueId(), revision: 0 });
    job.store.settle();
    const title = copyTitle(typeof job.store.job.title === "string" ? job.store.job.title : "");
    job.store.edit("Keep as a copy", (typed) => setAt(typed, ["title"], title));
    this.say({
      about: "tabs",
      words: `This job was changed in another tab too. What you changed here is kept as a copy, “${title}”; the other tab’s is as it was.`,
      deeds: [{ label: "Take theirs instead", run: () => void this.#takeTheirs(id, job.id) }],
    });
  }

  #heard({ id, revision }: { id: string; revision: number }): void {
    this.#tell();
    const job = this.now;
    if (job === null || job.id !== id || job.revision >= revision) return;
    this.say({
      about: "tabs",
      words: "This job was changed in another tab just now. If you go on here, yours is kept as a copy.",
      deeds: [
        { label: "Take theirs", run: () => void this.#takeTheirs(id, null) },
        { label: "Keep mine as a copy", run: () => this.#fork(job) },
      ],
    });
  }

  async #takeTheirs(id: string, copy: string | null): Promise<void> {
    if (!(await this.open(id)) || copy === null) return;
    await this.mark(copy, true);
    this.say({
      about: "tabs",
      words: "Your copy was deleted.",
      deeds: [{ label: "Undo", run: () => void this.mark(copy, false).then(() => this.open(copy)) }],
    });
  }

  async #restore(db: JobsDb, { id, revision, by, text }: Unsaved): Promise<void> {
    const { head, kept } = await book.read(db, id);
    const read = kept?.text === text ? null : await this.files.readText(text);
    if (read !== null) {
      const job = read.ok ? read.job : null;
      const said = job === null ? harmed : saidOf(job);
      // the same visit may have got an earlier text into the store after this one was noted
      const at = head?.revision ?? 0;
      const free = at === revision || head?.by === by;
      await book.write(db, free ? { ...said, id, revision: at, text } : { ...said, id: uniqueId(), revision: 0, text });
    }
    strike(id);
  }

  async #with(work: (db: JobsDb) => Promise<void>): Promise<void> {
    try {
      await work(await this.db());
    } catch (error) {
      this.#refusedBy(error);
    }
    this.#tell();
  }

  #refusedBy(error: unknown): void {
    if (this.#letGo) return;
    this.say({
      about: "store",
      grave: true,
      words: `This browser will not keep the job: ${refusalSaid(error)}. Unless you save it as a file, what is on the sheet goes when the page is closed.`,
      deeds: [
        { label: "Save the job file", run: () => void (this.now !== null && saveJob(this.now.store.job)) },
        { label: "Try again", run: () => this.now?.changed() },
      ],
    });
  }

  #blocked(): void {
    this.#lastBlocked = true;
    this.say({
      about: "store",
      grave: true,
      words:
        "Another tab with an older version of this page is open, and jobs cannot be kept until it is closed. Close it, or save the job as a file.",
      deeds: [{ label: "Save the job file", run: () => void (this.now !== null && saveJob(this.now.store.job)) }],
    });
  }

  #outdated(): void {
    this.#db = null;
    this.#letGo = true;
    this.say({
      about: "store",
      grave: true,
      words: "A newer version of this page was opened in another tab. Reload this one; nothing is lost.",
      deeds: [{ label: "Reload", run: () => location.reload() }],
    });
  }

  #unreadable(what: string, faults: readonly Fault[], text: string | null): void {
    const [first, ...more] = faults;
    const why = first === undefined ? "" : `: ${first.message}${more.length > 0 ? `; and ${more.length} more` : ""}`;
    const save = {
      label: "Save its file",
      run: () => void saveText("unreadable-job.json", text ?? "", "application/json"),
    };
    this.say({ about: "opened", words: `${what}${why}`, deeds: text === null ? [] : [save], grave: true });
  }

  #openedFaulty(from: string, faults: readonly Fault[]): void {
    const count = faults.length === 1 ? "One blank needs" : `${faults.length} blanks need`;
    this.say({ about: "opened", words: `${from} is open. ${count} another look; row 4 says which.`, deeds: [] });
  }

  #tell(): void {
    for (const hear of this.#hearers) hear();
  }
}
