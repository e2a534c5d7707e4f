import { serveApp } from '../../.config/server.mjs';
import { workingMould } from './demo-moulds.ts';
import { EVERY_SCREEN, type Seen, settled, show } from './every-screen.ts';
import { findBrowser } from './find-browser.ts';
import { launchApp } from './launch.ts';

/** The demo studio as it is on a day soon after its last entry. */
const DAY = new Date('2026-11-25T10:00:00Z');
const NARROW = { width: 390, height: 844 };
const WIDE = { width: 1280, height: 800 };

const named = (name: string) => EVERY_SCREEN.find((seen) => seen.name === name) as Seen;
const drawer: Seen = { name: 'drawer', hash: `#/shelves?drawer=${workingMould.at}&open=yes` };

/** What the manifest names, under the names it gives. */
const PICTURES = [
  { file: 'narrow-shelves.webp', size: NARROW, seen: { name: 'shelves', hash: `#/shelves?drawer=${workingMould.at}` } },
  { file: 'narrow-mould.webp', size: NARROW, seen: named('mould') },
  { file: 'narrow-wax.webp', size: NARROW, seen: named('wax') },
  { file: 'wide-drawer.webp', size: WIDE, seen: drawer },
] as const;

/** The demo's screens as WebP, small enough to stand in the repository. */
export async function manifestPictures(appDir: string): Promise<readonly { readonly file: string; readonly bytes: Buffer }[]> {
  const server = await serveApp({ dir: appDir });
  const app = await launchApp({
    url: server.url,
    chrome: await findBrowser(),
    demo: true,
    prepare: async (context) => {
      await context.clock.setFixedTime(DAY);
      await context.pages()[0]?.emulateMedia({ reducedMotion: 'reduce' });
    },
  });
  try {
    const { page } = app;
    await page.locator('.front').first().waitFor();
    const session = await app.context.newCDPSession(page);
    const pictures: { file: string; bytes: Buffer }[] = [];
    for (const { file, size, seen } of PICTURES) {
      await page.setViewportSize(size);
      await show(page, seen);
      await settled(page, 400);
      const { data } = await session.send('Page.captureScreenshot', { format: 'webp', quality: 70 });
      pictures.push({ file, bytes: Buffer.from(data, 'base64') });
    }
    return pictures;
  } finally {
    await app.close();
    await server.stop();
  }
}
