import { Inflate } from "fflate";

/** Packed bytes handed over at a time: deflate gives at most 1032 times as many, so this bounds what one step can make. */
const STEP = 256;

/**
 * Deflated bytes unpacked, but never much past `most`: a small text can ask for gigabytes, and is stopped on the way.
 *
 * @returns the bytes; null where there are more than `most`, or the stream is damaged or ends early
 */
export function inflateUpTo(packed: Uint8Array, most: number, dictionary: Uint8Array): Uint8Array | null {
  const chunks: Uint8Array[] = [];
  const state = { size: 0, ended: false };
  const stream = new Inflate({ dictionary }, (chunk, final) => {
    chunks.push(chunk);
    state.size += chunk.length;
    state.ended ||= final;
  });
  try {
    for (let from = 0; from < packed.length; from += STEP) {
      stream.push(packed.subarray(from, from + STEP), from + STEP >= packed.length);
      if (state.size > most) return null;
    }
  } catch {
    return null;
  }
  return state.ended ? joined(chunks, state.size) : null;
}

function joined(chunks: readonly Uint8Array[], size: number): Uint8Array {
  const all = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}
