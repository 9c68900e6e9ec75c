import { base64 } from "@scure/base";
import { chartStyles, templateText } from "@stayput/charts";
import { html, type TemplateResult } from "lit";
import type { Handover } from "../handover.ts";
import { handoutStyles, screenStyles } from "../look/handoutStyles.ts";
import { customerPage } from "../pages/customerPage.ts";
import { fitterPage } from "../pages/fitterPage.ts";
import { bounded } from "../words/bounded.ts";

/** No script, no frame, no form, nothing from outside: what is in the file is all there is. */
const policy =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; base-uri 'none'; form-action 'none'";

/** What goes into the file beside the pages. */
export interface HandoutFile {
  /** the type to print in, as WOFF2; system type without it */
  readonly font?: Uint8Array | undefined;
  /** the fitter's page after the customer's; true where left out */
  readonly fitter?: boolean | undefined;
}

/**
 * The pages as one self-contained HTML file: no script, no request, no DOM needed to write it.
 * @throws RangeError where an answer is missing, or the date or the logo is not as it must be
 */
export function handoutHtml(handover: Handover, { font, fitter = true }: HandoutFile = {}): string {
  const styles = [fontFace(font), handoutStyles.cssText, chartStyles.cssText, screenStyles].join("\n");
  return [
    `<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n`,
    `<meta http-equiv="Content-Security-Policy" content="${policy}">\n`,
    `<meta name="viewport" content="width=840">\n<meta name="referrer" content="no-referrer">\n`,
    `${text(html`<title>${bounded(handover.job.title, 90)}</title>`)}\n<style>${styles}</style>\n</head>\n<body>\n`,
    `${text(customerPage(handover))}\n${fitter ? `${text(fitterPage(handover))}\n` : ""}</body>\n</html>\n`,
  ].join("");
}

/** Indents of the templates are no part of the page. */
const text = (template: TemplateResult): string => templateText(template).replace(/\n\s+/g, "\n").trim();

const fontFace = (font: Uint8Array | undefined): string =>
  font === undefined
    ? ""
    : `@font-face{font-family:"Sheet";font-weight:200 800;src:url(data:font/woff2;base64,${base64.encode(font)}) format("woff2")}`;
