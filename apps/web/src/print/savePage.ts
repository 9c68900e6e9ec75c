import fontUrl from "@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url";
import { handoutHtml } from "@stayput/handout";
import { fileNameOf, saveText } from "../share/jobFile.ts";
import { handoverNow } from "./handoverNow.ts";
import type { PrintSettings } from "./printSettings.ts";
import type { Answered } from "./toPrint.ts";

/** The printed pages as one file that needs nothing else. False where it was called off. */
export async function savePage(answered: Answered, settings: PrintSettings): Promise<boolean> {
  const font = await fontBytes(fontUrl);
  const text = handoutHtml(handoverNow(answered, settings), { font, fitter: settings.fitter });
  return saveText(fileNameOf(answered.job.title, ".handout.html"), text, "text/html");
}

/** The page's own type; undefined where it cannot be had, and the file is then set in its reader's. */
async function fontBytes(url: string): Promise<Uint8Array | undefined> {
  // the page that is one file has it inside, and asks no address at all
  const inside = /^data:[^,]*;base64,(.*)$/s.exec(url)?.[1];
  if (inside !== undefined) return Uint8Array.from(atob(inside), (letter) => letter.charCodeAt(0));
  try {
    const response = await fetch(url);
    return response.ok ? new Uint8Array(await response.arrayBuffer()) : undefined;
  } catch {
    return undefined;
  }
}
