import type * as parts from "./handoutParts.ts";

export type HandoutParts = typeof parts;

let loaded: HandoutParts | null = null;
let loading: Promise<HandoutParts> | null = null;

/** The printed pages' code, where it is in already: what is asked just before a print cannot wait. */
export const handoutNow = (): HandoutParts | null => loaded;

/** @throws an Error in words where it cannot be fetched; the next call tries again */
export function loadHandout(): Promise<HandoutParts> {
  loading ??= import("./handoutParts.ts").then(
    (found) => (loaded = found),
    (error: unknown) => {
      loading = null;
      throw new Error("The printed pages could not be fetched. Try again when there is a connection.", {
        cause: error,
      });
    },
  );
  return loading;
}
