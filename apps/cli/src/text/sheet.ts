import type { ExplainAnswer } from "@stayput/sim";

/** All that the text of `explain` is made from. Names are as in the job; the text makes them fit for a terminal. */
export interface Sheet {
  readonly title: string;
  readonly customer: string | null;
  /** "Upington, South Africa" */
  readonly place: string;
  /** day of arrival in words, "10 July" */
  readonly arrive: string;
  readonly answer: ExplainAnswer;
  /** what was assumed on the way from the job to the answer, in sentences */
  readonly assumed: readonly string[];
}
