import type { Stats } from "node:fs";
import { stat, writeFile } from "node:fs/promises";
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
 * Writes a file. A file that holds something is not written over unless `replace` says so; an empty one, or a device, has
 * nothing to lose.
 * @throws Misuse that says why it cannot be written
 */
export async function writeText(path: string, text: string, replace: boolean): Promise<void> {
  try {
    await writeFile(path, text, { flag: replace || (await nothingToLose(path)) ? "w" : "wx" });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "unknown";
    throw new Misuse(`--out: ${path.slice(0, 300)}: ${reasons[code] ?? `it cannot be written (${code})`}`);
  }
}

async function nothingToLose(path: string): Promise<boolean> {
  const there = await found(path);
  return there !== null && !(there.isFile() && there.size > 0);
}

/** Whether two paths lead to one file, by whatever links. */
export async function isSameFile(one: string, other: string): Promise<boolean> {
  const [a, b] = await Promise.all([found(one), found(other)]);
  return a !== null && b !== null && a.dev === b.dev && a.ino === b.ino;
}

const found = (path: string): Promise<Stats | null> => stat(path).catch(() => null);
