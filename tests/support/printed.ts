import type { DocumentInitParameters } from 'pdfjs-dist/types/src/display/api.d.ts';
import type { Page } from 'playwright-core';
import type { Grey } from './label-picture.ts';

export interface PrintedPage {
  /** As the PDF itself says, mm (a point is 1/72 inch). */
  readonly wideMm: number;
  readonly tallMm: number;
  /** The page as a scanner of so many dots an inch sees it. */
  readonly picture: Grey;
  readonly text: string;
}

const MM = 25.4;

/** What the browser would hand to the printer, page by page, at this many dots an inch. */
export async function printedPages(page: Page, dpi: number): Promise<readonly PrintedPage[]> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const given: DocumentInitParameters = { data: new Uint8Array(pdf), verbosity: 0, useSystemFonts: true };
  const loading = getDocument(given);
  const document = await loading.promise;
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const printed = await document.getPage(number);
    const viewport = printed.getViewport({ scale: dpi / 72 });
    const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
    const { canvas, context } = (document.canvasFactory as CanvasFactory).create(width, height);
    await printed.render({ canvasContext: context, viewport }).promise;
    const { items } = await printed.getTextContent();
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = printed.view;
    pages.push({
      wideMm: ((x1 - x0) / 72) * MM,
      tallMm: ((y1 - y0) / 72) * MM,
      picture: greyOf(context.getImageData(0, 0, canvas.width, canvas.height)),
      text: items.map((item) => ('str' in item ? item.str : '')).join(' '),
    });
  }
  await loading.destroy();
  return pages;
}

interface CanvasFactory {
  create(width: number, height: number): { canvas: { width: number; height: number }; context: CanvasRenderingContext2D };
}

function greyOf({ width, height, data }: ImageData): Grey {
  const grey = new Float32Array(width * height);
  for (let i = 0; i < grey.length; i++) grey[i] = ((data[4 * i] ?? 0) + (data[4 * i + 1] ?? 0) + (data[4 * i + 2] ?? 0)) / 3;
  return { width, height, data: grey };
}

/** A piece of a picture; what lies outside of it is white. */
export function cutOut(picture: Grey, left: number, top: number, width: number, height: number): Grey {
  const data = new Float32Array(width * height).fill(255);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [fromX, fromY] = [left + x, top + y];
      if (fromX < 0 || fromY < 0 || fromX >= picture.width || fromY >= picture.height) continue;
      data[y * width + x] = picture.data[fromY * picture.width + fromX] ?? 255;
    }
  }
  return { width, height, data };
}

/** First and last dark dot along a row of dots (or a column), counted from its start; undefined when all is light. */
export function darkSpan(picture: Grey, along: 'row' | 'column', at: number): { readonly from: number; readonly to: number } | undefined {
  const length = along === 'row' ? picture.width : picture.height;
  const dark = (i: number) => (picture.data[along === 'row' ? at * picture.width + i : i * picture.width + at] ?? 255) < 128;
  let from = 0;
  while (from < length && !dark(from)) from++;
  let to = length - 1;
  while (to > from && !dark(to)) to--;
  return from < length ? { from, to: to + 1 } : undefined;
}
