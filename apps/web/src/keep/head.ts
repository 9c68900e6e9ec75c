import type { JobInput } from "@stayput/job";

/** What the list of jobs shows of one: kept beside the job, so that a long list opens without reading every job. */
export interface Head {
  readonly id: string;
  /** counts the writes, so that a tab can tell whether another has written since it read */
  readonly revision: number;
  /** the visit that wrote it last; not said by earlier versions of the page */
  readonly by?: string;
  readonly title: string;
  readonly customer: string;
  readonly place: string;
  readonly loads: number;
  readonly setups: number;
  /** when it was last written [ms since 1970] */
  readonly changed: number;
  /** when it was deleted; null while it is not */
  readonly deleted: number | null;
  /** whether the text of an older version is kept beside it */
  readonly older: boolean;
}

/** What stands in the list for a job as it is on the sheet, right or wrong. */
export type Said = Pick<Head, "title" | "customer" | "place" | "loads" | "setups">;

export function saidOf(job: JobInput, placeName = ""): Said {
  const { place } = job;
  const named = "name" in place ? line(place.name) : line(placeName || place.id);
  return {
    title: line(job.title) || "No name yet",
    customer: line(job.customer?.name),
    place: named,
    loads: job.loads.length,
    setups: job.setups.length,
  };
}

/** One line, short enough for a list; only texts count. */
const line = (value: unknown): string =>
  typeof value === "string" ? value.replace(/\s+/gu, " ").trim().slice(0, 200) : "";

/** What is said of a job whose text cannot be read. */
export const harmed: Said = { title: "Cannot be read", customer: "", place: "", loads: 0, setups: 0 };

const LONGEST_TITLE = 190;

/** "North, copy", then "North, copy 2" and so on. */
export function copyTitle(title: string): string {
  const [, stem = title, count] = /^(.*), copy(?: (\d{1,6}))?$/su.exec(title) ?? [];
  if (stem === title) return `${title.slice(0, LONGEST_TITLE)}, copy`;
  return `${stem.slice(0, LONGEST_TITLE)}, copy ${Number(count ?? 1) + 1}`;
}

/** The text of a job with another title; a text that is no job stays as it is. */
export function retitled(text: string, title: string): string {
  try {
    const job: unknown = JSON.parse(text);
    if (typeof job !== "object" || job === null || Array.isArray(job)) return text;
    return `${JSON.stringify({ ...job, title }, null, 2)}\n`;
  } catch {
    return text;
  }
}
