import type { Head, Said } from "./head.ts";
import type { JobsDb, KeptText } from "./jobsDb.ts";
import { visit } from "./visit.ts";

export interface Writing extends Said {
  readonly id: string;
  /** the revision that this text goes on from; 0 for a new job */
  readonly revision: number;
  readonly text: string;
  readonly older?: string;
}

/** `behind`: another tab has written since, and nothing was changed. */
export type Written =
  { readonly kind: "written"; readonly revision: number } | { readonly kind: "behind"; readonly theirs: Head };

/** A job in the list: with its head, or with none where the store was harmed. */
export type Listed = Head | { readonly id: string; readonly headless: true };

/** Writes a job if nobody else has since it was read: looked up and written in one transaction. */
export async function write(db: JobsDb, writing: Writing): Promise<Written> {
  const { text, older, ...said } = writing;
  const tx = db.transaction(["heads", "jobs"], "readwrite");
  const heads = tx.objectStore("heads");
  const jobs = tx.objectStore("jobs");
  const theirs = await heads.get(said.id);
  if (theirs !== undefined && theirs.revision !== said.revision) {
    await tx.done;
    return { kind: "behind", theirs };
  }
  const before = older ?? (theirs?.older === true ? (await jobs.get(said.id))?.older : undefined);
  const revision = said.revision + 1;
  const head: Head = { ...said, revision, by: visit, changed: Date.now(), deleted: null, older: before !== undefined };
  const kept: KeptText = { id: said.id, text, ...(before === undefined ? {} : { older: before }) };
  await Promise.all([heads.put(head), jobs.put(kept), tx.done]);
  return { kind: "written", revision };
}

/** Every job kept, the last changed first; one whose head is lost is listed all the same. */
export async function list(db: JobsDb): Promise<Listed[]> {
  const tx = db.transaction(["heads", "jobs"]);
  const [heads, ids] = await Promise.all([tx.objectStore("heads").getAll(), tx.objectStore("jobs").getAllKeys()]);
  const known = new Set(heads.map(({ id }) => id));
  const headless = ids.filter((id) => !known.has(id)).map((id) => ({ id, headless: true as const }));
  return [...headless, ...heads.sort((a, b) => b.changed - a.changed)];
}

export async function read(db: JobsDb, id: string): Promise<{ head: Head | undefined; kept: KeptText | undefined }> {
  const tx = db.transaction(["heads", "jobs"]);
  const [head, kept] = await Promise.all([tx.objectStore("heads").get(id), tx.objectStore("jobs").get(id)]);
  return { head, kept };
}

/** Deletes a job, or puts it back: it only carries a mark, until it is cleared away. Whoever has it open is then behind. */
export async function mark(db: JobsDb, id: string, deleted: number | null): Promise<Head | undefined> {
  const tx = db.transaction("heads", "readwrite");
  const head = await tx.store.get(id);
  if (head !== undefined) await tx.store.put({ ...head, deleted, revision: head.revision + 1 });
  await tx.done;
  return head;
}

/** Takes out for good what was deleted before a time. */
export async function clearAway(db: JobsDb, before: number): Promise<void> {
  const tx = db.transaction(["heads", "jobs"], "readwrite");
  for (const { id, deleted } of await tx.objectStore("heads").getAll()) {
    if (deleted === null || deleted >= before) continue;
    void tx.objectStore("heads").delete(id);
    void tx.objectStore("jobs").delete(id);
  }
  await tx.done;
}
