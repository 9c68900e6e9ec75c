import stringWidth from "string-width";
import { cut } from "./cut.ts";

// joiners stay, as emoji are made with them; every other invisible character could turn a terminal's text round
const unprintable = /[\p{Cc}\p{Zl}\p{Zp}]|(?!\u200d)\p{Cf}/gu;

/** A name from a job on one line, without characters that steer a terminal, at most `widest` columns wide. */
export function plain(text: string, widest = 200): string {
  const clean = text
    .slice(0, 4 * widest)
    .replace(unprintable, " ")
    .replace(/\s+/gu, " ")
    .trim();
  if (stringWidth(clean) <= widest && text.length <= 4 * widest) return clean;
  return `${cut(clean, widest - 1).trimEnd()}…`;
}
