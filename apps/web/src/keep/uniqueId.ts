/** An id that no other job has, on any device; randomUUID is missing on plain http. */
export function uniqueId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
