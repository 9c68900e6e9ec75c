import type { ExplainAnswer } from "@stayput/sim";
import type { Of } from "./headAndFoot.ts";

/** All that the text of `explain` is made from. */
export interface Sheet extends Of {
  readonly answer: ExplainAnswer;
  /** what was assumed on the way from the job to the answer, in sentences */
  readonly assumed: readonly string[];
}
