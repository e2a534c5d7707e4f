/** How long a browser may take to tell that it has printed; some phones never do. */
const PATIENCE_MS = 120_000;

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
