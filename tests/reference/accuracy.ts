import { compare, type Check } from "./compare.ts";
import { topics } from "./topics.ts";

/** Prints, for each quantity, how far the project is from the references: mean, 90th percentile and worst difference. */
for (const { name, checks } of topics) {
  console.log(`\n${name}`);
  for (const [quantity, group] of grouped(checks)) {
    const off = group.map((check) => Math.abs(compare(check).difference)).sort((a, b) => a - b);
    const mean = off.reduce((sum, d) => sum + d, 0) / off.length;
    const p90 = off[Math.ceil(0.9 * off.length) - 1];
    const worst = off.at(-1);
    const show = (d: number | undefined) => (d ?? NaN).toPrecision(3).padStart(10);
    console.log(
      `  ${quantity.padEnd(58)} n=${String(off.length).padStart(4)} mean ${show(mean)}  p90 ${show(p90)}  worst ${show(worst)}`,
    );
  }
}

function grouped(checks: readonly Check[]): Map<string, Check[]> {
  const groups = new Map<string, Check[]>();
  for (const check of checks) {
    const key = `${check.quantity} [${check.unit}]`;
    groups.set(key, [...(groups.get(key) ?? []), check]);
  }
  return groups;
}
