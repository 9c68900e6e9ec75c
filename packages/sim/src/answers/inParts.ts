/**
 * Long answers come in parts: a generator yields how far it is, and at times what it knows already, and returns the whole.
 * Drained at once it is a plain function; driven with pauses it can be stopped and watched, in a page or in a worker.
 */
export interface Part<Answer> {
  /** 0 to 1 */
  readonly progress: number;
  /** what stands so far, where that is worth showing */
  readonly soFar?: Answer | undefined;
}

/** An answer that comes in parts; drive it with `watched` or `atOnce`. */
export type InParts<Answer> = Generator<Part<Answer>, Answer, void>;

/** The whole answer, at once. */
export function atOnce<Answer>(parts: InParts<Answer>): Answer {
  for (;;) {
    const { done, value } = parts.next();
    if (done === true) return value;
  }
}

/** What of an AbortSignal is used here; any AbortSignal fits. Named apart, since this package knows no DOM. */
export interface StopSignal {
  /** @throws the reason, once it is aborted */
  throwIfAborted(): void;
}

/** How to stop, watch and pace an answer that comes in parts. */
export interface Watch<Answer> {
  readonly signal?: StopSignal | undefined;
  /** called with each part as it comes */
  readonly onPart?: ((part: Part<Answer>) => void) | undefined;
  /** lets the host do other things; called between parts */
  readonly pause?: (() => Promise<void>) | undefined;
}

/** The whole answer, part by part. @throws the signal's reason when it is aborted */
export async function watched<Answer>(
  parts: InParts<Answer>,
  { signal, onPart, pause }: Watch<Answer>,
): Promise<Answer> {
  for (;;) {
    signal?.throwIfAborted();
    const { done, value } = parts.next();
    if (done === true) return value;
    onPart?.(value);
    await pause?.();
  }
}
