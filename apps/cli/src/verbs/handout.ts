import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { Study, WiringAnswer } from "@stayput/sim";
import { Misuse } from "../faults.ts";
import { chosenSetups, notesFor, readJob, type JobRead } from "../io/readJob.ts";
import { readLogo } from "../io/readLogo.ts";
import { skiesOf } from "../io/skiesOf.ts";
import { isSameFile, writeText } from "../io/writeText.ts";
import type { Io } from "../io/streams.ts";
import type { Options } from "../options.ts";
import type { Run } from "./verb.ts";

/**
 * The printed pages as one HTML file, to `--out` or else to standard output. A file that holds something is written over
 * only with `--replace`, and the job's own never.
 */
export const handoutVerb: Run = async ({ operands: [operand = "-"], options }, io) => {
  const { out, replace } = options;
  if (out !== null && (await isSameFile(out, operand))) throw new Misuse("--out: it is the job's own file");
  const text = await written(operand, options, io);
  if (out === null) return text;
  await writeText(out, text, replace);
  io.say(`written to ${out.slice(0, 300)}; open it in a browser and print it`);
  return "";
};

async function written(operand: string, options: Options, io: Io): Promise<string> {
  // all setups are read, since what to pull now depends on what the others will ask of it
  const read = await readJob(operand, { month: options.month, setup: null }, io);
  const setups = chosenSetups(read.study.setups, options.setup);
  const study = { ...read.study, setups };
  const [{ compare, explain }, { handoutHtml }] = await Promise.all([
    import("@stayput/sim"),
    import("@stayput/handout"),
  ]);
  const skies = await skiesOf(operand, study, options, io);
  const { job, place } = read;
  const pages = {
    ...{ job, place, study, notes: notesFor(read, setups) },
    explained: explain(study, { skies }),
    compared: compare(study, { skies, payload_kg: job.payload_kg }),
    wired: await wiringOf(read, study),
    date: options.date ?? today(),
    locale: options.locale ?? Intl.NumberFormat().resolvedOptions().locale,
    logo: options.logo === null ? null : await readLogo(options.logo),
  };
  return handoutHtml(pages, { font: await font() });
}

async function wiringOf({ study: whole }: JobRead, { setups }: Study): Promise<WiringAnswer[]> {
  const { bankTemp_C, planStay, wiring } = await import("@stayput/sim");
  const plan = planStay(whole.climate, whole.trip, whole.trip.nights);
  const all = wiring(whole.setups, ({ bank }) => bankTemp_C(plan, bank));
  return all.filter((answer) => setups.some(({ id }) => id === answer.id));
}

/** The day on this machine's clock, "YYYY-MM-DD". */
function today(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

const face = "@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2";

/** The type that the pages are set in, which goes into the file. */
const font = (): Promise<Uint8Array> => readFile(createRequire(import.meta.url).resolve(face));
