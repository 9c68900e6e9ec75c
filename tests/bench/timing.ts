/**
 * Times by the processor's own count, in rounds that take turns, and gives the least of each: other work on the machine
 * only ever adds, and adds most to what keeps the processor busiest. Ratios within one run are what is to be looked at,
 * never the times.
 */
export function interleaved(cases: Readonly<Record<string, () => void>>, rounds: number): Map<string, number> {
  const taken = new Map(Object.keys(cases).map((name) => [name, [] as number[]]));
  for (const run of Object.values(cases)) run(); // once to warm up
  for (let round = 0; round < rounds; round++) {
    for (const [name, run] of Object.entries(cases)) taken.get(name)!.push(cpu_ms(run));
  }
  return new Map([...taken].map(([name, times]) => [name, Math.min(...times)]));
}

/** Processor time of this process [ms]. */
export function cpu_ms(run: () => void): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
