import { execFileSync } from "node:child_process";
import { readFileSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";

/** A packed package, and what is in it. */
export interface Packed {
  readonly name: string;
  readonly folder: string;
  readonly tarball: string;
  readonly files: readonly string[];
  readonly bytes: number;
}

/** The folders of all packages that may be published. */
export function packageFolders(): string[] {
  return readdirSync("packages")
    .map((name) => join("packages", name))
    .filter((folder) => readdirSync(folder).includes("package.json"));
}

/** Runs a command to its end; its output is shown only if it fails. */
export function run(command: string, args: readonly string[], cwd = "."): string {
  try {
    return execFileSync(command, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  } catch (fault) {
    const { stdout = "", stderr = "" } = fault as { stdout?: string; stderr?: string };
    throw new Error(`${command} ${args.join(" ")}\n${stdout}${stderr}`, { cause: fault });
  }
}

/** Builds every package from nothing and packs it into a folder. */
export function packAll(into: string): Packed[] {
  for (const folder of packageFolders()) rmSync(join(folder, "dist"), { recursive: true, force: true });
  run("npx", ["tsc", "-b", "tsconfig.build.json"]);
  return packageFolders().map((folder) => {
    const told = run("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", into, `./${folder}`]);
    const [made] = JSON.parse(told) as { name: string; filename: string; size: number; files: { path: string }[] }[];
    if (made === undefined) throw new Error(`npm packed nothing of ${folder}`);
    const tarball = join(into, made.filename.replace(/^@/, "").replace("/", "-"));
    return { name: made.name, folder, tarball, files: made.files.map(({ path }) => path), bytes: made.size };
  });
}

/** The manifest of a package. */
export const manifestOf = (folder: string): { readonly exports: Readonly<Record<string, unknown>> } =>
  JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as { exports: Record<string, unknown> };
