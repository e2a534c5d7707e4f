// Draws the PNG icons from icons/icon.svg. Run it after changing the drawing: CHROME_PATH=… node .config/icons.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';

const icons = new URL('../icons/', import.meta.url);
const svg = readFileSync(new URL('icon.svg', icons), 'utf8');
// Phones cut their own corners out of these two, so the ground must reach the edge.
const fullBleed = svg.replace(' rx="104"', '');

// One colour, for themed icons: the system looks only at where it is filled. The ground goes; what lies in the rubber is cut out of it.
const monochrome = svg
  .replace(/<rect width="512"[^>]*>/, '<mask id="cut">')
  .replaceAll('#d98e3a', 'white')
  .replace('stroke="#f4ead7" stroke-width="18" stroke-linejoin', 'stroke="black" stroke-width="18" stroke-linejoin')
  .replace('fill="#20302b"', 'fill="black"')
  .replaceAll('#f4ead7', 'white')
  .replace('</svg>', '</mask><rect width="512" height="512" fill="black" mask="url(#cut)"/></svg>');

const browser = await chromium.launch({
  executablePath: process.env.CHROME_PATH ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
const page = await browser.newPage();
for (const [name, size, drawing] of /** @type {const} */ ([
  ['icon-192.png', 192, svg],
  ['icon-512.png', 512, svg],
  ['icon-maskable-512.png', 512, fullBleed],
  ['icon-180.png', 180, fullBleed],
  ['icon-monochrome-512.png', 512, monochrome],
])) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw}</style>${drawing}`);
  writeFileSync(new URL(name, icons), await page.screenshot({ omitBackground: true }));
}
await browser.close();
