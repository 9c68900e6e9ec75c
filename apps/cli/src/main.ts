import { readCommand } from "./command.ts";
import { Misuse, Refusal } from "./faults.ts";
import { help, verbHelp } from "./text/help.ts";
import { plain } from "./text/plain.ts";
import { verbs } from "./verbs/index.ts";
import manifest from "../package.json" with { type: "json" };

const say = (line: string): void => void process.stderr.write(`${line}\n`);

/** From words to exit code: 0 done, 1 what was given is invalid, 2 misuse. Only an answer goes to standard output. */
async function main(words: readonly string[]): Promise<number> {
  try {
    process.stdout.write(await answer(words));
    return 0;
  } catch (error) {
    return told(error);
  }
}

async function answer(words: readonly string[]): Promise<string> {
  const command = readCommand(words);
  if (command.does === "help") return help(verbs);
  if (command.does === "version") return `${manifest.version}\n`;
  if (command.does === "verb-help") return verbHelp(command.verb);
  const run = await command.verb.load();
  return run(command.request, { stdin: process.stdin, say });
}

function told(error: unknown): number {
  if (error instanceof Misuse) {
    say(`stayput: ${error.message}`);
    say("stayput --help says what there is.");
    return 2;
  }
  if (error instanceof Refusal) {
    const file = plain(error.file, 120);
    for (const { message, line } of error.faults) say(`${file}${line === undefined ? "" : `:${line}`}: ${message}`);
    return 1;
  }
  // never a stack trace: whoever reads this is at a counter
  say(
    `stayput: this is a fault of the program, not of the job: ${error instanceof Error ? error.message : String(error)}`,
  );
  return 1;
}

// a reader that has seen enough (head, less) closes the pipe: that is no fault
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  say(`stayput: the answer could not be written: ${error.message}`);
  process.exit(1);
});

process.exitCode = await main(process.argv.slice(2));
