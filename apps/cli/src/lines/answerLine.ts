import { Readable } from "node:stream";
import { Misuse, Refusal } from "../faults.ts";
import type { Io } from "../io/streams.ts";
import type { Request, Run } from "../verbs/verb.ts";
import { MOST_LINE_BYTES, type Line } from "./splitLines.ts";

type LineFault = Omit<Refusal["faults"][number], "line">;

/** What a line came to: one line of JSON, and whether it is an answer. */
export interface LineAnswer {
  readonly ok: boolean;
  readonly text: string;
}

/** Answers the job on one line as the verb would answer it alone, or tells its faults. Never throws. */
export async function answerLine(run: Run, { options }: Request, line: Line, io: Io): Promise<LineAnswer> {
  if (line.bytes === null) return refused(line, [tooLong(line)]);
  const request = { operands: ["-"], options: { ...options, json: true, lines: false, progress: false } };
  const alone: Io = { ...io, stdin: Readable.from([line.bytes]), say: () => undefined, watched: false };
  try {
    return { ok: true, text: onOneLine(await run(request, alone)) };
  } catch (error) {
    return refused(line, faultsOf(error));
  }
}

const tooLong = ({ size_bytes }: Line): LineFault => ({
  message: `the line has ${size_bytes} bytes; accepted is at most ${MOST_LINE_BYTES}`,
});

/** A JSON document without its line breaks. */
const onOneLine = (json: string): string =>
  json.trimEnd().includes("\n") ? `${JSON.stringify(JSON.parse(json))}\n` : json;

function refused({ number }: Line, faults: readonly LineFault[]): LineAnswer {
  return { ok: false, text: `${JSON.stringify({ line: number, faults })}\n` };
}

function faultsOf(error: unknown): LineFault[] {
  if (error instanceof Refusal) return error.faults.map((fault) => inLine(fault, error.file));
  if (error instanceof Misuse) return [{ message: error.message }];
  const message = error instanceof Error ? error.message : String(error);
  return [{ message: `this is a fault of the program, not of the job: ${message.slice(0, 1000)}` }];
}

/** A fault without its line in the job, which is the only one; of another file, with the file's name. */
function inLine({ line, ...fault }: Refusal["faults"][number], file: string): LineFault {
  if (file !== "standard input") return { ...fault, message: `${file}:${line ?? 1}: ${fault.message}` };
  return { ...fault, message: fault.message.replace("JSON: line 1, column", "JSON: column") };
}
