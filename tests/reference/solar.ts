import type { Check } from "./compare.ts";
import { airChecks } from "./solar/air.ts";
import { almanacChecks } from "./solar/almanac.ts";
import { clearnessChecks } from "./solar/clearness.ts";
import { extraterrestrialChecks } from "./solar/extraterrestrial.ts";
import { planeChecks } from "./solar/plane.ts";
import { shareChecks } from "./solar/shares.ts";
import { workedExampleChecks } from "./solar/workedExamples.ts";

export const checks: readonly Check[] = [
  ...almanacChecks,
  ...extraterrestrialChecks,
  ...shareChecks,
  ...planeChecks,
  ...clearnessChecks,
  ...airChecks,
  ...workedExampleChecks,
];
