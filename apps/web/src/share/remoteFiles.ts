import type { Fault } from "@stayput/job";
import type { ForSheet } from "./readForSheet.ts";

export type Text =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly faults: readonly Fault[] };

/** What the page asks of the worker about files and links. */
export interface RemoteFiles {
  readonly readText: (text: string) => Promise<ForSheet>;
  /** the job of a link's fragment */
  readonly readLink: (fragment: string) => Promise<ForSheet>;
  /** the fragment of a link to a job as typed; only a job without faults has one */
  readonly packLink: (typed: unknown) => Promise<Text>;
  /** every hour of one setup, the trip as described, under the average sky */
  readonly hoursCsv: (typed: unknown, setup: string) => Promise<Text>;
  /** the whole answer, as the command line writes it */
  readonly answerJson: (typed: unknown) => Promise<Text>;
}
