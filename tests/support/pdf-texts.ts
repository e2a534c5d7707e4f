import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** The text on each page of a PDF, its pieces parted by blanks. */
export async function pdfTexts(pdf: Uint8Array): Promise<readonly string[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), useSystemFonts: true, verbosity: 0 }).promise;
  const texts: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const { items } = await (await document.getPage(number)).getTextContent();
    texts.push(
      items
        .map((item) => ('str' in item ? item.str : ''))
        .join(' ')
        .replace(/\s+/g, ' '),
    );
  }
  await document.destroy();
  return texts;
}
