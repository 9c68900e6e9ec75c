import { open } from "node:fs/promises";
import { logoDataUrl, MOST_LOGO_BYTES } from "@stayput/handout";
import { Misuse, Refusal } from "../faults.ts";

/**
 * A workshop's mark as a data URL.
 * @throws Misuse where there is no such file to read; Refusal where it is no logo or is too large
 */
export async function readLogo(path: string): Promise<string> {
  const bytes = await firstBytes(path);
  try {
    return logoDataUrl(bytes);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new Refusal(path, [{ message: error.message }]);
  }
}

/** No more is read than shows that a file is too large. */
async function firstBytes(path: string): Promise<Uint8Array> {
  try {
    const handle = await open(path, "r");
    try {
      const bytes = new Uint8Array(MOST_LOGO_BYTES + 1);
      const { bytesRead } = await handle.read(bytes, 0, bytes.length, 0);
      return bytes.subarray(0, bytesRead);
    } finally {
      await handle.close();
    }
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "unknown";
    const reason = code === "ENOENT" ? "there is no such file" : `it cannot be read (${code})`;
    throw new Misuse(`--logo: ${path.slice(0, 300)}: ${reason}`);
  }
}
