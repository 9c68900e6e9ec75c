import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MOST_LINE_BYTES, splitLines, type Line } from "../../../../apps/cli/src/lines/splitLines.ts";

async function split(chunks: readonly Buffer[]): Promise<Line[]> {
  const lines: Line[] = [];
  // eslint-disable-next-line @typescript-eslint/require-await -- a stream of bytes that are all there
  async function* given(): AsyncGenerator<Buffer> {
    yield* chunks;
  }
  for await (const line of splitLines(given())) lines.push(line);
  return lines;
}

describe("lines of a stream", () => {
  it("are the same wherever the bytes are cut", async () => {
    const anyLine = fc.string({ unit: "binary", maxLength: 12 }).map((text) => text.replaceAll("\n", ""));
    await fc.assert(
      fc.asyncProperty(fc.array(anyLine, { maxLength: 8 }), fc.integer({ min: 1, max: 7 }), async (texts, step) => {
        const bytes = Buffer.from(texts.map((text) => `${text}\n`).join(""));
        const chunks = Array.from({ length: Math.ceil(bytes.length / step) }, (_, i) =>
          bytes.subarray(i * step, (i + 1) * step),
        );
        const lines = await split(chunks);
        expect(lines.map((line) => Buffer.from(line.bytes ?? "").toString())).toEqual(
          texts.map((text) => Buffer.from(text).toString()),
        );
        expect(lines.map(({ number }) => number)).toEqual(texts.map((_, i) => i + 1));
      }),
    );
  });

  it("include a last one without its end, and none after an end", async () => {
    expect(await split([Buffer.from("a\nb")])).toHaveLength(2);
    expect(await split([Buffer.from("a\nb\n")])).toHaveLength(2);
    expect(await split([])).toHaveLength(0);
  });

  it("are taken up to the limit; a longer one is counted and let go, and the next is read", async () => {
    const long = Buffer.alloc(MOST_LINE_BYTES + 1, "x");
    const lines = await split([long.subarray(1), Buffer.from("\n"), long, Buffer.from("y\nz\n")]);
    expect(lines.map(({ size_bytes, bytes }) => [size_bytes, bytes?.length ?? null])).toEqual([
      [MOST_LINE_BYTES, MOST_LINE_BYTES],
      [MOST_LINE_BYTES + 2, null],
      [1, 1],
    ]);
  });
});
