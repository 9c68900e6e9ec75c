import type { Plugin } from "vite";

/**
 * Leaves out of the schema library what writes JSON Schemas: every schema carries it, and the page only ever reads jobs.
 * An export that is not stubbed fails the build, and a call of one that is throws.
 */
export function withoutJsonSchema(): Plugin {
  return {
    name: "stayput-without-json-schema",
    transform(code, id) {
      if (!/\/zod\/v4\/core\/(to-json-schema|json-schema-processors)\.js$/.test(id)) return null;
      return { code: stubsOf(code), map: null };
    },
  };
}

function stubsOf(code: string): string {
  const names = Array.from(code.matchAll(/^export (?:const|function) (\w+)/gm), ([, name]) => name ?? "");
  // what makes a method is called for each schema; the method it makes is not
  const stubs = names.map((name) => `export const ${name} = ${name.startsWith("create") ? "() => refuse" : "refuse"};`);
  const renamed = Array.from(code.matchAll(/^export \{ .* \};$/gm), ([line]) => line);
  return [
    `const refuse = () => { throw new Error("This build writes no JSON Schemas."); };`,
    ...stubs,
    ...renamed,
  ].join("\n");
}

/** Lets curves and symbols that no chart asks for fall away: they are made by calls, which a bundler must else keep. */
export function unusedShapesFallAway(): Plugin {
  return {
    name: "stayput-unused-shapes",
    transform(code, id) {
      if (!id.endsWith("/d3-shape/dist/d3-shape.mjs")) return null;
      const marked = code
        .replaceAll("= (function custom(", "= /* @__PURE__ */ (function custom(")
        .replaceAll(/= (curveRadial|sqrt)\(/g, "= /* @__PURE__ */ $1(");
      return { code: marked, map: null };
    },
  };
}
