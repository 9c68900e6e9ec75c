import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import type { Plugin } from "vite";

/** Puts the worker inside the page, where a page opened from disk can start it. */
export function inlineWorker(): Plugin {
  return {
    name: "stayput-inline-worker",
    enforce: "pre",
    async resolveId(source, importer) {
      if (!source.endsWith("/newWorker.ts")) return null;
      return this.resolve(source.replace("newWorker.ts", "newWorker.inline.ts"), importer, { skipSelf: true });
    },
  };
}

/**
 * Seals the finished page: its icon goes inside, and its policy names the very scripts and styles that are in it, by their
 * hashes, and allows nothing else: no address at all can be asked.
 */
export function sealed(): Plugin {
  return {
    name: "stayput-sealed-page",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_options, bundle) {
        for (const file of Object.values(bundle)) {
          if (file.type !== "asset" || !file.fileName.endsWith(".html")) continue;
          file.source = seal(withIcon(String(file.source)));
        }
      },
    },
  };
}

function withIcon(html: string): string {
  const icon = readFileSync(resolve(import.meta.dirname, "../public/mark.svg"), "base64");
  return html
    .replace(/<link rel="icon"[^>]*>/, `<link rel="icon" href="data:image/svg+xml;base64,${icon}" />`)
    .replace(/<link rel="(apple-touch-icon|manifest)"[^>]*>\s*/g, "");
}

function seal(html: string): string {
  const hashes = (tag: string): string =>
    Array.from(html.matchAll(new RegExp(`<${tag}\\b[^>]*>([\\s\\S]*?)</${tag}>`, "g")), ([, body]) =>
      hash(body ?? ""),
    ).join(" ");
  const policy = [
    "default-src 'none'",
    `script-src ${hashes("script")}`,
    `style-src ${hashes("style")}`,
    "font-src data:",
    "img-src data: blob:",
    "worker-src blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return html.replace(
    /(http-equiv="Content-Security-Policy"\s+content=")[^"]*"/,
    (_, start: string) => `${start}${policy}"`,
  );
}

const hash = (text: string): string => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
