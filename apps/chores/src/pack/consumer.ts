import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { readmeBlocks } from "../../../../tests/fixtures/readme/blocks.ts";
import { run, type Packed } from "./build.ts";

/**
 * An empty project outside the repository, with the tarballs installed and the guide of the sim's README as its program:
 * type-checked, run in Node, and bundled and run again. Returns what each of the two runs printed.
 */
export function tryOut(packages: readonly Packed[], folder: string): { node: string; bundle: string } {
  mkdirSync(folder, { recursive: true });
  const manifest = { name: "elsewhere", private: true, type: "module" };
  writeFileSync(join(folder, "package.json"), JSON.stringify(manifest));
  writeFileSync(join(folder, ".npmrc"), "fund=false\naudit=false\nprefer-offline=true\n");
  run("npm", ["install", "--ignore-scripts", ...packages.map(({ tarball }) => tarball)], folder);
  const [guide] = readmeBlocks("packages/sim/README.md");
  if (guide === undefined) throw new Error("the README of sim has no guide");
  const everything = packages.map(({ name }, i) => `export * as package${i} from "${name}";`).join("\n");
  writeFileSync(join(folder, "program.ts"), guide.code);
  writeFileSync(join(folder, "program.mjs"), guide.code);
  writeFileSync(join(folder, "everything.ts"), `${everything}\n`);
  copyFileSync("shared/demo/family-caravan.json", join(folder, "family-caravan.json"));
  typeCheck(folder);
  const node = run("node", ["program.mjs"], folder);
  return { node, bundle: bundled(folder) };
}

/** As others would: declaration files are checked too, and by both ways of resolving. */
function typeCheck(folder: string): void {
  const types = [resolve("node_modules/@types")];
  for (const [module, moduleResolution] of [
    ["nodenext", "nodenext"],
    ["esnext", "bundler"],
  ]) {
    const compilerOptions = { strict: true, noEmit: true, target: "es2022", module, moduleResolution };
    const config = { compilerOptions: { ...compilerOptions, typeRoots: types, types: ["node"] }, include: ["*.ts"] };
    writeFileSync(join(folder, "tsconfig.json"), JSON.stringify(config));
    run(resolve("node_modules/.bin/tsc"), ["-p", "."], folder);
  }
}

function bundled(folder: string): string {
  const options = { ssr: "program.mjs", outDir: "bundle", rollupOptions: { output: { entryFileNames: "out.mjs" } } };
  const config = { logLevel: "error", build: options, ssr: { noExternal: true } };
  writeFileSync(join(folder, "vite.config.mjs"), `export default ${JSON.stringify(config)};\n`);
  run(resolve("node_modules/.bin/vite"), ["build"], folder);
  return run("node", ["bundle/out.mjs"], folder);
}
