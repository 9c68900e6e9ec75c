import type { Readable } from "node:stream";

/** What a verb may touch of the world: it reads a stream, says things on the side, and hands back its answer. */
export interface Io {
  readonly stdin: Readable;
  /** progress and faults; a line at a time */
  readonly say: (line: string) => void;
  /** whether somebody watches what is said: standard error is a terminal */
  readonly watched: boolean;
  /** puts text on standard output; settles when it has gone, so that no more is made than is taken */
  readonly write: (text: string) => Promise<void>;
  /** From here on a request to stop (Ctrl-C) is told by this signal, its exit code as the reason; a second one kills. */
  readonly stopping: () => AbortSignal;
  /** the text of `--skies`, where it was read already */
  readonly skies?: string;
}
