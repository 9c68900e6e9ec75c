import type { Found, Keys } from "./fault.ts";

/**
 * The faults between fields, less those that say nothing sound: where the field blamed, or one that the fault rests on, is
 * refused on its own, what was worked out from it would mislead.
 */
export function sound(crossed: readonly Found[], refused: readonly Found[]): Found[] {
  const paths = new Set(refused.map(({ keys }) => pathKey(keys)));
  const isRefused = (keys: Keys): boolean =>
    Array.from({ length: keys.length + 1 }, (_, n) => pathKey(keys.slice(0, n))).some((path) => paths.has(path));
  const known = new Map<readonly Keys[], boolean>(); // many references rest on one list of ids
  const shaky = (restsOn: readonly Keys[]): boolean => {
    const answer = known.get(restsOn) ?? restsOn.some(isRefused);
    known.set(restsOn, answer);
    return answer;
  };
  return crossed.filter(({ keys, restsOn = [] }) => !isRefused(keys) && !shaky(restsOn));
}

const pathKey = (keys: Keys): string => JSON.stringify(keys);
