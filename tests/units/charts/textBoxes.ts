import { bold, overlaps, textWidth_px, type Box } from "../../../packages/charts/src/paper/labels.ts";

export interface TextBox extends Box {
  readonly text: string;
}

const plain = (text: string) =>
  text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replaceAll("&amp;", "&");

/** The room of every piece of text in a saved picture, by the same estimate the charts use, 10 px tall. */
export function textBoxes(saved: string): TextBox[] {
  return [...saved.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)"([^>]*)>([^<]+)<\/text>/g)].map((match) => {
    const [, x = "", y = "", attributes = "", raw = ""] = match;
    const text = plain(raw);
    const width = textWidth_px(text) * (attributes.includes('font-weight="700"') ? bold : 1);
    const left = attributes.includes('"end"') ? width : attributes.includes('"middle"') ? width / 2 : 0;
    return { text, x: Number(x) - left, y: Number(y) - 9, width, height: 10 };
  });
}

/** Pairs of texts that lie on one another, said for a failure's message. */
export function clashes(saved: string): string[] {
  const boxes = textBoxes(saved).filter(({ text }) => text.trim() !== "");
  return boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => (overlaps(a, b) ? [`"${a.text}" on "${b.text}"`] : [])),
  );
}
