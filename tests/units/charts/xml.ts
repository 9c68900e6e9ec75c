/** Throws where a text is not well-formed XML of elements, attributes and text: enough for what charts write. */
export function wellFormed(text: string): string[] {
  const open: string[] = [];
  const seen: string[] = [];
  const tag = /<(\/?)([a-zA-Z]+)((?:\s[a-zA-Z:-]+="[^"<>]*")*)\s*(\/?)>/y;
  let at = 0;
  while (at < text.length) {
    const next = text.indexOf("<", at);
    const between = text.slice(at, next < 0 ? undefined : next);
    if (/>|&(?!amp;|lt;|gt;|quot;)/.test(between)) throw new Error(`stray mark in text: ${between.slice(0, 80)}`);
    if (next < 0) break;
    tag.lastIndex = next;
    const found = tag.exec(text);
    if (!found) throw new Error(`bad tag: ${text.slice(next, next + 120)}`);
    const [, closing, name = "", attributes = "", empty] = found;
    const names = [...attributes.matchAll(/\s([a-zA-Z:-]+)=/g)].map((match) => match[1]);
    if (new Set(names).size !== names.length) throw new Error(`attribute twice: ${found[0]}`);
    if (closing && open.pop() !== name) throw new Error(`</${name}> closes nothing`);
    if (!closing && !empty) open.push(name);
    if (!closing) seen.push(name);
    at = tag.lastIndex;
  }
  if (open.length > 0) throw new Error(`left open: ${open.join(", ")}`);
  return seen;
}

/** Attributes of every element of a name. */
export const attributesOf = (text: string, name: string, attribute: string): string[] =>
  [...text.matchAll(new RegExp(`<${name}\\b[^>]*?\\s${attribute}="([^"]*)"`, "g"))].map((match) => match[1] ?? "");
