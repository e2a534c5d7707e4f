import { openPrintWindow, type PaperMm, preparePrint } from '../device/print.ts';

/** Readies the browser to print label pages and nothing else, and opens its print window. Returns how to undo the readying. */
export function printLabels(paper: PaperMm): () => void {
  const undo = preparePrint('labels', paper);
  openPrintWindow();
  return undo;
}
