import { checkPackage, createPackageFromTarballData, type Problem } from "@arethetypeswrong/core";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { homedir } from "node:os";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { manifestOf, type Packed } from "./build.ts";

/** Everything wrong with a tarball, in words; none if it may be published. */
export async function tarballFaults(packed: Packed): Promise<string[]> {
  const faults = [
    ...contentFaults(packed),
    ...pathFaults(packed),
    ...(await lintFaults(packed)),
    ...(await typeFaults(packed)),
  ];
  return faults.map((fault) => `${packed.name}: ${fault}`);
}

const needed = ["LICENSE", "README.md", "package.json", "dist/index.js", "dist/index.d.ts"];
const unwanted = /(^|\/)(tests?|__\w+__|node_modules|coverage|\.cache)\/|\.test\.|\.tsbuildinfo$|tsconfig/;

function contentFaults({ files }: Packed): string[] {
  return [
    ...needed.filter((file) => !files.includes(file)).map((file) => `${file} is missing`),
    ...files.filter((file) => unwanted.test(file)).map((file) => `${file} does not belong in it`),
  ];
}

/** Where this machine keeps things is nobody else's business. */
function pathFaults({ folder, files }: Packed): string[] {
  const registry = new URL(execFileSync("npm", ["config", "get", "registry"], { encoding: "utf8" }).trim()).host;
  const ours = [process.cwd(), homedir(), registry].filter((path) => path.length > 5);
  return files.flatMap((file) => {
    const text = readFileSync(`${folder}/${file}`, "utf8");
    return ours.filter((path) => text.includes(path)).map((path) => `${file} names ${path}`);
  });
}

async function lintFaults({ tarball }: Packed): Promise<string[]> {
  const { messages, pkg } = await publint({ pack: { tarball: bytesOf(tarball) }, strict: true });
  return messages.map((message) => formatMessage(message, pkg, { color: false }) ?? message.code);
}

/** Packages of ES modules only: resolution as CommonJS, and by Node before 16, is not on offer. */
const notOffered = (problem: Problem): boolean =>
  problem.kind === "CJSResolvesToESM" || ("resolutionKind" in problem && problem.resolutionKind === "node10");

async function typeFaults({ folder, tarball }: Packed): Promise<string[]> {
  const packed = createPackageFromTarballData(new Uint8Array(bytesOf(tarball)));
  const entrypoints = Object.keys(manifestOf(folder).exports).filter((entry) => !entry.endsWith(".json"));
  const result = await checkPackage(packed, { entrypoints });
  if (!result.types) return ["holds no types"];
  return result.problems.filter((problem) => !notOffered(problem)).map((problem) => JSON.stringify(problem));
}

/** The bytes of a file, in a buffer of their own. */
const bytesOf = (file: string): ArrayBuffer => Uint8Array.from(readFileSync(file)).buffer;
