import { parseArgs } from "node:util";
import { Misuse } from "./faults.ts";
import { optionTable, readOptions } from "./options.ts";
import { verbs } from "./verbs/index.ts";
import type { Request, Verb } from "./verbs/verb.ts";

export type Command =
  | { readonly does: "help" }
  | { readonly does: "version" }
  | { readonly does: "verb-help"; readonly verb: Verb }
  | { readonly does: "verb"; readonly verb: Verb; readonly request: Request; readonly idle: readonly string[] };

/**
 * What is asked, from the words after the program's name.
 *
 * @throws Misuse that names what was given and what is accepted
 */
export function readCommand(words: readonly string[]): Command {
  const [name, ...rest] = words;
  if (name === undefined) throw new Misuse(`a verb is missing; accepted: ${verbNames()}`);
  if (name === "--help" || name === "-h" || name === "help") return { does: "help" };
  if (name === "--version") return { does: "version" };
  const verb = verbs.find((one) => one.name === name);
  if (verb === undefined) throw new Misuse(`there is no verb ${quoted(name)}; accepted: ${verbNames()}`);
  const { values, positionals } = parsed(verb, rest);
  if (values["help"] === true) return { does: "verb-help", verb };
  const [least, most] = verb.takes;
  if (positionals.length < least) throw new Misuse(`${verb.name} needs ${verb.operands}`);
  if (positionals.length > most)
    throw new Misuse(`${verb.name} takes one ${verb.operands}; ${quoted(positionals[most]!)} is too much`);
  const idle = (verb.idle ?? []).filter((option) => values[option] !== undefined);
  return { does: "verb", verb, request: { operands: positionals, options: readOptions(values) }, idle };
}

const verbNames = (): string => verbs.map(({ name }) => name).join(", ");

const quoted = (text: string): string => JSON.stringify(text.slice(0, 60));

type Parsed = { values: Record<string, string | boolean | undefined>; positionals: string[] };

function parsed(verb: Verb, args: readonly string[]): Parsed {
  const options = Object.fromEntries([
    ["help", { type: "boolean" as const, short: "h" }],
    ...[...verb.options, ...(verb.idle ?? [])].map((name) => [
      name,
      { type: optionTable[name].value === null ? "boolean" : "string" } as const,
    ]),
  ]) as Record<string, { type: "boolean" | "string" }>;
  try {
    const { values, positionals, tokens } = parseArgs({
      args: numbersJoined(args),
      options,
      strict: true,
      allowPositionals: true,
      tokens: true,
    });
    const named = tokens.flatMap((token) => (token.kind === "option" ? [token.name] : []));
    const twice = named.find((name, i) => named.indexOf(name) !== i);
    if (twice !== undefined) throw new Misuse(`--${twice} is given twice`);
    return { values: values, positionals };
  } catch (error) {
    if (error instanceof Misuse) throw error;
    const accepted = verb.options.map((name) => `--${name}`).join(", ");
    throw new Misuse(`${reason(error)}; ${verb.name} accepts ${accepted}`);
  }
}

/** "--seed -1" as "--seed=-1", which the parser would take for an option, so that the number is refused by what is accepted. */
function numbersJoined(args: readonly string[]): string[] {
  const joins = (i: number) => /^-[\d.]/.test(args[i] ?? "") && /^--\w[^=]*$/.test(args[i - 1] ?? "");
  return args.flatMap((word, i) => (joins(i) ? [] : joins(i + 1) ? [`${word}=${args[i + 1]!}`] : [word]));
}

/** The parser's own sentence, without its advice on dashes. */
function reason(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return (message.split(/\.\s|\n/u)[0] ?? message).replace(/\.$/u, "").slice(0, 200);
}
