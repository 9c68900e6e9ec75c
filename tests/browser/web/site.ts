import { execFile } from "node:child_process";
import { readFile, rm, mkdtemp } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { extname, join, normalize, resolve } from "node:path";
import { promisify } from "node:util";

const web = resolve(import.meta.dirname, "../../../apps/web");
const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".woff2": "font/woff2",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
};

export interface Site {
  /** the page, under a folder of its own as a static host may have it */
  readonly url: string;
  readonly folder: string;
  readonly close: () => Promise<void>;
}

/** The page as it is published, built apart from the test run's own environment, behind the plainest of servers. */
export async function builtSite(): Promise<Site> {
  const folder = await mkdtemp(join(tmpdir(), "stayput-web-"));
  await build(folder);
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://host").pathname.replace(/^\/some\/folder\//, "");
    const file = join(folder, normalize(`/${path === "" ? "index.html" : path}`));
    readFile(file).then(
      (body) =>
        response.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream" }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/some/folder/`,
    folder,
    close: async () => {
      await new Promise((done) => server.close(done));
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** NODE_ENV=test and vitest's own variables would make another page of it. */
export const buildEnvironment = (): NodeJS.ProcessEnv =>
  Object.fromEntries(Object.entries(process.env).filter(([name]) => name !== "NODE_ENV" && !name.startsWith("VITEST")));

async function build(folder: string): Promise<void> {
  const vite = resolve(import.meta.dirname, "../../../node_modules/vite/bin/vite.js");
  const args = [vite, "build", "--logLevel", "error", "--outDir", folder, "--emptyOutDir"];
  await promisify(execFile)(process.execPath, args, { cwd: web, env: buildEnvironment() });
}
