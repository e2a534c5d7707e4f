/** How long a browser may take to tell that it has printed; some phones never do. */
const PATIENCE_MS = 120_000;

export interface PaperMm {
  readonly wide: number;
  readonly tall: number;
}

/**
 * Makes printing show nothing of the app but what is marked for this `job`, on paper of this size without margins. Returns how to undo
 * it. Safari ignores `@page { size }` and prints on the paper chosen in its own window.
 */
export function preparePrint(job: string, paper: PaperMm): () => void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@page { size: ${paper.wide}mm ${paper.tall}mm; margin: 0 }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  document.documentElement.dataset['print'] = job;
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== sheet);
    delete document.documentElement.dataset['print'];
  };
}

/** Opens the print window, once what is to be printed has been drawn. */
export function openPrintWindow(): void {
  requestAnimationFrame(() => setTimeout(() => void printPage()));
}

/**
 * Opens the browser's own print dialog for the page as it is. Resolves when it is closed: phones return from `print` at once and tell
 * later. False where the browser cannot print.
 */
export async function printPage(): Promise<boolean> {
  if (typeof window.print !== 'function') return false;
  const closed = new Promise<void>((resolve) => {
    window.addEventListener('afterprint', () => resolve(), { once: true });
    setTimeout(resolve, PATIENCE_MS);
  });
  window.print();
  await closed;
  return true;
}
