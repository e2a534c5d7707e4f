import type { Page } from 'playwright-core';

/** What the page's own dialogs say from now on, each dismissed: a name that runs as a script opens one. */
export function dialogsOf(page: Page): readonly string[] {
  const opened: string[] = [];
  page.on('dialog', (dialog) => {
    opened.push(dialog.message());
    void dialog.dismiss();
  });
  return opened;
}
