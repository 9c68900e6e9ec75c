import { stayput } from "./stayput.ts";

const say = (line: string): void => void process.stderr.write(`${line}\n`);

// a reader that has seen enough (head, less) closes the pipe: that is no fault
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") say(`stayput: the answer could not be written: ${error.message}`);
  process.exit(error.code === "EPIPE" ? 0 : 1);
});
process.stderr.on("error", () => process.exit());

const { code, answer } = await stayput(process.argv.slice(2), { stdin: process.stdin, say });
if (answer !== "") process.stdout.write(answer);
process.exitCode = code;
