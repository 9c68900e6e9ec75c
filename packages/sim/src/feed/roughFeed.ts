import type { FeedCircuit } from "./circuit.ts";
import { converterMost_A } from "./converter.ts";

/**
 * What a feed gives a bank on average over a drive, near enough to say where it then stands [A].
 * @param bank_V volts at which the bank comes to take charge [V]
 * @param bank_Ohm its inner resistance [Ω], 0 or more
 * @returns 0 or more
 */
export function roughFeed_A(feed: FeedCircuit, bank_V: number, bank_Ohm: number): number {
  const { shares, converter, spare_A, resistance_Ohm } = feed;
  const perOhm = 1 / (resistance_Ohm + bank_Ohm);
  let feed_A = 0;
  for (let i = 0; i < shares.length; i++) {
    const { source_V, weight } = shares[i]!;
    if (converter !== null) feed_A += weight * converterMost_A(feed, source_V, bank_V);
    else if (source_V > bank_V) feed_A += weight * Math.min(spare_A, (source_V - bank_V) * perOhm);
  }
  return feed_A;
}
