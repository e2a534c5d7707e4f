import type { Page } from 'playwright-core';
import { descendantsOf } from '../../src/domain/lineage/descent.ts';
import { demoShelf, workingMould } from './demo-moulds.ts';

/** A screen or dialog of the app on the demo studio, and how to come to it. */
export interface Seen {
  readonly name: string;
  readonly hash: string;
  /** Buttons tapped one after another, by the start of their names. */
  readonly taps?: readonly string[];
  /** What is there when they were tapped, if it is no dialog. */
  readonly opens?: string;
}

const first = (noun: 'wax' | 'design' | 'master' | 'period' | 'injectedWax' | 'casting' | 'flask' | 'injector') =>
  [...demoShelf.things[noun].keys()][0] ?? '';
const mould = `#/mould/${workingMould.id}`;
const pictured = [...demoShelf.things.mould.values()].find(({ pictures, looks }) => (pictures ?? looks ?? []).length > 0);
const original = [...demoShelf.things.master.values()].find(
  (master) => !master.from?.length && descendantsOf(demoShelf, master.id).size > 4,
);
const cabinet = demoShelf.things.place.get(workingMould.at as never)?.in;

/** Every route and the main dialogs: one list for axe, narrow windows, pictures of the screens, and requests. A new screen is added here. */
export const EVERY_SCREEN: readonly Seen[] = [
  { name: 'shelves', hash: '#/shelves' },
  { name: 'shelves with a drawer open', hash: `#/shelves?drawer=${workingMould.at}` },
  { name: 'shelves, add', hash: '#/shelves', taps: ['Add'] },
  { name: 'where is', hash: '#/where' },
  { name: 'where is, found', hash: '#/where?q=owl' },
  { name: 'where is, a span of years', hash: '#/where?q=8th%20century%20BC' },
  { name: 'where is, misspelt', hash: '#/where?q=octopuss' },
  { name: 'wax', hash: '#/wax' },
  { name: 'wax, weigh', hash: '#/wax', taps: ['Weigh'] },
  { name: 'wax, fill an injector', hash: '#/wax', taps: ['Fill injector'] },
  { name: 'attention', hash: '#/attention' },
  { name: 'attention, set aside', hash: '#/attention', taps: ['Set aside'] },
  { name: 'mould', hash: mould },
  { name: 'mould, more', hash: mould, taps: ['More about'] },
  { name: 'mould, retire', hash: mould, taps: ['More about', 'Retire'] },
  { name: 'run', hash: `${mould}/run` },
  { name: 'inspect', hash: `${mould}/inspect` },
  { name: 'failed', hash: `${mould}/failed` },
  { name: 'lineage', hash: `#/lineage/${original?.id}` },
  { name: 'trace', hash: `#/trace/${workingMould.id}` },
  { name: 'measure', hash: `#/measure/${workingMould.id}` },
  { name: 'size', hash: '#/size' },
  { name: 'size of a mould', hash: `#/size?of=${workingMould.id}` },
  { name: 'life', hash: '#/life' },
  { name: 'remake', hash: '#/remake' },
  { name: 'pictures', hash: `#/pictures/${pictured?.id}` },
  { name: 'place', hash: `#/place/${workingMould.at}` },
  { name: 'place, take its list', hash: `#/place/${workingMould.at}`, taps: ['Take '] },
  { name: 'cabinet', hash: `#/place/${cabinet}` },
  { name: 'wax, one', hash: `#/thing/${first('wax')}` },
  { name: 'design', hash: `#/thing/${first('design')}` },
  { name: 'master', hash: `#/thing/${first('master')}` },
  { name: 'master, inspect', hash: `#/thing/${first('master')}/inspect` },
  { name: 'period', hash: `#/thing/${first('period')}` },
  { name: 'injected waxes, count', hash: `#/thing/${first('injectedWax')}`, taps: ['Count'] },
  { name: 'casting', hash: `#/thing/${first('casting')}` },
  { name: 'injector', hash: `#/thing/${first('injector')}` },
  { name: 'move', hash: `#/move?things=${workingMould.id}` },
  { name: 'many', hash: `#/many/${workingMould.id}` },
  { name: 'new', hash: '#/new' },
  { name: 'new mould', hash: '#/new/mould' },
  { name: 'new place', hash: '#/new/place' },
  { name: 'edit', hash: `#/edit/${workingMould.id}` },
  { name: 'edit, wax', hash: `#/edit/${first('wax')}` },
  { name: 'draw', hash: '#/draw/new' },
  { name: 'draw, a cabinet', hash: `#/draw/${cabinet}` },
  { name: 'draw, number', hash: '#/draw/new', taps: ['Number'] },
  { name: 'draw, cut', hash: '#/draw/new', taps: ['All', 'Cut'] },
  { name: 'draw, sizes of fronts', hash: '#/draw/new', taps: ['All', 'Size'], opens: '.draw-tools >> text=Narrower' },
  { name: 'rooms', hash: '#/rooms' },
  { name: 'labels', hash: `#/labels?things=${workingMould.id}` },
  { name: 'shared', hash: '#/shared' },
  { name: 'bring in', hash: '#/bring-in' },
  { name: 'backup', hash: '#/backup' },
  { name: 'settings', hash: '#/settings' },
  { name: 'settings, start again', hash: '#/settings', taps: ['Start again'] },
  { name: 'scan', hash: '#/scan' },
  { name: 'scan, a label of another studio', hash: '#/c/M0000000' },
  { name: 'not recorded', hash: '#/mould/00000000000000000X' },
  { name: 'no such screen', hash: '#/nowhere' },
];

/** Resolves once the page has left itself alone for `forMs`: nothing is added, changed or moving, and nothing is still to be loaded. */
export function settled(page: Page, forMs = 120): Promise<void> {
  return page.evaluate(
    (quietMs) =>
      new Promise<void>((resolve) => {
        const stepMs = 20;
        const giveUp = performance.now() + 15_000;
        // Counted in looks, not in time: a page kept busy changes nothing meanwhile either.
        let quietLooks = 0;
        const watch = new MutationObserver(() => {
          quietLooks = 0;
        });
        watch.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        const look = () => {
          const now = performance.now();
          const isMoving = document.getAnimations().some((animation) => animation.playState === 'running');
          quietLooks = isMoving || document.querySelector('.wait') ? 0 : quietLooks + 1;
          if (quietLooks * stepMs > quietMs || now > giveUp) {
            watch.disconnect();
            resolve();
          } else setTimeout(look, stepMs);
        };
        look();
      }),
    forMs,
  );
}

/** Opens a screen or dialog in a page that has the app open already. */
export async function show(page: Page, { hash, taps = [], opens = 'dialog[open]' }: Seen): Promise<void> {
  // By way of an empty address, so that the same screen begins anew and an open dialog closes.
  await page.evaluate(() => Object.assign(window.location, { hash: '#/nowhere' }));
  const nowhere = page.getByRole('heading', { name: 'There is no such screen' });
  await nowhere.waitFor();
  await page.evaluate((address) => Object.assign(window.location, { hash: address }), hash);
  if (hash !== '#/nowhere') await nowhere.waitFor({ state: 'detached' });
  await page.locator('main, [role=main], .label-reader').first().waitFor();
  await settled(page);
  for (const name of taps) {
    await page
      .getByRole('button', { name: new RegExp(`^${name}`) })
      .first()
      .click();
    await settled(page);
  }
  if (taps.length > 0) await page.locator(opens).waitFor();
}
