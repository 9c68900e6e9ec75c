/**
 * How the reader's browser writes figures and dates, as a tag that Intl takes. One started without a language of its own
 * tells "en-US@posix", which is none: Intl would throw, and the page stand empty.
 */
export function locale(): string {
  const [tag = ""] = navigator.language.split("@");
  try {
    return Intl.getCanonicalLocales(tag)[0] ?? "en";
  } catch {
    return "en";
  }
}
