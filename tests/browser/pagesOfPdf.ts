import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** The text of each page of a PDF, in the order in which it was drawn, spaces as they read. */
export async function pagesOfPdf(pdf: Uint8Array): Promise<string[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: document.numPages }, async (_, i) => {
      const { items } = await (await document.getPage(i + 1)).getTextContent();
      const words = items.map((item) => ("str" in item ? item.str + (item.hasEOL ? " " : "") : ""));
      return words.join("").replace(/\s+/g, " ").trim();
    }),
  );
  await document.destroy();
  return pages;
}
