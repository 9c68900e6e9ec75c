import type { Handover } from "@stayput/handout";
import type { PrintSettings } from "./printSettings.ts";
import type { Answered } from "./toPrint.ts";
import { locale } from "../words/locale.ts";

/** Dated by this device's clock, in the browser's language, under the workshop's mark. */
export const handoverNow = (answered: Answered, { logo }: PrintSettings): Handover => ({
  ...answered,
  date: today(),
  locale: locale(),
  logo,
});

function today(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
