import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Writing, Written } from "../../../../apps/web/src/keep/jobBook.ts";
import { noted } from "../../../../apps/web/src/keep/journal.ts";
import { OpenJob, type Clerk } from "../../../../apps/web/src/keep/openJob.ts";
import { emptyJob } from "../../../../apps/web/src/store/emptyJob.ts";
import { JobStore } from "../../../../apps/web/src/store/jobStore.ts";

/** A store of one job that answers when it is told to. */
function desk(
  answers: (writing: Writing) => Written | Error = ({ revision }) => ({ kind: "written", revision: revision + 1 }),
) {
  const writings: Writing[] = [];
  let waiting: (() => void)[] = [];
  const clerk: Clerk = {
    write: (writing) => {
      writings.push(writing);
      return new Promise((resolve, reject) => {
        waiting.push(() => {
          const answer = answers(writing);
          if (answer instanceof Error) reject(answer);
          else resolve(answer);
        });
      });
    },
    placeName: () => "",
    onState: () => undefined,
    onBehind: (job) => job.become({ id: "copy", revision: 0 }),
  };
  const answer = async (): Promise<void> => {
    const all = waiting;
    waiting = [];
    for (const each of all) each();
    await new Promise((done) => setTimeout(done));
  };
  return { clerk, writings, answer };
}

const titled = (title: string) => (job: typeof emptyJob) => ({ ...job, title });
const titles = (writings: readonly Writing[]): string[] =>
  writings.map(({ text }) => (JSON.parse(text) as { title: string }).title);

describe("a job on the sheet", () => {
  it("is written at once, one write at a time, the newest text last", async () => {
    const { clerk, writings, answer } = desk();
    const store = new JobStore(emptyJob);
    const job = new OpenJob(store, { id: "a", revision: 4 }, clerk);
    expect(job.unsaved).toBe(false);
    for (const title of ["one", "two", "three"]) store.edit("x", titled(title));
    expect(titles(writings)).toEqual(["one"]);
    expect(job.unsaved).toBe(true);
    await answer();
    await answer();
    expect(titles(writings)).toEqual(["one", "three"]);
    expect(writings.map(({ revision }) => revision)).toEqual([4, 5]);
    expect(job.unsaved).toBe(false);
    store.undo();
    expect(titles(writings).at(-1)).toBe("two");
  });

  it("keeps what the store refused, and writes it with the next change", async () => {
    let full = true;
    const { clerk, writings, answer } = desk(({ revision }) =>
      full ? new Error("full") : { kind: "written", revision: revision + 1 },
    );
    const store = new JobStore(emptyJob);
    const job = new OpenJob(store, { id: "a", revision: 0 }, clerk);
    store.edit("x", titled("one"));
    await answer();
    expect(job.refused).toBeInstanceOf(Error);
    expect(job.unsaved).toBe(true);
    full = false;
    store.edit("x", titled("two"));
    await answer();
    expect(job.refused).toBeNull();
    expect(job.unsaved).toBe(false);
    expect(titles(writings).at(-1)).toBe("two");
  });

  it("goes on as a copy where another has written since, and leaves theirs", async () => {
    const { clerk, writings, answer } = desk(({ id, revision }) =>
      id === "a" ? { kind: "behind", theirs: {} as never } : { kind: "written", revision: revision + 1 },
    );
    const store = new JobStore(emptyJob);
    const job = new OpenJob(store, { id: "a", revision: 1 }, clerk);
    store.edit("x", titled("mine"));
    await answer();
    await answer();
    expect(writings.map(({ id, revision }) => [id, revision])).toEqual([
      ["a", 1],
      ["copy", 0],
    ]);
    expect(titles(writings)).toEqual(["mine", "mine"]);
    expect(job.revision).toBe(1);
  });

  it("hands over the text of an older version with its first write only", async () => {
    const { clerk, writings, answer } = desk();
    const store = new JobStore(emptyJob);
    new OpenJob(store, { id: "a", revision: 1, older: "as it was" }, clerk);
    store.edit("x", titled("one"));
    await answer();
    store.edit("x", titled("two"));
    await answer();
    expect(writings.map(({ older }) => older)).toEqual(["as it was", undefined]);
  });
});

/** A browser's store of texts, of a size. */
function texts(room: number) {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (i: number) => [...kept.keys()][i] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new DOMException("no room", "QuotaExceededError");
      kept.set(key, text);
    },
    removeItem: (key: string) => kept.delete(key),
  };
}

describe("what is noted for the next start", () => {
  beforeEach(() => void vi.stubGlobal("localStorage", texts(20_000)));
  afterEach(() => void vi.unstubAllGlobals());

  const notedTitles = (): string[] => noted().map(({ text }) => (JSON.parse(text) as { title: string }).title);

  it("is every change, before anything else can happen, until the store has the newest", async () => {
    const { clerk, answer } = desk();
    const store = new JobStore(emptyJob);
    new OpenJob(store, { id: "a", revision: 4 }, clerk);
    expect(noted()).toEqual([]);
    store.edit("x", titled("one"));
    expect(notedTitles()).toEqual(["one"]);
    store.edit("x", titled("two"));
    expect(notedTitles()).toEqual(["two"]);
    await answer(); // the first
    expect(notedTitles()).toEqual(["two"]);
    await answer();
    expect(noted()).toEqual([]);
  });

  it("stays while the store refuses", async () => {
    const { clerk, answer } = desk(() => new Error("full"));
    const store = new JobStore(emptyJob);
    new OpenJob(store, { id: "a", revision: 4 }, clerk);
    store.edit("x", titled("one"));
    await answer();
    expect(noted()).toMatchObject([{ id: "a", revision: 4 }]);
  });

  it("goes over to the copy where another has written since", async () => {
    const { clerk, answer } = desk(() => ({ kind: "behind", theirs: {} as never }));
    const store = new JobStore(emptyJob);
    new OpenJob(
      store,
      { id: "a", revision: 1 },
      {
        ...clerk,
        onBehind: (job) => {
          job.become({ id: "copy", revision: 0 });
          store.edit("x", titled("mine, copy"));
        },
      },
    );
    store.edit("x", titled("mine"));
    await answer();
    expect(noted()).toMatchObject([{ id: "copy", revision: 0 }]);
    expect(notedTitles()).toEqual(["mine, copy"]);
  });

  it("is never an older text than the store was given", () => {
    const { clerk } = desk();
    const store = new JobStore(emptyJob);
    new OpenJob(store, { id: "a", revision: 1 }, clerk);
    store.edit("x", titled("one"));
    store.edit("x", titled("x".repeat(30_000))); // no room to note it
    expect(noted()).toEqual([]);
  });

  it("passes over what is no note", () => {
    for (const text of ["", "null", "7", "[]", "{", '{"id":"a"}', '{"id":"a","revision":"1","text":"{}"}'])
      localStorage.setItem(`stayput-unsaved-${text}`, text);
    localStorage.setItem("another's", '{"id":"a","revision":1,"text":"{}"}');
    expect(noted()).toEqual([]);
    localStorage.setItem("stayput-unsaved-a", '{"id":"a","revision":1,"text":"{}"}'); // of an earlier version of the page
    expect(noted()).toEqual([{ id: "a", revision: 1, by: "", text: "{}" }]);
  });
});
