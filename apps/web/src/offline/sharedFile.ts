const CACHE = "stayput-shared";
const AT = "./shared-file";
/** Far more than any job file has. */
const MOST_BYTES = 20_000_000;

/** Holds the text of what was sent, be it a file or words, till the page asks for it. */
export async function keepShared(request: Request): Promise<void> {
  const form = await request.formData();
  const file = form.getAll("jobs").find((each) => each instanceof File);
  const text = form.get("text") ?? form.get("url");
  const body = file !== undefined && file.size <= MOST_BYTES ? file : text;
  if (body === null) return;
  const name = file instanceof File ? encodeURIComponent(file.name) : "";
  const cache = await caches.open(CACHE);
  await cache.put(AT, new Response(body, { headers: { "x-name": name } }));
}

/** What was sent last, once; null where nothing waits. */
export async function takeShared(): Promise<{ name: string; text: string } | null> {
  if (!("caches" in globalThis)) return null;
  const cache = await caches.open(CACHE);
  const held = await cache.match(AT);
  if (held === undefined) return null;
  await cache.delete(AT);
  return { name: decodeURIComponent(held.headers.get("x-name") ?? "") || "What was sent", text: await held.text() };
}
