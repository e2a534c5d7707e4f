// Photographs every screen and dialog of the app on the demo studio into .build/sheet, to be looked at one by one. Runs tests/support/contact-sheet.ts through Vite.
import { join } from 'node:path';
import { appDir, freshenApp } from './build.mjs';
import { root, withModule } from './modules.mjs';

freshenApp();
const options = { appDir, outDir: join(root, '.build/sheet'), only: process.argv.slice(2) };
await withModule('/tests/support/contact-sheet.ts', async ({ contactSheet }) => contactSheet?.(options));
