import type { JobInput } from "@stayput/job";
import { saveFile } from "../bench/savePicture.ts";

/** A job as the text of a file, exactly as it stands on the sheet, right or wrong. */
export const toText = (job: JobInput): string => `${JSON.stringify(job, null, 2)}\n`;

/** A file's name from a title: letters and digits of any script, nothing that a file system would mind. */
export function fileNameOf(title: unknown, ending: string): string {
  const text = typeof title === "string" ? title.slice(0, 200).normalize("NFC") : "";
  // a mark belongs to the letter before it; one by itself, as emoji leave behind, is none
  const lettered = text.replace(/([\p{L}\p{N}]\p{M}*)|[^]/gu, (_, letter?: string) => letter ?? " ");
  const words = lettered.replace(/ +/g, " ").trim();
  return `${Array.from(words.replace(/ /gu, "-")).slice(0, 60).join("") || "job"}${ending}`;
}

interface SavePicker {
  showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
}

/** Saves a text where the person says, where the browser can ask; else among the downloads. False where it was called off. */
export async function saveText(name: string, text: string, type: string): Promise<boolean> {
  const ask = (window as SavePicker).showSaveFilePicker;
  const ending = name.slice(name.lastIndexOf("."));
  if (ask !== undefined) {
    try {
      const handle = await ask.call(window, { suggestedName: name, types: [{ accept: { [type]: [ending] } }] });
      const file = await handle.createWritable();
      await file.write(text);
      await file.close();
      return true;
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return false;
      // a refused picker leaves the downloads
    }
  }
  saveFile(name, new Blob([text], { type }));
  return true;
}

export const saveJob = (job: JobInput): Promise<boolean> =>
  saveText(fileNameOf(job.title, ".json"), toText(job), "application/json");

/** Largest file looked at: a job's text is far smaller. */
const MOST_BYTES = 20_000_000;

/** @throws an Error in words where it is no text of a job's size */
export async function textOf(file: File): Promise<string> {
  if (file.size > MOST_BYTES)
    throw new Error(`${file.name} has ${Math.round(file.size / 1e6)} MB; a job file has at most 20.`);
  return file.text();
}

/** Asks for one file, by the browser's own picker. Null where none was taken. */
export function pickFile(accept = ".json,application/json"): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement("input");
    input.type = "file";
    input.accept = accept;
    input.onchange = () => resolve(input.files?.[0] ?? null);
    input.oncancel = () => resolve(null);
    input.click();
  });
}
