import manifest from "../package.json" with { type: "json" };
import { readCommand } from "./command.ts";
import { Misuse, Refusal } from "./faults.ts";
import type { Io } from "./io/streams.ts";
import { help, verbHelp } from "./text/help.ts";
import { plain } from "./text/plain.ts";
import { verbs } from "./verbs/index.ts";

/** What a command came to. */
export interface Outcome {
  /** 0 done, 1 what was given is invalid, 2 misuse, 128 and a signal's number where it was stopped by that */
  readonly code: number;
  /** what is left to put on standard output: the answer, or nothing */
  readonly answer: string;
}

/** The whole command line but its streams: from the words after the program's name to an answer and an exit code. */
export async function stayput(words: readonly string[], io: Io): Promise<Outcome> {
  try {
    return await outcome(words, io);
  } catch (error) {
    return { code: told(error, io.say), answer: "" };
  }
}

async function outcome(words: readonly string[], io: Io): Promise<Outcome> {
  const command = readCommand(words);
  if (command.does === "help") return done(help(verbs));
  if (command.does === "version") return done(`${manifest.version}\n`);
  if (command.does === "verb-help") return done(verbHelp(command.verb));
  const { verb, request, idle } = command;
  for (const name of idle) io.say(`--${name} changes nothing in ${verb.name}`);
  const run = await verb.load();
  if (!request.options.lines) return done(await run(request, io));
  const { runLines } = await import("./lines/runLines.ts");
  return { code: await runLines(run, request, io), answer: "" };
}

const done = (answer: string): Outcome => ({ code: 0, answer });

function told(error: unknown, say: Io["say"]): 1 | 2 {
  if (error instanceof Misuse) {
    say(`stayput: ${plain(error.message, 1000)}`);
    say("stayput --help says what there is.");
    return 2;
  }
  if (error instanceof Refusal) {
    const file = plain(error.file, 120);
    for (const { message, line } of error.faults) say(`${file}${line === undefined ? "" : `:${line}`}: ${message}`);
    return 1;
  }
  // never a stack trace: whoever reads this is at a counter
  const message = error instanceof Error ? error.message : String(error);
  say(`stayput: this is a fault of the program, not of the job: ${plain(message, 1000)}`);
  return 1;
}
