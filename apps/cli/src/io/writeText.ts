import { writeFile } from "node:fs/promises";
import { Misuse } from "../faults.ts";

const reasons: Readonly<Record<string, string>> = {
  EEXIST: "it is there already; --replace writes over it",
  ENOENT: "there is no such directory",
  ENOTDIR: "there is no such directory",
  EISDIR: "it is a directory; a file is needed",
  EACCES: "it may not be written",
  EPERM: "it may not be written",
  EROFS: "it may not be written",
  ENOSPC: "the disk is full",
  ENAMETOOLONG: "the name is too long",
};

/**
 * Writes a file. Nothing is written over unless `replace` says so.
 * @throws Misuse that says why it cannot be written
 */
export async function writeText(path: string, text: string, replace: boolean): Promise<void> {
  try {
    await writeFile(path, text, { flag: replace ? "w" : "wx" });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "unknown";
    throw new Misuse(`--out: ${path.slice(0, 300)}: ${reasons[code] ?? `it cannot be written (${code})`}`);
  }
}
