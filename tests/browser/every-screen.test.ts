import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, expect, test } from 'vitest';
import { axeViolations } from '../support/axe.ts';
import { makeProfile, type OpenApp, openApp, removeProfile } from '../support/browser.ts';
import { EVERY_SCREEN, type Seen, settled, show } from '../support/every-screen.ts';
import { writeLabelVideo } from '../support/label-video.ts';
import { coveredGlass, cutText, smallText } from '../support/text-seen.ts';

let app: OpenApp | undefined;
const profile = makeProfile();
afterEach(() => app?.close());
afterAll(() => removeProfile(profile));

const PHONE = { width: 390, height: 844 };
/** A window, and the size of letters in it. People may set twice the letters; the page is told by its root’s size. */
const NARROW = [
  ['twice the letters', PHONE, '200%'],
  ['the narrowest phone', { width: 320, height: 640 }, '100%'],
  ['a phone on its side', { width: 844, height: 390 }, '100%'],
] as const;

/** The part of a window that bars may cover at most, by the size of letters: large ones make the frame give way. */
const MOST_COVERED = { '100%': 0.55, '200%': 0.4 } as const;

function letters(page: Page, size: string): Promise<void> {
  return page.evaluate((fontSize) => void Object.assign(document.documentElement.style, { fontSize }), size);
}

/** What cannot be read or reached in each of the windows. */
async function narrowFaults(page: Page): Promise<string[]> {
  const wrong: string[] = [];
  for (const [what, size, letter] of NARROW) {
    await page.setViewportSize(size);
    await letters(page, letter);
    await settled(page, 60);
    wrong.push(...(await cutText(page)).map((each) => `with ${what}: ${each}`));
    wrong.push(...(await coveredGlass(page, MOST_COVERED[letter])).map((each) => `with ${what}: ${each}`));
    if (letter === '100%') wrong.push(...(await smallText(page)).map((each) => `with ${what}: ${each}`));
  }
  await letters(page, '100%');
  await page.setViewportSize(PHONE);
  return wrong;
}

/** Buttons and fields without any edge, of their own or around them: where the system chooses the colours, nothing else shows where they are. */
function edgeless(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const hasEdge = (element: Element | null) => {
      const { borderBottomStyle, borderBottomWidth } = element
        ? getComputedStyle(element)
        : { borderBottomStyle: 'none', borderBottomWidth: '0' };
      return borderBottomStyle !== 'none' && Number.parseFloat(borderBottomWidth) > 0;
    };
    return [
      ...document.querySelectorAll<HTMLElement>(
        '.button, select, textarea, input:not([type="radio"]):not([type="checkbox"]):not([type="file"]):not([type="range"])',
      ),
    ]
      .filter((element) => element.checkVisibility() && element.getBoundingClientRect().width > 1)
      .filter((element) => !hasEdge(element) && !hasEdge(element.closest('.search')))
      .filter((element) => getComputedStyle(element).textDecorationLine === 'none')
      .map((element) => `has no edge: ${element.tagName} .${element.className} “${element.textContent?.trim().slice(0, 30)}”`);
  });
}

/** What moves although the system was told to keep still. */
function moving(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    document
      .getAnimations()
      .filter((animation) => Number(animation.effect?.getComputedTiming().duration ?? 0) > 1)
      .map((animation) => `moves: ${(animation.effect as KeyframeEffect | null)?.target?.className}`),
  );
}

const TALL = { width: PHONE.width, height: 9000 };

/** What axe finds wrong by day and by night, and what has no edge in the system’s own colours. */
async function colourFaults(page: Page, { taps }: Seen): Promise<string[]> {
  const wrong: string[] = [];
  // So tall that no bar covers half of a button that can be scrolled clear of it. A dialog lies over a screen that was looked at whole before.
  if (!taps) await page.setViewportSize(TALL);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    wrong.push(...(await axeViolations(page)).map((each) => `${colorScheme}: ${each}`));
  }
  await page.emulateMedia({ colorScheme: 'light', forcedColors: 'active' });
  wrong.push(...(await edgeless(page)));
  await page.emulateMedia({ forcedColors: 'none' });
  return wrong;
}

/** What a look finds wrong with a screen, by its name; a screen that cannot be come to is wrong too, and the walk goes on. */
async function shown(page: Page, seen: Seen, look: () => Promise<readonly string[]>): Promise<string[]> {
  try {
    await show(page, seen);
    return (await look()).map((each) => `${seen.name}: ${each}`);
  } catch (error) {
    return [`${seen.name}: ${String(error).split('\n', 3).join(' ')}`];
  }
}

// Some sixty screens and dialogs, each looked at eight times.
const WALK_MS = 1_200_000;

test(
  'on every screen and dialog axe finds nothing wrong by day or night, nothing is cut in any window, nothing moves that should keep still, every control has an edge, and no request leaves the origin, scanning included',
  async () => {
    // What the camera sees is read and is no label of ours, so that the camera stays on.
    const video = join(profile, 'symbol.y4m');
    writeLabelVideo(video, 'WORKSHOP RADIO');
    app = await openApp({
      demo: true,
      video,
      prepare: (context) => context.pages()[0]?.emulateMedia({ reducedMotion: 'reduce' }) ?? Promise.resolve(),
    });
    const { page } = app;
    await page.locator('.front').first().waitFor();
    const wrong: string[] = [];
    for (const seen of EVERY_SCREEN) {
      const found = await shown(page, seen, async () => [
        ...(await moving(page)),
        ...(await colourFaults(page, seen)),
        ...(await narrowFaults(page)),
      ]);
      wrong.push(...found);
    }
    expect(wrong).toEqual([]);
    app.assertQuiet();
  },
  WALK_MS,
);

test.each(NARROW)('the doors, with %s', async (_, viewport, letter) => {
  app = await openApp({ viewport });
  await app.page.waitForSelector('.door');
  await letters(app.page, letter);
  await settled(app.page);
  expect(await cutText(app.page)).toEqual([]);
});
