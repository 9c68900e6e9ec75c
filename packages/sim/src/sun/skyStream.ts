import { xoroshiro128plus, type RandomGenerator } from "pure-rand";
import { mustBeWhole } from "../numeric/must.ts";

/**
 * A stream of random bits of its own for each draw of a seed, whatever other draws are made. The generator is xoroshiro128+
 * (Blackman & Vigna 2018) of pure-rand; its 128 bits of state are splitmix-style hashes of the seed and the draw.
 *
 * @param seed any safe whole number
 * @param draw 0 to 2³¹ - 1
 * @throws RangeError where either is not such a number
 */
export function skyStream(seed: number, draw: number): RandomGenerator {
  mustBeWhole("seed", seed, Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
  mustBeWhole("draw", draw, 0, 2 ** 31 - 1);
  const high = Math.floor(seed / 2 ** 32);
  const root = mix(mix(seed | 0) ^ high) ^ Math.imul(draw, 0x9e3779b1); // odd factor: no two draws of a seed meet
  return xoroshiro128plus.fromState([0, 1, 2, 3].map((i) => mix(root + Math.imul(i, 0x85ebca6b))));
}

/** A number above 0 and below 1 from the stream's next 32 bits, both ends equally far. */
export function nextUnit(stream: RandomGenerator): number {
  return ((stream.unsafeNext() >>> 0) + 0.5) / 2 ** 32;
}

/** Final mixing step of MurmurHash3 (Appleby, public domain): one to one on 32 bits. */
function mix(bits: number): number {
  let h = bits | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
