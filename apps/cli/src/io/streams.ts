import type { Readable } from "node:stream";

/** What a verb may touch of the world: it reads a stream, says things on the side, and hands back its answer. */
export interface Io {
  readonly stdin: Readable;
  /** progress and faults; a line at a time */
  readonly say: (line: string) => void;
}
