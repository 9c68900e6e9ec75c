import { execFileSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import packedChromium from "@sparticuz/chromium";
import { chromium, type Browser } from "playwright-core";

/**
 * A browser for the tests, with nothing downloaded: CHROMIUM_PATH where it is set, else the system's chromium or chrome,
 * else the one packed in node_modules (Linux x64 only). One that stands there and does not start is passed over, except
 * CHROMIUM_PATH, which was asked for by name.
 */
export async function launchChromium(): Promise<Browser> {
  const faults: string[] = [];
  for (const candidate of candidates()) {
    try {
      return await launch(await candidate.path(), candidate.args);
    } catch (error) {
      faults.push(`${candidate.name}: ${error instanceof Error ? error.message.split("\n")[0] : String(error)}`);
      if (candidate.name === "CHROMIUM_PATH") break;
    }
  }
  throw new Error(`No chromium could be started. Install one or set CHROMIUM_PATH.\n${faults.join("\n")}`);
}

interface Candidate {
  readonly name: string;
  readonly path: () => string | Promise<string>;
  readonly args: readonly string[];
}

function candidates(): Candidate[] {
  const asked = process.env["CHROMIUM_PATH"];
  if (asked !== undefined && asked !== "") return [{ name: "CHROMIUM_PATH", path: () => asked, args: [] }];
  const system = ["/usr/bin/chromium", "chromium", "google-chrome", "chromium-browser"];
  return [
    ...system.flatMap((name) => found(name).map((path) => ({ name, path: () => path, args: [] }))),
    { name: "@sparticuz/chromium", path: () => packedChromium.executablePath(), args: packedChromium.args },
  ];
}

/** The absolute path of a command, or nothing where there is none. */
function found(command: string): string[] {
  try {
    const path = command.startsWith("/") ? command : execFileSync("which", [command], { encoding: "utf8" }).trim();
    accessSync(path, constants.X_OK);
    return [path];
  } catch {
    return [];
  }
}

const quiet = [
  "--no-sandbox",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-default-apps",
  "--disable-sync",
  "--metrics-recording-only",
  "--no-first-run",
  "--no-default-browser-check",
  "--disable-dev-shm-usage",
];

async function launch(executablePath: string, args: readonly string[]): Promise<Browser> {
  // the packed build's own flags switch graphics off and processes together; those that stop pages from loading stay out
  const own = args.filter((arg) => !["--single-process", "--no-zygote", "--headless='shell'"].includes(arg));
  return chromium.launch({ executablePath, headless: true, args: [...new Set([...quiet, ...own])] });
}
