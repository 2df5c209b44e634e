import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** The text of each page of a PDF, as a reader without eyes would get it. */
export async function printedPages(pdf: Uint8Array): Promise<readonly string[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), useSystemFonts: true, verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    // A ligature or a change of font begins a new item within a word; spaces are items of their own.
    const text = items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : '')).join('');
    pages.push(text.normalize('NFKC').replaceAll(/\s+/g, ' '));
  }
  await document.destroy();
  return pages;
}
