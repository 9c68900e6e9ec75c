import type { Handover } from "@stayput/handout";
import { parseJob, resolve, type Job, type JobInput } from "@stayput/job";
import { bankTemp_C, compare, explain, planStay, wiring } from "@stayput/sim";
import { readFileSync } from "node:fs";

export type Demo = "family-caravan" | "bush-camper";

/** A demo job as written, for a test to change. */
export const demoInput = (demo: Demo): JobInput =>
  JSON.parse(readFileSync(new URL(`../../../shared/demo/${demo}.json`, import.meta.url), "utf8")) as JobInput;

/** A job with its answers, ready to print; few skies, so that a test is quick. */
export async function handoverOf(input: unknown, draws = 20): Promise<Handover> {
  const parsed = parseJob(input);
  if (!parsed.ok) throw new Error(parsed.faults.map(({ message }) => message).join("\n"));
  return answered(parsed.job, draws);
}

async function answered(job: Job, draws: number): Promise<Handover> {
  const resolved = await resolve(job);
  if (!resolved.ok) throw new Error("the place is not known");
  const { study, place, notes } = resolved;
  const skies = { seed: 1, draws };
  const plan = planStay(study.climate, study.trip, study.trip.nights);
  return {
    ...{ job, study, place, notes },
    explained: explain(study, { skies }),
    compared: compare(study, { skies, payload_kg: job.payload_kg }),
    wired: wiring(study.setups, ({ bank }) => bankTemp_C(plan, bank)),
    date: "2026-11-02",
    locale: "en-AU",
  };
}

/** A page's words as read: tags out, spaces and escapes as they print. */
export const wordsOf = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/g, "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ");

/** Names of the tags of a page in order, pictures left out: a picture breaks its labels by their length. */
export const tagsOf = (html: string): string[] =>
  [...html.replace(/<svg class="picture"[\s\S]*?<\/svg>/g, "<svg/>").matchAll(/<\/?[a-z][a-z0-9]*/g)].map(
    ([tag]) => tag,
  );
