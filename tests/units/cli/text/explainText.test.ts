import fc from "fast-check";
import stringWidth from "string-width";
import { describe, expect, it } from "vitest";
import { explainText } from "../../../../apps/cli/src/text/explainText.ts";
import type { Sheet } from "../../../../apps/cli/src/text/sheet.ts";
import { answerOf, lithium, tired } from "../sample.ts";

const sheet: Sheet = {
  title: "North for the winter holidays",
  customer: "N. Fourie",
  place: "Upington (28.4° S, 21.3° E)",
  arrive: "10 July",
  answer: answerOf(tired, lithium),
  assumed: ["loads[0].watts: 3 A taken at 12 V"],
};

describe("the text of explain", () => {
  it("says first what it is of, then how long, how sure and what takes most", () => {
    const [what, now, proposal] = explainText(sheet)
      .split("\n\n")
      .map((part) => part.replace(/\s+/g, " "));
    expect(what).toBe(
      "North for the winter holidays, for N. Fourie. Upington (28.4° S, 21.3° E), 6 nights from 10 July.",
    );
    expect(now).toBe(
      "A As it came: parked, it is flat after 2.9 days; the dullest tenth of skies has it flat in 2.2 days, the " +
        "brightest not before 4.1 days. Chance of lasting the 6 nights as travelled: 4 %. Biggest user: 188 L " +
        "fridge-freezer, 67 % of it all.",
    );
    expect(proposal).toBe(
      "B 200 Ah lithium, 400 W: parked, it lasts 60 days or more under half the skies, but the dullest tenth has it " +
        "flat in 9.4 days. Chance of lasting the 6 nights as travelled: > 99 %.",
    );
  });

  it("does not speak of dull and bright skies where they make no difference", () => {
    const dark = { ...tired, days: { ...tired.days, drawn: { p10: 1.91, p50: 1.92, p90: 1.93 } } };
    const said = explainText({ ...sheet, answer: answerOf(dark) }).replace(/\s+/g, " ");
    expect(said).toContain("parked, it is flat after 1.9 days, whatever the sky.");
  });

  it("keeps the order: how long, where it goes, what to mind, charge, what was assumed", () => {
    const heads = explainText(sheet).match(/^[A-Z ]{8,}(?=$|:)/gm);
    expect(heads).toEqual([
      "HOW LONG IT LASTS",
      "WHERE IT GOES",
      "WHERE IT GOES",
      "WHAT TO MIND",
      "CHARGE AGAINST DAYS",
      "TAKEN AS GIVEN",
    ]);
  });

  it("names why sun went unused, the food's hours, the heavy load and the caution", () => {
    const said = explainText(sheet).replace(/\s+/g, " ");
    expect(said).toContain("unused 65 (45 as the bank was full, 20 as the bank would take no more amps)");
    expect(said).toContain("A As it came 0.8 h 3.4 h 14 h The food authority of the place sets the rule");
    expect(said).toContain(
      "Kettle at the lowest charge of the stay: 141 A, bank at 11.3 V, pulls the bank under its cut-off",
    );
    expect(said).toContain("no more than a quarter of the capacity");
    expect(said).toContain("3 A taken at 12 V");
  });

  it("has no colour, no hole and no line over 80 columns, whatever the names", () => {
    const anyName = fc.oneof(
      fc.string({ unit: "binary", minLength: 1, maxLength: 200 }),
      fc.constant("\u51b7".repeat(90)),
    );
    fc.assert(
      fc.property(anyName, anyName, (title, name) => {
        const named = { ...tired, name, use_Wh_day: { total: 9, byLoad: [{ id: "x", name, Wh_day: 9, share: 1 }] } };
        const text = explainText({
          ...sheet,
          title,
          customer: name,
          assumed: [title],
          answer: answerOf(named, lithium),
        });
        for (const line of text.split("\n")) expect(stringWidth(line)).toBeLessThanOrEqual(80);
        expect(text.replaceAll("\n", "")).not.toMatch(/\p{Cc}/u);
      }),
    );
    expect(explainText(sheet)).not.toMatch(/NaN|undefined|null|Infinity/);
  });
});
