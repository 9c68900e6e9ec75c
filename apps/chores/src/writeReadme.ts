import { execFile } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { promisify } from "node:util";
import { freshReadme } from "./readmeAnswers.ts";

const run = promisify(execFile);

/** Puts the answers that the commands in the README give now in the place of those shown. */
const { text } = await freshReadme(
  readFileSync("README.md", "utf8"),
  async (words) => (await run("npm", ["run", "-s", "stayput", "--", ...words])).stdout,
);
writeFileSync("README.md", text);
