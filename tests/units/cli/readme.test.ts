import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { freshReadme } from "../../../apps/chores/src/readmeAnswers.ts";
import { verbs } from "../../../apps/cli/src/verbs/index.ts";
import { root, stayput } from "./stayput.ts";

const readme = readFileSync(join(root, "README.md"), "utf8");

describe("the README", { timeout: 60_000 }, () => {
  it("shows answers as the commands give them: run `npm run readme` where it does not", async () => {
    const { text, answers } = await freshReadme(readme, async (words) => (await stayput(words)).out);
    expect(answers).toBeGreaterThanOrEqual(3);
    expect(readme).toBe(text);
  });

  it("lists every verb", () => {
    for (const { name } of verbs) expect(readme).toMatch(new RegExp(`^\\| \`${name}\` +\\| `, "m"));
  });
});

describe("an answer shown in part", () => {
  const block = (parts: string, text: string): string =>
    `\`\`\`sh\nnpm run -s stayput -- check a.json\n\`\`\`\n\n\`\`\`text parts=${parts}\n${text}\`\`\`\n`;
  const answer = (): Promise<string> => Promise.resolve("one\n1\n\ntwo\n\nthree\n");

  it.each([
    ["1,2,3", "one\n1\n\ntwo\n\nthree\n"],
    ["1", "one\n1\n\n…\n"],
    ["2,3", "…\n\ntwo\n\nthree\n"],
    ["1,3", "one\n1\n\n…\n\nthree\n"],
  ])("parts %s", async (parts, shown) => {
    expect(await freshReadme(block(parts, "old\n"), answer)).toEqual({ text: block(parts, shown), answers: 1 });
  });
});
