/** Largest line taken: as large as a job's text may be. */
export const MOST_LINE_BYTES = 5_000_000;

export interface Line {
  /** in the input, from 1 */
  readonly number: number;
  readonly size_bytes: number;
  /** null where there are more than `MOST_LINE_BYTES`: those are counted and let go */
  readonly bytes: Buffer | null;
}

const NEWLINE = 10;

/** Lines of a stream of bytes, held one at a time, without their ends. */
export async function* splitLines(chunks: AsyncIterable<Buffer>): AsyncGenerator<Line> {
  let number = 1;
  let held: Buffer[] = [];
  let size_bytes = 0;
  const line = (): Line => {
    const bytes = size_bytes > MOST_LINE_BYTES ? null : Buffer.concat(held);
    const whole = { number, size_bytes, bytes };
    number++;
    held = [];
    size_bytes = 0;
    return whole;
  };
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf(NEWLINE); end !== -1; end = chunk.indexOf(NEWLINE, from)) {
      hold(chunk.subarray(from, end));
      yield line();
      from = end + 1;
    }
    hold(chunk.subarray(from));
  }
  if (size_bytes > 0) yield line();

  function hold(piece: Buffer): void {
    size_bytes += piece.length;
    if (size_bytes > MOST_LINE_BYTES) held = [];
    else if (piece.length > 0) held.push(piece);
  }
}
