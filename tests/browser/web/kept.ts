import type { BrowserContext, Locator, Page } from "playwright-core";

/** A page with everything noted that must not happen. */
export async function watchedPage(context: BrowserContext, address: string, complaints: string[]): Promise<Page> {
  const page = await context.newPage();
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(address);
  return page;
}

/** What the page says under its head. */
export const slip = (page: Page, words: RegExp): Locator => page.locator(".slip", { hasText: words });

export interface KeptText {
  readonly id: string;
  readonly text: string;
}

/** Every job in the browser's store, read past the page. */
export const keptJobs = (page: Page): Promise<KeptText[]> =>
  page.evaluate(
    () =>
      new Promise<KeptText[]>((resolve, reject) => {
        const asked = indexedDB.open("stayput");
        asked.onerror = () => reject(new Error("the store does not open"));
        asked.onsuccess = () => {
          const db = asked.result;
          if (!db.objectStoreNames.contains("jobs")) {
            resolve([]);
            return;
          }
          const all = db.transaction("jobs").objectStore("jobs").getAll();
          all.onsuccess = () => {
            db.close();
            resolve(all.result as KeptText[]);
          };
        };
      }),
  );

/** Holds the browser's store up for whatever asks for it after this, until `release`. */
export const holdUp = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const asked = indexedDB.open("stayput");
        asked.onsuccess = () => {
          const jobs = asked.result.transaction(["heads", "jobs"], "readwrite").objectStore("jobs");
          const here = window as unknown as { holds?: (() => void)[] };
          let held = true;
          (here.holds ??= []).push(() => (held = false));
          const hold = (): void => {
            if (held) jobs.count().onsuccess = hold;
            else asked.result.close();
          };
          hold();
          resolve();
        };
      }),
  );

/** Ends the earliest hold-up. */
export const release = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { holds: (() => void)[] }).holds.shift()!());

/** The revision that the page knows of the job on its sheet. */
export const revisionOf = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      (document.querySelector("stay-sheet") as unknown as { keeper: { now: { revision: number } } }).keeper.now
        .revision,
  );

export interface Planted extends KeptText {
  /** leaves its entry in the list out */
  readonly headless?: boolean;
}

/** Puts texts into the browser's store past the page, as a fault of disk or of an older version might have left them. */
export const plant = (page: Page, texts: readonly Planted[]): Promise<void> =>
  page.evaluate(
    (all) =>
      new Promise<void>((resolve) => {
        const asked = indexedDB.open("stayput");
        asked.onsuccess = () => {
          const tx = asked.result.transaction(["heads", "jobs"], "readwrite");
          for (const [i, { id, text, headless }] of all.entries()) {
            tx.objectStore("jobs").put({ id, text });
            const changed = Date.now() - i * 60_000;
            const said = { title: `planted ${id}`, customer: "A. Customer", place: "Upington, South Africa" };
            if (headless !== true)
              tx.objectStore("heads").put({
                id,
                revision: 1,
                ...said,
                loads: 3,
                setups: 1,
                changed,
                deleted: null,
                older: false,
              });
          }
          tx.oncomplete = () => {
            asked.result.close();
            resolve();
          };
        };
      }),
    texts as Planted[],
  );
