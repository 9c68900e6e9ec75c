import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { Head } from "./head.ts";

/** A job as the text of its file, exactly as it stood on the sheet. */
export interface KeptText {
  readonly id: string;
  readonly text: string;
  /** the text as an older version of the page had written it, from before it was brought up to date */
  readonly older?: string;
}

interface Stores extends DBSchema {
  heads: { key: string; value: Head };
  jobs: { key: string; value: KeptText };
}

export type JobsDb = IDBPDatabase<Stores>;

export const DB_NAME = "stayput";
const DB_VERSION = 1;

export interface Troubles {
  /** another tab holds an older form of the store open, and this one has to wait for it */
  readonly onBlocked: () => void;
  /** another tab brings the store to a newer form; this one has let go of it */
  readonly onOutdated: () => void;
  /** the browser has closed the store by itself */
  readonly onClosed: () => void;
}

/** Opens the browser's store of jobs. @throws a DOMException where the browser refuses one */
export function openJobsDb({ onBlocked, onOutdated, onClosed }: Troubles): Promise<JobsDb> {
  return openDB<Stores>(DB_NAME, DB_VERSION, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore("heads", { keyPath: "id" });
        db.createObjectStore("jobs", { keyPath: "id" });
      }
    },
    blocked: onBlocked,
    blocking(_version, _newer, event) {
      (event.target as IDBDatabase).close();
      onOutdated();
    },
    terminated: onClosed,
  });
}
