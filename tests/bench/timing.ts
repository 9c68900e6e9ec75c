/**
 * Times by the processor's own count, so that other work on the machine disturbs less, in rounds that take turns, and gives
 * medians: ratios within one run are what is to be looked at, never the times.
 */
export function interleaved(cases: Readonly<Record<string, () => void>>, rounds: number): Map<string, number> {
  const taken = new Map(Object.keys(cases).map((name) => [name, [] as number[]]));
  for (const run of Object.values(cases)) run(); // once to warm up
  for (let round = 0; round < rounds; round++) {
    for (const [name, run] of Object.entries(cases)) taken.get(name)!.push(cpu_ms(run));
  }
  return new Map([...taken].map(([name, times]) => [name, median(times)]));
}

/** Processor time of this process in user code [ms]. */
export function cpu_ms(run: () => void): number {
  const before = process.cpuUsage().user;
  run();
  return (process.cpuUsage().user - before) / 1000;
}

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
