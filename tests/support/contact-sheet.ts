import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { serveApp } from '../../.config/server.mjs';
import { EVERY_SCREEN, settled, show } from './every-screen.ts';
import { findBrowser } from './find-browser.ts';
import { launchApp } from './launch.ts';

interface Look {
  readonly name: string;
  readonly viewport: { readonly width: number; readonly height: number };
  readonly media?: {
    readonly colorScheme?: 'light' | 'dark';
    readonly reducedMotion?: 'reduce';
    readonly forcedColors?: 'active';
  };
  readonly letters?: string;
}

const PHONE = { width: 390, height: 844 };
const LOOKS: readonly Look[] = [
  { name: 'phone', viewport: PHONE },
  { name: 'phone-dark', viewport: PHONE, media: { colorScheme: 'dark' } },
  { name: 'desk', viewport: { width: 1280, height: 800 } },
  { name: 'desk-dark', viewport: { width: 1280, height: 800 }, media: { colorScheme: 'dark' } },
  { name: 'narrow', viewport: { width: 320, height: 640 } },
  { name: 'large-letters', viewport: PHONE, letters: '200%' },
  { name: 'landscape', viewport: { width: 844, height: 390 } },
  { name: 'still', viewport: PHONE, media: { reducedMotion: 'reduce' } },
  { name: 'system-colours', viewport: PHONE, media: { forcedColors: 'active' } },
];

/** Writes a picture of every screen in every look, `LOOK/NN-SCREEN.png`; `only` names some looks. */
export async function contactSheet({ appDir, outDir, only }: { appDir: string; outDir: string; only: readonly string[] }): Promise<void> {
  const server = await serveApp({ dir: appDir });
  const chrome = await findBrowser();
  const app = await launchApp({ url: server.url, chrome, demo: true });
  try {
    await app.page.locator('.front').first().waitFor();
    for (const { name, viewport, media, letters } of LOOKS.filter((look) => only.length === 0 || only.includes(look.name))) {
      // Pictures of an earlier run would stand among these under other numbers.
      rmSync(join(outDir, name), { recursive: true, force: true });
      mkdirSync(join(outDir, name), { recursive: true });
      await app.page.setViewportSize(viewport);
      await app.page.emulateMedia({ colorScheme: 'light', reducedMotion: 'no-preference', forcedColors: 'none', ...media });
      await app.page.evaluate((fontSize) => void Object.assign(document.documentElement.style, { fontSize }), letters ?? '');
      for (const [at, seen] of EVERY_SCREEN.entries()) {
        await show(app.page, seen);
        await settled(app.page);
        const file = `${String(at + 1).padStart(2, '0')}-${seen.name.replace(/\W+/g, '-')}.png`;
        await app.page.screenshot({ path: join(outDir, name, file) });
      }
      console.log(`${name}: ${EVERY_SCREEN.length} pictures in ${join(outDir, name)}`);
    }
  } finally {
    await app.close();
    await server.stop();
  }
}
