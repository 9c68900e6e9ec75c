/** A command's answer as a README shows it: the block of text under a block that holds the command. */
const shown = /```sh\nnpm run -s stayput -- (?<words>.+)\n```\n\n```text parts=(?<parts>[\d,]+)\n(?<text>[^`]*)```/g;

const FENCE = "```";

/** What stands for parts that are left out. */
const LEFT_OUT = "…";

/**
 * A README with every answer as the command gives it now. `parts=1,2,5` after the fence says which paragraphs of the answer
 * are shown; an ellipsis stands where some are left out.
 *
 * @param answer runs the command line with some words and gives its standard output
 */
export async function freshReadme(
  readme: string,
  answer: (words: readonly string[]) => Promise<string>,
): Promise<{ readonly text: string; readonly answers: number }> {
  let text = readme;
  let answers = 0;
  for (const [block, words = "", parts = "", old = ""] of readme.matchAll(shown)) {
    const now = partsOf(await answer(words.split(" ")), parts.split(",").map(Number));
    const head = block.slice(0, block.length - old.length - FENCE.length);
    text = text.replace(block, () => `${head}${now}${FENCE}`);
    answers++;
  }
  return { text, answers };
}

function partsOf(answer: string, wanted: readonly number[]): string {
  const parts = answer.trimEnd().split("\n\n");
  const said = wanted.flatMap((number, i) => [
    ...(number === (wanted[i - 1] ?? 0) + 1 ? [] : [LEFT_OUT]),
    parts[number - 1] ?? `there is no part ${number}`,
  ]);
  return `${[...said, ...(wanted.at(-1) === parts.length ? [] : [LEFT_OUT])].join("\n\n")}\n`;
}
