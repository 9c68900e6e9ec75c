import { loadNearestPlaces, parseJob, resolve, type Fault, type WordsReader } from "@stayput/job";
import { chemistries, darkHours, strandedLoads } from "@stayput/sim";
import type { Read } from "./protocol.ts";

let words: WordsReader | undefined;

/** The reader of quantities in words is large, so it is fetched when some value is first typed in words. */
async function loadWords(): Promise<void> {
  words ??= (await import("@stayput/job/quantities")).words;
}

/** A job as typed: checked, its words read, its place looked up, every default filled in; or every fault. */
export async function readJob(typed: unknown): Promise<Read | { readonly faults: readonly Fault[] }> {
  const nearestPlaces = await loadNearestPlaces();
  const parsedNow = () => parseJob(typed, { nearestPlaces, ...(words === undefined ? {} : { words }) });
  let parsed = parsedNow();
  if (!parsed.ok && parsed.needsWords === true) {
    await loadWords();
    parsed = parsedNow();
  }
  if (!parsed.ok) return { faults: parsed.faults };
  const resolved = await resolve(parsed.job);
  if (!resolved.ok) return { faults: resolved.faults };
  const { study, place, notes } = resolved;
  const reserves = Object.fromEntries(
    study.setups.map(({ id, bank }) => [id, bank.reserve ?? chemistries[bank.chemistry].reserve]),
  );
  const stranded = Object.fromEntries(
    study.setups.map((setup) => [setup.id, strandedLoads(setup).map(({ name }) => name)]),
  );
  return {
    job: parsed.job,
    study,
    place,
    notes: [...new Set([...parsed.notes, ...notes])],
    dark: darkHours(study),
    stranded,
    reserves,
  };
}
