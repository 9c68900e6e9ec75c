import { execFile } from "node:child_process";
import { Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { stayput as inProcess } from "../../../apps/cli/src/stayput.ts";

export const root = fileURLToPath(new URL("../../../", import.meta.url));

export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** The command line in this process: all of it but `main.ts`, which only has the streams. */
export async function stayput(
  args: readonly string[],
  input: string | Buffer = "",
  stop: AbortSignal = new AbortController().signal,
): Promise<Outcome> {
  const said: string[] = [];
  const stdin = Readable.from([Buffer.from(input)]);
  const written: string[] = [];
  const { code, answer } = await inProcess(args, {
    stdin,
    say: (line) => void said.push(`${line}\n`),
    watched: false,
    write: (text) => Promise.resolve(void written.push(text)),
    stopping: () => stop,
  });
  return { code, out: written.join("") + answer, err: said.join("") };
}

const launch = ["--conditions=source", "--import", "tsx", "apps/cli/src/main.ts"];

/** The real command as its own process, from the sources. */
export function spawned(args: readonly string[], input = ""): Promise<Outcome> {
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      [...launch, ...args],
      { cwd: root, maxBuffer: 100e6, timeout: 60_000, killSignal: "SIGKILL" },
      (error, out, err) => resolve({ code: error === null ? 0 : codeOf(error), out, err }),
    );
    // a command that does not read its input may close it before all is written
    child.stdin?.on("error", () => undefined);
    child.stdin?.end(input);
  });
}

/** -1 where it was killed: no answer in time is a failure of its own. */
const codeOf = ({ code }: { code?: unknown }): number => (typeof code === "number" ? code : -1);

/** The real command, its output cut short by a reader that closes the pipe after the first bytes. */
export function cutShort(args: readonly string[]): Promise<Outcome> {
  const shell = `${[process.execPath, ...launch, ...args].map((word) => `'${word}'`).join(" ")} | head -c 10; exit "\${PIPESTATUS[0]}"`;
  return new Promise((resolve) => {
    execFile("bash", ["-c", shell], { cwd: root, timeout: 60_000 }, (error, out, err) =>
      resolve({ code: error === null ? 0 : codeOf(error), out, err }),
    );
  });
}

/** The real command with its input held open, sent a signal once it has written a first line. */
export function interrupted(args: readonly string[], input: string, signal: NodeJS.Signals): Promise<Outcome> {
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      [...launch, ...args],
      { cwd: root, maxBuffer: 100e6, timeout: 60_000 },
      (error, out, err) => resolve({ code: error === null ? 0 : codeOf(error), out, err }),
    );
    child.stdin?.on("error", () => undefined);
    child.stdin?.write(input);
    child.stdout?.once("data", () => child.kill(signal));
  });
}
