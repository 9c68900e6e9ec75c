import { open } from "node:fs/promises";
import type { Readable } from "node:stream";
import { Misuse, Refusal } from "../faults.ts";

/** Largest file read: far over any job's and over a year of a thousand skies. */
export const MOST_BYTES = 8_000_000;

/**
 * The text of a file, or of standard input for "-". Refuses at once what is larger than `MOST_BYTES`, and what is not text.
 *
 * @throws Misuse where there is no such file to read; Refusal where what it holds cannot be text
 */
export async function readText(operand: string, stdin: Readable): Promise<string> {
  if (operand === "-") return decoded("standard input", await gathered("standard input", stdin));
  const handle = await opened(operand);
  try {
    const stat = await handle.stat();
    if (stat.isFile() && stat.size > MOST_BYTES) throw tooLarge(operand, `${stat.size} bytes`);
    return decoded(operand, await gathered(operand, handle.createReadStream({ autoClose: false })));
  } finally {
    await handle.close();
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  ENOTDIR: "there is no such file",
  EACCES: "it may not be read",
  EPERM: "it may not be read",
  ENAMETOOLONG: "the name is too long",
  ELOOP: "its links go round in a circle",
};

/** A file's bytes as a stream. @throws Misuse where there is no such file to read */
export async function openedFile(path: string): Promise<Readable> {
  return (await opened(path)).createReadStream();
}

async function opened(path: string): ReturnType<typeof open> {
  const handle = await openHandle(path);
  if (!(await handle.stat()).isDirectory()) return handle;
  await handle.close();
  throw new Misuse(`${path.slice(0, 300)} is a directory; a file is needed`);
}

async function openHandle(path: string): ReturnType<typeof open> {
  try {
    return await open(path, "r");
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "unknown";
    throw new Misuse(`${path.slice(0, 300)}: ${reasons[code] ?? `it cannot be opened (${code})`}`);
  }
}

/** All bytes of a stream, given up as soon as there are too many. */
async function gathered(name: string, stream: Readable): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    const bytes = typeof chunk === "string" ? Buffer.from(chunk) : (chunk as Buffer);
    size += bytes.length;
    if (size > MOST_BYTES) throw tooLarge(name, `more than ${MOST_BYTES} bytes`);
    chunks.push(bytes);
  }
  return Buffer.concat(chunks);
}

const tooLarge = (name: string, given: string): Refusal =>
  new Refusal(name, [{ message: `the file has ${given}; accepted is at most ${MOST_BYTES}` }]);

/** UTF-8, or UTF-16 where the file begins with its mark, as some shells and editors write. */
function decoded(name: string, bytes: Uint8Array): string {
  const encoding = bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : "utf-8";
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    if (!text.includes("\0")) return text;
  } catch {
    // said below, as for text with zero bytes in it
  }
  throw new Refusal(name, [{ message: "the file holds something other than text; accepted is text in UTF-8" }]);
}
