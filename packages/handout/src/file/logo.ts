import { base64 } from "@scure/base";

/** Largest logo taken, as a file [bytes]. */
export const MOST_LOGO_BYTES = 200_000;

const accepted = `a PNG, JPEG or SVG file of at most ${MOST_LOGO_BYTES / 1000} kB`;

/**
 * A workshop's mark as a data URL, for `Handover.logo`. It is only ever placed as an image, where an SVG's scripts do not
 * run and nothing outside it is fetched.
 *
 * @param bytes of a PNG, JPEG or SVG file, told apart by what they hold and not by a name
 * @throws RangeError that names what is accepted
 */
export function logoDataUrl(bytes: Uint8Array): string {
  if (bytes.length > MOST_LOGO_BYTES)
    throw new RangeError(`logo: a file of ${Math.ceil(bytes.length / 1000)} kB was given; accepted is ${accepted}`);
  const type = typeOf(bytes);
  if (type === null) throw new RangeError(`logo: a file of another kind was given; accepted is ${accepted}`);
  return `data:${type};base64,${base64.encode(bytes)}`;
}

const starts = (bytes: Uint8Array, signature: readonly number[]): boolean =>
  bytes.length > signature.length && signature.every((byte, i) => bytes[i] === byte);

function typeOf(bytes: Uint8Array): "image/png" | "image/jpeg" | "image/svg+xml" | null {
  if (starts(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return "image/png";
  if (starts(bytes, [0xff, 0xd8, 0xff])) return "image/jpeg";
  return isSvg(bytes) ? "image/svg+xml" : null;
}

/** Its first tag is `<svg`, after a byte order mark, an XML declaration, comments and a document type. */
function isSvg(bytes: Uint8Array): boolean {
  const head = new TextDecoder().decode(bytes.subarray(0, 4096)).replace(/^\uFEFF/, "");
  const firstTag = /<(?![?!])([\w:-]+)/.exec(head.replace(/<!--[\s\S]*?-->/g, ""));
  return /^\s*</.test(head) && firstTag !== null && firstTag[1] === "svg";
}

const dataUrl = /^data:image\/(?:png|jpeg|svg\+xml);base64,[A-Za-z0-9+/]+={0,2}$/;

/** A logo as it may be placed. @throws RangeError where it is not such a data URL or is too large */
export function checkedLogo(logo: string): string {
  if (logo.length > MOST_LOGO_BYTES * 1.4 || !dataUrl.test(logo))
    throw new RangeError(`logo must be a data URL as logoDataUrl makes it, of ${accepted}`);
  return logo;
}
