/** Hands a file to the browser's downloads; nothing leaves the device. */
export function saveFile(name: string, content: Blob): void {
  const url = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

export const saveSvg = (name: string, text: string): void =>
  saveFile(`${name}.svg`, new Blob([text], { type: "image/svg+xml" }));

/** Twice the picture's own size, so that it prints sharp. */
export async function savePng(name: string, text: string): Promise<void> {
  const url = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = image.width * 2;
    canvas.height = image.height * 2;
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
    if (blob !== null) saveFile(`${name}.png`, blob);
  } finally {
    URL.revokeObjectURL(url);
  }
}
