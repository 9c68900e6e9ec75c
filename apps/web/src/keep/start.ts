import { demoJob } from "../store/demoJob.ts";
import type { Keeper } from "./keeper.ts";
import { lastOpen, remember } from "./remembered.ts";

/** A store that does not answer, as some broken profiles have, is not waited for longer than this. */
const PATIENCE_ms = 4000;

/** What to begin with: the job of a link, else the job that was open last, else the example. */
export async function start(keeper: Keeper): Promise<void> {
  const fragment = linkIn(location.hash);
  const last = lastOpen();
  if (fragment === null && last === null) keeper.show(demoJob);
  window.addEventListener("hashchange", () => {
    const later = linkIn(location.hash);
    if (later !== null) void open(keeper, later);
  });
  const tidied = patient(keeper.tidy()).then(
    (answers) => {
      if (!answers) keeper.sayStoreSilent();
      return answers ? ("tidy" as const) : ("silent" as const);
    },
    () => "refused" as const, // said when the job is opened or written
  );
  if (fragment !== null) return open(keeper, fragment);
  if (last === null) return;
  const store = await tidied;
  if (keeper.now !== null || keeper.adoptTyped()) return;
  if (store !== "tidy" && (await keeper.openNoted(last))) return;
  if (store !== "silent" && (await keeper.open(last))) return;
  if (store !== "silent") remember(null);
  if (!keeper.adoptTyped()) keeper.show(demoJob);
}

const patient = async (work: Promise<void>): Promise<boolean> =>
  Promise.race([work.then(() => true), new Promise<boolean>((done) => setTimeout(() => done(false), PATIENCE_ms))]);

/** A fragment that holds a job, or was meant to; the page's own are the ids of its rows. */
export function linkIn(hash: string): string | null {
  const fragment = hash.replace(/^#/, "");
  return fragment === "" || /^row-\d$/.test(fragment) ? null : fragment;
}

/** The address is then plain again, so that a reload does not open the link twice. */
async function open(keeper: Keeper, fragment: string): Promise<void> {
  history.replaceState(history.state, "", location.pathname + location.search);
  if (!(await keeper.takeLink(fragment)) && keeper.now === null) keeper.show(demoJob);
}
