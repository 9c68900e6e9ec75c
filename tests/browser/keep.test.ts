import { readFile } from "node:fs/promises";
import type { JobInput } from "@stayput/job";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { answered, jobOf, type } from "./web/openPage.ts";
import { holdUp, keptJobs, plant, release, revisionOf, slip } from "./web/kept.ts";
import { visits } from "./web/visits.ts";

const here = visits();

// What was tried and what came through, printed at the end.
const tally = {
  pagesKilled: 0,
  bytesTyped: 0,
  bytesLost: 0,
  tabsCrossed: 0,
  storesRefused: 0,
  harmedJobs: 0,
  names: 0,
};

afterAll(() => {
  console.log(`jobs kept: ${JSON.stringify(tally)}`);
});

/** The machine may be busy: what comes late has not failed. */
const eventually = <T>(what: () => T | Promise<T>) => expect.poll(what, { timeout: 15_000 });
const { complaints, open } = here;
const title = (page: Page): Promise<string> => page.locator('[data-path="title"]').inputValue();
/** Whether the first job is on the sheet; what it comes to is no matter here. */
const ready = (page: Page): Promise<void> => eventually(() => title(page)).not.toBe("New job");
const jobs = (page: Page): Promise<void> => page.getByRole("button", { name: "Jobs", exact: true }).click();
const whenKept = (page: Page, what: (texts: string[]) => boolean): Promise<void> =>
  eventually(async () => what((await keptJobs(page)).map(({ text }) => text))).toBe(true);

describe("a page that is taken away in the middle of an edit", () => {
  /** Reopens the page and counts what is missing of the job that was on it. */
  async function expectNothingLost(before: JobInput): Promise<Page> {
    const again = await open();
    await eventually(() => title(again)).toBe(before.title);
    const after = await jobOf(again);
    tally.pagesKilled++;
    tally.bytesTyped += JSON.stringify(before).length;
    tally.bytesLost += Math.abs(JSON.stringify(before).length - JSON.stringify(after).length);
    expect(after).toEqual(before);
    return again;
  }

  async function kill(page: Page): Promise<void> {
    const died = page.waitForEvent("crash");
    void (await here.context.newCDPSession(page)).send("Page.crash").catch(() => undefined);
    await died;
    complaints.length = 0;
  }

  it("has lost nothing when it is opened again, right or wrong", async () => {
    let page = await open();
    await ready(page);
    await type(page, "title", "Killed while typing");
    await type(page, "setups[0].bank.capacity_Ah", "two hundr");
    await type(page, "loads[1].watts", "3 A");
    const before = await jobOf(page);
    await page.close({ runBeforeUnload: false });
    page = await expectNothingLost(before);
    expect(await page.locator('[data-path="setups[0].bank.capacity_Ah"]').inputValue()).toBe("two hundr");
    await answered(page, "faults");
  });

  it("has lost nothing when it is reloaded in the very task of the edit", async () => {
    const page = await open();
    await ready(page);
    for (const name of ["one", "two", "three"]) {
      const before = await page.evaluate((text) => {
        const input = document.querySelector<HTMLInputElement>('[data-path="title"]')!;
        input.value = `Reloaded at once, ${text}`;
        input.dispatchEvent(new Event("input", { bubbles: true }));
        const { job } = (document.querySelector("stay-sheet") as unknown as { store: { job: JobInput } }).store;
        location.reload();
        return job;
      }, name);
      await page.waitForLoadState("load");
      const again = await expectNothingLost(before);
      await again.close();
    }
  });

  it("has lost nothing when its process dies", async () => {
    const page = await open();
    await ready(page);
    await type(page, "title", "Died");
    await page.locator('[data-path="customer.notes"]').pressSequentially(" and then the lights went out");
    const before = await jobOf(page);
    await kill(page);
    await expectNothingLost(before);
  });

  it("has lost nothing when its process dies before a slow store has taken anything", async () => {
    const page = await open();
    await ready(page);
    await type(page, "title", "Kept");
    await whenKept(page, (texts) => texts.some((text) => text.includes('"Kept"')));
    await holdUp(page);
    await page.locator('[data-path="title"]').pressSequentially(" and more");
    const before = await jobOf(page);
    await kill(page);
    const again = await expectNothingLost(before);
    expect(await keptJobs(again)).toHaveLength(1);
  });

  it("has lost nothing, and made no copy, when the store has taken all but the last change", async () => {
    const page = await open();
    await ready(page);
    await holdUp(page);
    await type(page, "title", "First");
    await holdUp(page);
    await type(page, "title", "Second");
    const before = await jobOf(page);
    await release(page);
    await eventually(() => revisionOf(page)).toBe(1);
    await kill(page);
    const again = await expectNothingLost(before);
    expect(await keptJobs(again)).toHaveLength(1);
  });
});

describe("two tabs on one job", () => {
  async function both(): Promise<[Page, Page]> {
    const a = await open();
    await ready(a);
    await type(a, "title", "Shared");
    await whenKept(a, (texts) => texts.some((text) => text.includes("Shared")));
    const b = await open();
    await eventually(() => title(b)).toBe("Shared");
    tally.tabsCrossed++;
    return [a, b];
  }

  it("tells the later one in words, and takes theirs where it is asked to", async () => {
    const [a, b] = await both();
    await type(a, "trip.nights", "4");
    await slip(b, /changed in another tab/).waitFor();
    await b.getByRole("button", { name: "Take theirs" }).click();
    await eventually(async () => (await jobOf(b)).trip.nights).toBe(4);
    expect(await keptJobs(b)).toHaveLength(1);
  });

  it.each([
    ["with word from the other", false],
    ["with no word from the other, by the revision alone", true],
  ])("keeps both where both are changed, %s", async (_how, silent) => {
    if (silent) await here.context.addInitScript(() => Reflect.deleteProperty(globalThis, "BroadcastChannel"));
    const [a, b] = await both();
    await type(a, "trip.nights", "4");
    await whenKept(a, (texts) => texts.some((text) => text.includes('"nights": 4')));
    if (!silent) await slip(b, /changed in another tab/).waitFor();
    await type(b, "trip.nights", "9");
    await slip(b, /kept as a copy/).waitFor();
    await eventually(async () => (await keptJobs(b)).length).toBe(2);
    const kept = (await keptJobs(b)).map(({ text }) => JSON.parse(text) as JobInput);
    expect(new Map(kept.map((job) => [job.title, job.trip.nights]))).toEqual(
      new Map([
        ["Shared", 4],
        ["Shared, copy", 9],
      ]),
    );
    expect((await jobOf(a)).trip.nights).toBe(4);
    await b.getByRole("button", { name: "Take theirs instead" }).click();
    await eventually(async () => (await jobOf(b)).trip.nights).toBe(4);
    await slip(b, /copy was deleted/).waitFor();
    await b.locator(".slip").getByRole("button", { name: "Undo" }).click();
    await eventually(async () => (await jobOf(b)).trip.nights).toBe(9);
  });

  it("lets go of the store when a newer version of the page wants it, and says so", async () => {
    const [a] = await both();
    await a.evaluate(
      () =>
        new Promise((done) => {
          indexedDB.open("stayput", 99).onsuccess = (event) => {
            (event.target as IDBOpenDBRequest).result.close();
            done(null);
          };
        }),
    );
    await slip(a, /newer version of this page/).waitFor();
  });

  it("says that an older version in another tab stands in the way, and goes on when that is closed", async () => {
    const [a, b] = await both();
    await a.evaluate(async () => {
      const wanted = await new Promise<IDBDatabase>((done) => {
        const asked = indexedDB.open("stayput");
        asked.onsuccess = () => done(asked.result);
      });
      Object.assign(window, { wanted }); // held open, and deaf to what others want
    });
    await b.close();
    await here.context.addInitScript(() => {
      const plain = indexedDB.open.bind(indexedDB);
      indexedDB.open = (name, version) => plain(name, version === undefined ? version : version + 1);
    });
    const newer = await open();
    await slip(newer, /older version of this page/).waitFor();
    await a.close();
    await type(newer, "title", "After the older one");
    await whenKept(newer, (texts) => texts.some((text) => text.includes("After the older one")));
    await eventually(() => newer.locator(".slip.grave").count()).toBe(0);
  });
});

describe("a store that is full or refused", () => {
  it("says so, offers the file, and keeps the job once there is room", async () => {
    const page = await open();
    await ready(page);
    await page.evaluate(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
    const devtools = await here.context.newCDPSession(page);
    const { origin } = new URL(here.site.url);
    await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
    await type(page, "title", "No room for it");
    await slip(page, /its storage is full/).waitFor();
    tally.storesRefused++;
    const download = page.waitForEvent("download");
    await page.locator(".slip").getByRole("button", { name: "Save the job file" }).click();
    const file = await (await download).path();
    expect(JSON.parse(await readFile(file, "utf8"))).toEqual(await jobOf(page));
    expect((await download).suggestedFilename()).toBe("No-room-for-it.json");
    page.on("dialog", (dialog) => void dialog.accept()); // it warns before it goes
    await page.reload();
    await slip(page, /its storage is full/).waitFor();
    expect(await title(page)).toBe("No room for it");
    await devtools.send("Storage.overrideQuotaForOrigin", { origin });
    await type(page, "title", "Room again");
    await whenKept(page, (texts) => texts.some((text) => text.includes("Room again")));
    await eventually(() => page.locator(".slip.grave").count()).toBe(0);
  });

  it.each([
    ["refuses with an error", "SecurityError", /refuses storage here/],
    ["is not there at all", "missing", /refuses storage here/],
  ])("works on, and says so, where the store %s", async (_how, name, words) => {
    await here.context.addInitScript((error) => {
      const refuse = (): never => {
        throw new DOMException("no", error);
      };
      const none = error === "missing" ? undefined : { open: refuse };
      Object.defineProperty(globalThis, "indexedDB", { value: none });
    }, name);
    const page = await open();
    await ready(page);
    await type(page, "title", "Nowhere to keep it");
    await slip(page, words).waitFor();
    tally.storesRefused++;
    expect(await page.evaluate(() => !dispatchEvent(new Event("beforeunload", { cancelable: true })))).toBe(true);
  });
});

describe("the list of jobs", () => {
  it("finds, duplicates, deletes and puts back", async () => {
    const page = await open();
    await ready(page);
    for (const name of ["Café run", "North in July", "Coast"]) {
      await page.getByRole("button", { name: "Start an empty sheet" }).click();
      await type(page, "title", name);
      await whenKept(page, (texts) => texts.some((text) => text.includes(name)));
    }
    await jobs(page);
    const rows = page.locator("job-list .kept > li");
    await eventually(() => rows.count()).toBe(3);
    await page.getByLabel(/Find a job/).fill("cafe RUN");
    expect(await rows.count()).toBe(1);
    await page.getByRole("button", { name: "Duplicate Café run" }).click();
    await eventually(() => rows.count()).toBe(2);
    await page.getByLabel(/Find a job/).fill("");
    await page.getByRole("button", { name: "Delete Coast" }).click();
    await page.locator("job-list").getByText("Coast was deleted").waitFor();
    expect(await title(page)).toBe("New job"); // it was on the sheet
    await page.locator("job-list").getByRole("button", { name: "Undo" }).click();
    await page.getByRole("button", { name: "Delete Coast" }).waitFor();
    await page.getByRole("button", { name: "Delete North in July" }).click();
    await page.locator("job-list").getByText("North in July was deleted").waitFor();
    await page.getByRole("button", { name: "Close" }).click();
    await jobs(page);
    await page.getByText("Deleted in the last 30 days: 1").click();
    await page.getByRole("button", { name: "Put back North in July" }).click();
    await page.locator("job-list").getByRole("button", { name: "North in July", exact: true }).click();
    await eventually(() => title(page)).toBe("North in July");
    await page.reload();
    await eventually(() => title(page)).toBe("North in July");
  });

  it("lists what cannot be read, with its file to save, and opens the rest", async () => {
    const page = await open();
    await ready(page);
    await type(page, "title", "Sound");
    await whenKept(page, (texts) => texts.length === 1);
    const good = JSON.parse((await keptJobs(page))[0]!.text) as Record<string, unknown>;
    const harmed = [
      { id: "cut", text: JSON.stringify(good).slice(0, 500), says: /cut off/ },
      { id: "newer", text: JSON.stringify({ ...good, version: 99 }), says: /newer program/ },
      { id: "polluted", text: JSON.stringify(good).replace("{", '{"__proto__":{"hacked":1},'), says: /__proto__/ },
      { id: "hollow", text: JSON.stringify({ ...good, loads: 7 }), says: /loads/ },
      { id: "nothing", text: "", says: /empty/ },
    ];
    await plant(page, harmed);
    await plant(page, [{ id: "headless", text: "[]", headless: true }]);
    await page.evaluate(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
    await jobs(page);
    for (const { id, text, says } of harmed) {
      const row = page.locator("job-list li", { hasText: `planted ${id}` });
      await row.getByText(says).waitFor();
      const download = page.waitForEvent("download");
      await row.getByRole("button", { name: "Save its file" }).click();
      expect(await readFile(await (await download).path(), "utf8")).toBe(text);
      tally.harmedJobs++;
    }
    await page.locator("job-list li", { hasText: "without its entry" }).waitFor();
    expect(await page.evaluate(() => "hacked" in {})).toBe(false);
    await page.locator("job-list").getByRole("button", { name: "Sound", exact: true }).click();
    expect(await title(page)).toBe("Sound");
    expect(await keptJobs(page)).toHaveLength(7);
  });

  it("shows hostile names as what they are: text", async () => {
    const page = await open();
    await ready(page);
    const names = [
      "<img src=x onerror=\"window.hacked='img'\"><script>window.hacked='script'</script>",
      "\u202Egnp.exe\u202C \u2066ltr\u2069",
      "👩‍👩‍👧‍👦🧊 ﷽",
      '=HYPERLINK("http://x")${alert(1)}{{7*7}}\';--',
      "A".repeat(100_000),
    ];
    for (const name of names) {
      await page.getByRole("button", { name: "Start an empty sheet" }).click();
      await type(page, "title", name);
      await type(page, "customer.name", name);
      await whenKept(page, (texts) => texts.some((text) => text.includes(JSON.stringify(name))));
      tally.names++;
    }
    await jobs(page);
    await eventually(() => page.locator("job-list .kept > li").count()).toBe(names.length);
    expect(await page.locator("job-list img, job-list script, job-list a").count()).toBe(0);
    expect(await page.evaluate(() => "hacked" in window)).toBe(false);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
    await page.locator("job-list .what > .link").last().click();
    await eventually(() => title(page)).toBe(names[0]);
    await page.reload();
    await eventually(() => title(page)).toBe(names[0]);
  });
});
