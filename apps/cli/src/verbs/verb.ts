import type { Io } from "../io/streams.ts";
import type { OptionName, Options } from "../options.ts";

export interface Request {
  readonly operands: readonly string[];
  readonly options: Options;
}

/** What a verb does: from a request to all that goes to standard output. */
export type Run = (request: Request, io: Io) => Promise<string>;

export interface Verb {
  readonly name: string;
  /** operands as shown in the help */
  readonly operands: string;
  /** how many it takes, at least and at most */
  readonly takes: readonly [least: number, most: number];
  readonly options: readonly OptionName[];
  /** options that other verbs take and that change nothing in this one: taken, so that one set goes with any verb, and said */
  readonly idle?: readonly OptionName[];
  readonly answers: string;
  /** what an option means to this verb, where that is not what the table says */
  readonly means?: Partial<Readonly<Record<OptionName, string>>>;
  /** its code, loaded only when it is called, so that none waits for another's */
  readonly load: () => Promise<Run>;
}
