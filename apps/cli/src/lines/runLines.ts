import { addAbortSignal } from "node:stream";
import { setImmediate as turn } from "node:timers/promises";
import { Misuse } from "../faults.ts";
import { teller } from "../io/progress.ts";
import { checkSkiesText } from "../io/readSkies.ts";
import { openedFile, readText } from "../io/readText.ts";
import type { Io } from "../io/streams.ts";
import { count } from "../text/numbers.ts";
import type { Request, Run } from "../verbs/verb.ts";
import { answerLine } from "./answerLine.ts";
import { splitLines } from "./splitLines.ts";

/**
 * A job a line in, a JSON document a line out, in the same order; faults of a line stand in its place. Blank lines are
 * passed over. One line is held at a time, and the next is read when the answer has gone.
 *
 * @returns the exit code: 0, 1 where a line was invalid, or that of the request to stop, which ends after a whole line
 * @throws Misuse where there is nothing to read, Refusal where the skies are not valid
 */
export async function runLines(run: Run, request: Request, io: Io): Promise<number> {
  const [operand = "-"] = request.operands;
  const given = { ...io, ...(await skiesText(operand, request, io)) };
  const input = operand === "-" ? io.stdin : await openedFile(operand);
  const stop = io.stopping();
  const tally = { done: 0, invalid: 0 };
  const tell = teller(request.options, io);
  try {
    for await (const line of splitLines(addAbortSignal(stop, input))) {
      if (line.bytes?.toString("latin1").trim() === "") continue;
      const { ok, text } = await answerLine(run, request, line, given);
      await io.write(text);
      tally.done++;
      if (!ok) tally.invalid++;
      tell(() => told(tally));
      await turn(); // a request to stop is heard between lines
      if (stop.aborted) break;
    }
  } catch (error) {
    if (!stop.aborted) throw error;
  } finally {
    input.destroy();
  }
  if (tally.invalid > 0) io.say(`${told(tally)}; their faults stand in their places`);
  return stop.aborted ? (stop.reason as number) : Math.sign(tally.invalid);
}

const told = ({ done, invalid }: { done: number; invalid: number }): string =>
  `${count(done, "line")} done${invalid === 0 ? "" : `, ${invalid} of them invalid`}`;

/** The skies of a file, read and checked once, since a pipe can be read only once. */
async function skiesText(operand: string, { options: { skies } }: Request, io: Io): Promise<Pick<Io, "skies">> {
  if (skies === null) return {};
  if (skies === "-" && operand === "-") throw new Misuse("standard input holds the jobs or the skies, not both");
  const text = await readText(skies, io.stdin);
  checkSkiesText(skies, text);
  return { skies: text };
}
