import type { Fault } from "@stayput/job";
import type { Read } from "../worker/protocol.ts";
import { readJob } from "../worker/readJob.ts";
import type { RemoteFiles } from "./remoteFiles.ts";

/**
 * What the worker does for files and links: it has the parser and the simulation already, so the page need not load them
 * a second time.
 */
export const files: RemoteFiles = {
  async readText(text) {
    const { readForSheet } = await import("./readForSheet.ts");
    return readForSheet(text);
  },
  async readLink(fragment) {
    const { readLinkForSheet } = await import("./readForSheet.ts");
    return readLinkForSheet(fragment);
  },
  async packLink(typed) {
    const { inWords } = await import("./readForSheet.ts");
    const { packJob, parseJob } = await import("./jobFiles.ts");
    const parsed = await inWords((options) => parseJob(typed, options));
    return parsed.ok ? { ok: true, text: packJob(parsed.job) } : { ok: false, faults: parsed.faults };
  },
  async hoursCsv(typed, setup) {
    const { csv, hoursColumns, ledgerOf } = await import("./jobFiles.ts");
    const read = await readTyped(typed);
    if (!read.ok) return read;
    return { ok: true, text: csv(hoursColumns(ledgerOf(read.study, setup), read.study.trip)) };
  },
  async answerJson(typed) {
    const { answerText, explain } = await import("./jobFiles.ts");
    const read = await readTyped(typed);
    return read.ok ? { ok: true, text: answerText(read, explain(read.study)) } : read;
  },
};

async function readTyped(typed: unknown): Promise<({ ok: true } & Read) | { ok: false; faults: readonly Fault[] }> {
  const read = await readJob(typed);
  return "faults" in read ? { ok: false, faults: read.faults } : { ok: true, ...read };
}
