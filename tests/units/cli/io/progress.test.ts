import { Readable } from "node:stream";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { teller } from "../../../../apps/cli/src/io/progress.ts";
import type { Io } from "../../../../apps/cli/src/io/streams.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** What is said of ten seconds of work that reports twice a second. */
function said(progress: boolean, watched: boolean): string[] {
  const lines: string[] = [];
  const io: Io = {
    stdin: Readable.from([]),
    say: (line) => void lines.push(line),
    watched,
    write: () => Promise.resolve(),
    stopping: () => new AbortController().signal,
  };
  const tell = teller({ progress }, io);
  for (let half = 1; half <= 20; half++) {
    vi.advanceTimersByTime(500);
    tell(() => `${5 * half} % done`);
  }
  return lines;
}

describe("progress", () => {
  it("is told every two seconds where it is asked for or a terminal watches", () => {
    const told = ["20 % done", "40 % done", "60 % done", "80 % done", "100 % done"];
    expect(said(true, false)).toEqual(told);
    expect(said(false, true)).toEqual(told);
  });

  it("is not told where nobody would read it", () => expect(said(false, false)).toEqual([]));
});
