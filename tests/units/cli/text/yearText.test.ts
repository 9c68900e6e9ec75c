import { describe, expect, it } from "vitest";
import { spans, yearText } from "../../../../apps/cli/src/text/yearText.ts";

describe("months as spans", () => {
  it.each([
    [[5, 6, 7], ["from May to July"]],
    [[1, 2, 11, 12], ["from November to February"]],
    [[3], ["in March"]],
    [[12], ["in December"]],
    [
      [2, 4, 5],
      ["in February", "from April to May"],
    ],
  ])("%j: %j", (months, said) => expect(spans(months)).toEqual(said));
});

/** Made up: a chance for each month. */
const setup = (id: string, chances: readonly number[]) => ({
  id,
  name: id,
  months: chances.map((chance, i) => ({
    month: i + 1,
    average: 3,
    drawn: { p10: 2.5, p50: null, p90: null },
    chance,
  })),
});
const twelve = (chance: number): number[] => Array.from({ length: 12 }, () => chance);
const sheet = {
  title: "A trip",
  customer: null,
  place: "Upington (28.4° S, 21.3° E)",
  arrive: "10 July",
  ...{ nights: 4, asked: 0.9, seed: 1, draws: 100, horizon_days: 60, assumed: ["weak: taken as 200 Ah"] },
};

describe("the text of year", () => {
  it("says the good months first, then worst or best", () => {
    const summer = twelve(0.95).with(5, 0.2).with(6, 0.1);
    const answer = {
      setups: [
        setup("strong", twelve(0.92).with(6, 0.91)),
        setup("summer", summer),
        setup("weak", twelve(0).with(0, 0.3)),
        setup("none", twelve(0)),
      ],
    };
    const said = yearText({ ...sheet, answer });
    expect(said).toContain("A  strong: good all year round; worst in July, 91 %.");
    expect(said).toContain("B  summer: good from August to May; worst in July, 10 %.");
    expect(said).toContain("C  weak: good in no month; best in January, 30 %.");
    expect(said).toContain("D  none: good in no month; < 1 % in every month.");
    expect(said).toMatch(/^July +91 % +10 % +< 1 % +< 1 %$/m);
    expect(said).toContain("- C: Taken as 200 Ah");
  });

  it("has room for every setup that a job may have", () => {
    const answer = { setups: Array.from({ length: 12 }, (_, i) => setup(`setup ${i}`, twelve(1))) };
    const lines = yearText({ ...sheet, answer }).split("\n");
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(lines.filter((line) => line.startsWith("March "))).toHaveLength(6);
  });
});
