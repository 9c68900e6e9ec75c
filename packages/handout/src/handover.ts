import type { Job, PlaceFound } from "@stayput/job";
import type { CompareAnswer, ExplainAnswer, Study, WiringAnswer } from "@stayput/sim";

/** All that the printed pages are made of: a job, what it was resolved to, and its answers. Plain data. */
export interface Handover {
  readonly job: Job;
  readonly place: Pick<PlaceFound, "name" | "latitude_deg" | "longitude_deg">;
  readonly study: Study;
  /** what was assumed, and how good the place's figures are */
  readonly notes: readonly string[];
  /** of the same study, under the same skies as `compared`; the setups in the same order */
  readonly explained: ExplainAnswer;
  readonly compared: Pick<CompareAnswer, "setups">;
  /** a row a setup; may be empty where only the customer's page is wanted */
  readonly wired: readonly WiringAnswer[];
  /** the day on which it is handed over, "YYYY-MM-DD"; the package looks at no clock */
  readonly date: string;
  /** BCP 47 tag for digits, percent, money and month names; "en" when left out. The words are English. */
  readonly locale?: string | undefined;
  /** the workshop's own mark, as `logoDataUrl` makes it; null or left out: none */
  readonly logo?: string | null | undefined;
}
