import {
  bankTemp_C,
  chanceGridInParts,
  compareInParts,
  planStay,
  roundTheYearInParts,
  sizeInParts,
  swayInParts,
  upgradesInParts,
  watched,
  wiring,
  type CompareAnswer,
  type InParts,
  type Setup,
  type SizeAnswer,
  type SizeGrid,
  type Skies,
  type Study,
  type SwayAnswer,
  type UpgradesAnswer,
  type WiringAnswer,
  type YearAnswer,
} from "@stayput/sim";
import { pause } from "./pause.ts";
import type { Read } from "./protocol.ts";
import { readJob } from "./readJob.ts";

/** Questions that take longer than a frame, each asked when its picture is wanted. */
export type LongQuestion =
  | { readonly kind: "year" | "compare" | "wiring" }
  | { readonly kind: "sizes"; readonly setup: string }
  | { readonly kind: "upgrades"; readonly from: string; readonly to: string }
  | { readonly kind: "sway"; readonly setup: string };

export type LongAnswer =
  | { readonly kind: "year"; readonly year: YearAnswer; readonly horizon_days: number }
  | { readonly kind: "compare"; readonly compare: CompareAnswer }
  | { readonly kind: "wiring"; readonly wiring: readonly WiringAnswer[] }
  | {
      readonly kind: "sizes";
      readonly grids: readonly SizeGrid[];
      readonly size: SizeAnswer;
      /** what comes out weighs, bank and panels [kg] */
      readonly fitted_kg: number;
      /** what was assumed in asking */
      readonly notes: readonly string[];
    }
  | { readonly kind: "upgrades"; readonly upgrades: UpgradesAnswer }
  | { readonly kind: "sway"; readonly sway: SwayAnswer };

/** Enough skies to put the assumptions in order. */
const swaySkies: Skies = { seed: 1, draws: 60 };

interface Asking {
  readonly read: Read;
  readonly part: <A>(parts: InParts<A>, from?: number, to?: number) => Promise<A>;
}

/** @throws the signal's reason when stopped; an Error where the job has faults */
export async function askLong(
  typed: unknown,
  question: LongQuestion,
  onProgress: (progress: number) => void,
  signal: AbortSignal,
): Promise<LongAnswer> {
  const read = await readJob(typed);
  signal.throwIfAborted();
  if ("faults" in read) throw new Error(read.faults[0]?.message ?? "The job has faults.");
  const part = <A>(parts: InParts<A>, from = 0, to = 1) =>
    watched(parts, { signal, pause, onPart: ({ progress }) => onProgress(from + (to - from) * progress) });
  return answerTo(question, { read, part });
}

async function answerTo(question: LongQuestion, { read, part }: Asking): Promise<LongAnswer> {
  const { study, job } = read;
  switch (question.kind) {
    case "year":
      return { kind: "year", year: await part(roundTheYearInParts(study)), horizon_days: 60 };
    case "compare":
      return { kind: "compare", compare: await part(compareInParts(study, { payload_kg: job.payload_kg })) };
    case "wiring":
      return { kind: "wiring", wiring: study.setups.map((setup) => wiringFor(study, setup)) };
    case "upgrades": {
      const [from, to] = [setupCalled(study, question.from), setupCalled(study, question.to)];
      return { kind: "upgrades", upgrades: await part(upgradesInParts(study, from, to)) };
    }
    case "sizes":
      return sizes(setupCalled(study, question.setup), { read, part });
    case "sway":
      return { kind: "sway", sway: await part(swayInParts(study, setupCalled(study, question.setup), swaySkies)) };
  }
}

async function sizes(setup: Setup, { read, part }: Asking): Promise<LongAnswer> {
  const { sizeRequest, sizeSkies } = await import("./sizeRequest.ts");
  const { request, fitted_kg, notes } = sizeRequest(read, setup);
  const size = await part(sizeInParts(read.study, setup, request, sizeSkies), 0, 0.4);
  const grids = await part(chanceGridInParts(read.study, setup, request, sizeSkies), 0.4, 1);
  return { kind: "sizes", grids, size, fitted_kg, notes };
}

/** Each against all, since the size to pull depends on the stage after. */
function wiringFor(study: Study, setup: Setup): WiringAnswer {
  const plan = planStay(study.climate, study.trip, study.trip.nights);
  const all = wiring(study.setups, ({ bank }) => bankTemp_C(plan, bank));
  return all.find(({ id }) => id === setup.id)!;
}

function setupCalled(study: Study, id: string): Setup {
  const found = study.setups.find((setup) => setup.id === id);
  if (found === undefined) throw new Error(`There is no setup ${id}.`);
  return found;
}
