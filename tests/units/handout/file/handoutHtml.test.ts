import { handoutHtml, logoDataUrl, type Handover } from "@stayput/handout";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { demoInput, handoverOf, tagsOf, wordsOf, type Demo } from "../handover.ts";

let family: Handover;
let bush: Handover;
beforeAll(async () => {
  family = await handoverOf(demoInput("family-caravan"));
  bush = await handoverOf(demoInput("bush-camper"));
});

const spoilt = /NaN|undefined|Infinity|\[object|\bnull\b/;

describe("the file", () => {
  it.each(["family-caravan", "bush-camper"] satisfies Demo[])("of %s has no hole in it", (demo) => {
    const html = handoutHtml(demo === "bush-camper" ? bush : family);
    expect(html).not.toMatch(spoilt);
    expect(html.match(/<article /g)).toHaveLength(2);
    const words = wordsOf(html);
    for (const part of [
      "How long it lasts",
      "Options side by side",
      "When the sun stays away",
      "To mind",
      "Wire and fuses",
    ])
      expect(words).toContain(part);
    expect(words).toContain("Estimate for planning, not a promise.");
    expect(words).toContain("SSE Release 6.0");
  });

  it("is of the customer's page alone where that is asked", () => {
    const html = handoutHtml(family, { fitter: false });
    expect(html.match(/<article /g)).toHaveLength(1);
    expect(html).toMatch(/<\/html>\n$/);
    const words = wordsOf(html);
    expect(words).toContain("Options side by side");
    expect(words).not.toContain("For the fitter");
    expect(handoutHtml(family)).toContain("For the fitter");
  });

  it("runs nothing and asks for nothing from outside", () => {
    const html = handoutHtml(
      { ...family, logo: logoDataUrl(new TextEncoder().encode("<svg/>")) },
      { font: new Uint8Array(9) },
    );
    expect(html).toMatch(/<meta http-equiv="Content-Security-Policy" content="default-src 'none';/);
    expect(html).not.toMatch(/<script|<link|<iframe|<object|<form|<base|\son\w+=|javascript:|@import/i);
    const asked = [...html.matchAll(/(?:src|href|url)\s*[=(]\s*"?([^")\s>]+)/g)].map(([, url]) => url ?? "");
    expect(asked.length).toBeGreaterThan(1);
    for (const url of asked) expect(url).toMatch(/^(data:|#)/);
  });

  it("gives the same for the same, and no clock's day but the one it is given", () => {
    expect(handoutHtml(family)).toBe(handoutHtml(family));
    expect(wordsOf(handoutHtml({ ...family, date: "2031-01-09" }))).toContain("9 January 2031");
  });

  it("says days that never end in words", () => {
    const never = {
      ...family,
      explained: {
        ...family.explained,
        setups: family.explained.setups.map((setup) => ({
          ...setup,
          days: { dark: null, average: null, drawn: { p10: null, p50: null, p90: null } },
          reserveDays: { dark: null, average: null, drawn: { p10: null, p50: null, p90: null } },
        })),
      },
    };
    const words = wordsOf(handoutHtml(never));
    expect(words).toContain("it lasts 60 days or more.");
    expect(words).not.toMatch(spoilt);
  });

  it("prints the money, the mass and the payload of the job", () => {
    const words = wordsOf(handoutHtml(family));
    expect(words).toContain("$4,350");
    expect(words).toContain("−18 kg");
    expect(words).toContain("113 kg"); // 95 kg of payload, and 18 kg lighter
    const over = {
      ...family,
      compared: { setups: family.compared.setups.map((one) => ({ ...one, payloadLeft_kg: -12.2 })) },
    };
    expect(wordsOf(handoutHtml(over))).toContain("over: −12 kg");
  });

  it.each([
    ["a day that is none", { date: "yesterday" }, /date must be a day/],
    ["a logo from elsewhere", { logo: "https://example.com/a.png" }, /logo must be a data URL/],
    ["an answer that is missing", { compared: { setups: [] } }, /compared must hold an answer for setup "now"/],
  ])("refuses %s", (_what, change, fault) => expect(() => handoutHtml({ ...family, ...change })).toThrow(fault));
});

/** The same handover with every text a person writes replaced. */
function renamed(handover: Handover, text: string): Handover {
  const { job, study, explained } = handover;
  const loads = <T extends { readonly name: string }>(list: readonly T[]) =>
    list.map((load) => ({ ...load, name: text }));
  return {
    ...handover,
    job: {
      ...job,
      title: text,
      customer: { name: text, notes: text },
      workshop: { name: text, contact: text },
    },
    place: { ...handover.place, name: text },
    study: {
      ...study,
      setups: study.setups.map((setup) => ({ ...setup, name: text, loads: loads(setup.loads) })),
    },
    notes: [text, ...study.setups.map(() => `${text}: ${text}`)],
    explained: {
      ...explained,
      setups: explained.setups.map((setup) => ({
        ...setup,
        name: text,
        use_Wh_day: { ...setup.use_Wh_day, byLoad: loads(setup.use_Wh_day.byLoad) },
        without: loads(setup.without),
        peaks: [{ load: "x", name: text, draw_A: 150, volts_V: 11, verdict: "below-cut-off" as const }],
        cautions: [{ code: "x", text }],
      })),
    },
    wired: handover.wired.map((wired) => ({
      ...wired,
      fridges: wired.fridges.map((run) => ({ ...run, name: text })),
    })),
  };
}

const hostile = [
  `<script>alert(1)</script>`,
  `"><img src=x onerror=alert(1)>`,
  `</style></title><!-- `,
  `' onmouseover='alert(1)`,
  `\u202e<b>txt.exe`,
  `👩‍🔧 Ünïcode & Söhne <>`,
  `<svg onload=alert(1)>`,
  `{{x}} \${x} %s`,
];

describe("texts that people, or worse, have written", () => {
  it.each(hostile)("%s changes no tag and is read as it was written", (text) => {
    const html = handoutHtml(renamed(bush, `x${text}`));
    expect(tagsOf(html)).toEqual(tagsOf(handoutHtml(renamed(bush, "xx"))));
    expect(wordsOf(html)).toContain(`x${text}`.replace("\u202e", "").replace(/\s+/g, " ").trim());
  });

  it("of 100 kB each make no larger a page", () => {
    const html = handoutHtml(renamed(bush, `x${"<&\u0301 long ".repeat(10_000)}`));
    expect(html.length).toBeLessThan(2 * handoutHtml(bush).length);
  });

  it("of any kind leave the page's tags as they are", () => {
    const plain = tagsOf(handoutHtml(renamed(bush, "xx")));
    const anyText = fc.oneof(
      fc.string({ unit: "binary", maxLength: 60 }),
      fc
        .array(fc.constantFrom("<", ">", '"', "'", "&", "/", "=", "script", "!--", "x", " "), { maxLength: 30 })
        .map((list) => list.join("")),
    );
    fc.assert(
      fc.property(anyText, (text) => {
        const html = handoutHtml(renamed(bush, `x${text}`));
        expect(tagsOf(html)).toEqual(plain);
      }),
      { numRuns: 60 },
    );
  });
});
