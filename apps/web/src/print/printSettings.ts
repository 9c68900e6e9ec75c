import { refusalSaid } from "../keep/refusal.ts";

/** What goes on paper beside the job: no part of it, since it is the workshop's own. */
export interface PrintSettings {
  /** the fitter's page too */
  readonly fitter: boolean;
  /** the workshop's mark as a data URL */
  readonly logo: string | null;
}

/** Where this browser keeps the mark. */
export const logoKey = "stayput-logo";

/** The mark of this browser's workshop; null where there is none, or the browser refuses storage. */
export function keptLogo(): string | null {
  try {
    const kept = localStorage.getItem(logoKey);
    return kept?.startsWith("data:image/") === true ? kept : null;
  } catch {
    return null;
  }
}

/** Keeps the mark, or forgets it. Gives "" or, in words, why it will not outlast this visit. */
export function keepLogo(logo: string | null): string {
  try {
    if (logo === null) localStorage.removeItem(logoKey);
    else localStorage.setItem(logoKey, logo);
    return "";
  } catch (error) {
    return `The browser does not keep it, for ${refusalSaid(error)}: it holds for this visit.`;
  }
}
