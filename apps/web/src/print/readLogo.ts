import { logoDataUrl, MOST_LOGO_BYTES } from "@stayput/handout";

const most_kB = MOST_LOGO_BYTES / 1000;

/** A workshop's mark from a file, as it may be placed. @throws an Error in words, naming what is accepted */
export async function readLogo(file: File): Promise<string> {
  // asked before it is read: a file may be of any size
  if (!(file.size <= MOST_LOGO_BYTES))
    throw new RangeError(`It has ${Math.ceil(file.size / 1000)} kB; a logo file has at most ${most_kB}.`);
  const url = madeOf(new Uint8Array(await file.arrayBuffer()));
  await drawn(url);
  return url;
}

function madeOf(bytes: Uint8Array): string {
  try {
    return logoDataUrl(bytes);
  } catch (error) {
    throw new RangeError(`It is none of PNG, JPEG or SVG; accepted is such a file of at most ${most_kB} kB.`, {
      cause: error,
    });
  }
}

/** A file may begin like a picture and be none. */
async function drawn(url: string): Promise<void> {
  const image = new Image();
  image.src = url;
  try {
    await image.decode();
  } catch (error) {
    throw new RangeError("The browser cannot draw it: the file is damaged, or is no picture.", { cause: error });
  }
}
