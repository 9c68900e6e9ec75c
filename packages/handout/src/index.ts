/**
 * Answers as printed pages: one for the customer, one for the fitter.
 *
 * @module @stayput/handout
 */
export type { Handover } from "./handover.ts";
export { customerPage } from "./pages/customerPage.ts";
export { fitterPage } from "./pages/fitterPage.ts";
export { handoutStyles, screenStyles } from "./look/handoutStyles.ts";
export { handoutHtml, type HandoutFile } from "./file/handoutHtml.ts";
export { logoDataUrl, MOST_LOGO_BYTES } from "./file/logo.ts";
export { headline, type Headline } from "./words/headline.ts";
