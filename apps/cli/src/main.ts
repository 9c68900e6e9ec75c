import { constants } from "node:os";
import { stayput } from "./stayput.ts";

const say = (line: string): void => void process.stderr.write(`${line}\n`);

// a reader that has seen enough (head, less) closes the pipe: that is no fault
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") say(`stayput: the answer could not be written: ${error.message}`);
  process.exit(error.code === "EPIPE" ? 0 : 1);
});
process.stderr.on("error", () => process.exit());

const write = (text: string): Promise<void> =>
  new Promise((resolve) => {
    process.stdout.write(text, () => {
      resolve();
    });
  });

function stopping(): AbortSignal {
  const stop = new AbortController();
  // a shell's codes: 130 for Ctrl-C, 143 for a plain kill
  for (const name of ["SIGINT", "SIGTERM"] as const) {
    process.once(name, () => {
      stop.abort(128 + constants.signals[name]);
    });
  }
  return stop.signal;
}

const io = { stdin: process.stdin, say, watched: process.stderr.isTTY, write, stopping };
const { code, answer } = await stayput(process.argv.slice(2), io);
if (answer !== "") process.stdout.write(answer);
process.exitCode = code;
