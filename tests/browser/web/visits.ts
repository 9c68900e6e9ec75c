import type { BrowserContext, Page } from "playwright-core";
import { afterEach, beforeEach, expect } from "vitest";
import { watchedPage } from "./kept.ts";
import { served } from "./served.ts";
import type { Site } from "./site.ts";

export interface Visits {
  readonly site: Site;
  /** the device of the test that runs: its pages share one store */
  readonly context: BrowserContext;
  /** whatever went wrong on any of its pages; a test that means to have it so empties the list */
  readonly complaints: string[];
  /** another page on the same device */
  readonly open: (address?: string) => Promise<Page>;
}

/** One site and one browser for a file of tests, a device of its own for each test, which must end without complaints. */
export function visits(): Visits {
  const here = served();
  let context: BrowserContext;
  const complaints: string[] = [];
  beforeEach(async () => {
    context = await here.browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB" });
    complaints.length = 0;
  });
  afterEach(async () => {
    await context.close();
    expect(complaints).toEqual([]);
  });
  return {
    get site() {
      return here.site;
    },
    get context() {
      return context;
    },
    complaints,
    open: (address = here.site.url) => watchedPage(context, address, complaints),
  };
}
