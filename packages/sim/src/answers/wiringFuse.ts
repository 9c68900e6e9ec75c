import { fuseKinds, fuseMargin, fuseSizes_A } from "../feed/index.ts";
import type { FuseAdvice } from "./wiringTypes.ts";

interface FuseCase {
  readonly end: string;
  readonly cable?: FuseAdvice["cable"];
  /** the end and the cable in words, where there are two cables to tell apart */
  readonly at?: string;
  readonly running_A: number;
  /** of the thinnest conductor it protects; null where not known */
  readonly ampacity_A: number | null;
  /** null where no battery stands at this end */
  readonly fault_A: number | null;
  readonly nominal_V: number;
}

/**
 * A fuse above the running current, by a quarter where the conductor allows, and within what the conductor carries; and
 * the kinds that can open at the fault a battery beside them would feed.
 */
export function fuseAdvice(given: FuseCase): FuseAdvice {
  const { end, cable = null, at = end, running_A, ampacity_A, fault_A, nominal_V } = given;
  const rated_A = fuseFor_A(running_A, ampacity_A ?? Infinity);
  const kinds = rated_A === null ? [] : kindsFor(rated_A, fault_A ?? 0, nominal_V);
  const most_A =
    ampacity_A === null || rated_A === null ? null : (fuseSizes_A.findLast((size) => size <= ampacity_A) ?? null);
  const advice = { end, cable, running_A, ampacity_A, fault_A, rated_A, most_A, kinds };
  return { ...advice, sentence: fuseSentence(at, advice) };
}

function fuseFor_A(running_A: number, ampacity_A: number): number | null {
  const within = fuseSizes_A.filter((size) => size > running_A && size <= ampacity_A);
  return within.find((size) => size >= running_A * fuseMargin) ?? within.at(-1) ?? null;
}

const kindsFor = (rated_A: number, fault_A: number, nominal_V: number): string[] =>
  fuseKinds
    .filter(
      (kind) =>
        kind.smallest_A <= rated_A &&
        kind.largest_A >= rated_A &&
        kind.interrupts_A >= fault_A &&
        kind.most_V >= nominal_V * 1.25,
    )
    .map((kind) => kind.name);

function fuseSentence(at: string, advice: Omit<FuseAdvice, "sentence">): string {
  const { rated_A, most_A, running_A, ampacity_A, fault_A, kinds } = advice;
  if (rated_A === null) {
    const carries = ampacity_A === null ? "less than the table goes down to" : `only ${ampacity_A.toFixed(0)} A`;
    return `At ${at} no fuse fits: ${running_A.toFixed(0)} A run and the conductor carries ${carries}. Thicker cable first.`;
  }
  const tight = rated_A < running_A * fuseMargin ? " (tight: less than a quarter above the running current)" : "";
  const opens =
    fault_A === null
      ? ""
      : `; a dead short there could draw ${(fault_A / 1000).toFixed(1)} kA, which ${openedBy(kinds)}`;
  const unknown = ampacity_A === null ? ", if the conductor carries it" : "";
  const upTo = most_A !== null && most_A > rated_A ? ` (up to ${most_A} A still protects the cable)` : "";
  return `Fuse at ${at}: ${rated_A} A${tight}${upTo}${unknown}${opens}.`;
}

const openedBy = (kinds: readonly string[]): string =>
  kinds.length > 0 ? `a ${kinds[0]} still opens` : "no kind listed here opens: ask the battery's maker";

/** What a dead short at a battery's posts could draw, its volts over its inner resistance. [A] */
export const fault_A = (volts_V: number, resistance_Ohm: number): number => volts_V / resistance_Ohm;

/** A starter battery where the job says nothing of it, for each 12 V. Common practice, no source. */
export const starterBattery = { volts_V: 12.8, resistance_Ohm: 0.005 } as const;
