import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launchChromium } from "../chromium.ts";
import { builtSite, type Site } from "./site.ts";

export interface Served {
  readonly site: Site;
  readonly browser: Browser;
}

/** One site and one browser for a file of tests: there from its first test to its last. */
export function served(): Served {
  let browser: Browser;
  let site: Site;
  beforeAll(async () => {
    [site, browser] = await Promise.all([builtSite(), launchChromium()]);
  });
  afterAll(async () => {
    await browser.close();
    await site.close();
  });
  return {
    get site() {
      return site;
    },
    get browser() {
      return browser;
    },
  };
}
