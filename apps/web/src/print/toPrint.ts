import type { Handover } from "@stayput/handout";
import type { Fault } from "@stayput/job";
import type { ExplainAnswer } from "@stayput/sim";
import type { Slip } from "../bench/longDesk.ts";
import type { LongAnswer } from "../worker/askLong.ts";
import type { Read } from "../worker/protocol.ts";

/** A job with all its answers; the day, the reader's language and the workshop's mark come when it is printed. */
export type Answered = Omit<Handover, "date" | "locale" | "logo">;

/** What a print would give now: the pages, or why there are none yet. */
export type ToPrint = { readonly answered: Answered } | { readonly waiting: string };

/** What the sheet knows of the job as it stands. */
export interface Known {
  /** "" or what the sheet still wants, before there can be an answer */
  readonly wanting: string;
  readonly faults: readonly Fault[];
  readonly failure: string;
  readonly read: Read | null;
  /** null until all of it is in */
  readonly explained: ExplainAnswer | null;
  readonly compared: Slip<Extract<LongAnswer, { kind: "compare" }>>;
  readonly wired: Slip<Extract<LongAnswer, { kind: "wiring" }>>;
}

/** Never half a page: an answer that is missing or of an older job makes it wait. */
export function toPrintOf(known: Known): ToPrint {
  const { wanting, faults, read, explained } = known;
  const [compared, wired] = [standing(known.compared), standing(known.wired)];
  const failure = known.failure || known.compared.fault || known.wired.fault;
  if (wanting !== "") return { waiting: wanting };
  if (faults.length > 0)
    return {
      waiting: `${faults.length === 1 ? "One blank needs" : `${faults.length} blanks need`} another look first.`,
    };
  if (failure) return { waiting: `It could not be worked out: ${failure}` };
  if (read === null || explained === null || compared === null || wired === null)
    return { waiting: "It is still being worked out: print once it is in." };
  const { job, study, place, notes } = read;
  return { answered: { job, study, place, notes, explained, compared: compared.compare, wired: wired.wiring } };
}

const standing = <A extends LongAnswer>({ answer, stale }: Slip<A>): A | null => (stale ? null : answer);

/** The one before where it says the same, so that nothing is laid out anew for a change elsewhere. */
export function sameOr(before: ToPrint, now: ToPrint): ToPrint {
  const flat = (it: ToPrint): Readonly<Record<string, unknown>> => ("answered" in it ? { ...it.answered } : { ...it });
  const [a, b] = [flat(before), flat(now)];
  const names = Object.keys({ ...a, ...b });
  return names.every((name) => a[name] === b[name]) ? before : now;
}
