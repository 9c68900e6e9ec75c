/** Why the browser keeps nothing, in words. */
export function refusalSaid(error: unknown): string {
  const name = error instanceof DOMException || error instanceof Error ? error.name : "";
  switch (name) {
    case "QuotaExceededError":
      return "its storage is full";
    case "SecurityError":
    case "InvalidStateError":
    case "NotAllowedError":
    case "ReferenceError":
    case "TypeError":
      return "it refuses storage here, as some private windows do";
    case "VersionError":
      return "a newer version of this page has been used here; reload to get it";
    default:
      return error instanceof Error && error.message !== "" ? `it says “${error.message}”` : "it gives no reason";
  }
}
