import type { Reporter, TestModule } from "vitest/node";
import { propertyRuns } from "./seed.ts";

/** Says the seed at the start and the outcome at the end, for logs and for eyes: "12 passed, 0 failed". */
export default class Tally implements Reporter {
  onInit(): void {
    process.stdout.write(
      `property tests: seed ${propertyRuns.seed} (FC_SEED), ${propertyRuns.numRuns} cases each (FC_RUNS)\n`,
    );
  }

  onTestRunEnd(modules: readonly TestModule[]): void {
    const states = modules.flatMap((module) => [...module.children.allTests()].map((test) => test.result().state));
    const broken = modules.filter((module) => module.state() === "failed" && module.errors().length > 0).length;
    const count = (state: string): number => states.filter((one) => one === state).length;
    const parts = [`${count("passed")} passed`, `${count("failed") + broken} failed`];
    if (count("skipped") > 0) parts.push(`${count("skipped")} skipped`);
    process.stdout.write(`${parts.join(", ")}\n`);
  }
}
