import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import type { Deps } from '../../src/actions/deps.ts';
import type { DesignId, PlaceId } from '../../src/domain/brand.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { PlaceScreen } from '../../src/ui/screens/place.tsx';
import { ThingScreen } from '../../src/ui/screens/thing.tsx';
import { StudioProvider, studioOf } from '../../src/ui/studio.tsx';
import { START_DAY } from '../support/builders.ts';
import { aRecorded } from '../support/entry-builders.ts';
import { keptAs, NAUGHTY } from '../support/naughty.ts';

afterEach(cleanup);

const names = [...new Set(NAUGHTY.flatMap((text) => keptAs(text) ?? []))];
const drawer = aRecorded('place', { name: 'Drawer A1', kind: 'drawer' });
const plain = aRecorded('design', { name: 'Dolphin toggle', note: 'Dolphin toggle', sort: 'toggle' });
const designs = names.map((name) => aRecorded('design', { name, note: name, sort: name.slice(0, 60).trim() }));
const masters = names.map((name) => aRecorded('master', { name }, { at: drawer.id as string as PlaceId }));
const shelf = foldAll([drawer, plain, ...designs, ...masters]);
const deps = {
  keeper: { shelf: () => shelf, subscribe: () => () => undefined, history: () => new Promise(() => undefined) },
  settings: { get: () => undefined, set: () => undefined },
  today: () => START_DAY,
} as unknown as Deps;

function shown(screen: preact.ComponentChild): Element {
  cleanup();
  return render(<StudioProvider studio={studioOf(deps)}>{screen}</StudioProvider>).container;
}

const tags = (root: Element) => [...root.querySelectorAll('*')].map((element) => element.localName).join(' ');

it('shows each name and note as text, with no more elements than any other thing has', () => {
  const usual = tags(shown(<ThingScreen id={plain.id} />));
  for (const [at, design] of designs.entries()) {
    const root = shown(<ThingScreen id={design.id as string as DesignId} />);
    expect(root.querySelector('h1')?.textContent).toBe(names[at]);
    expect(root.querySelector('.thing-note')?.textContent).toBe(names[at]);
    expect(tags(root)).toBe(usual);
  }
});

it('lists them in a drawer, each as it was typed', () => {
  const root = shown(<PlaceScreen id={drawer.id as string as PlaceId} />);
  const titles = [...root.querySelectorAll('.row-title')].map((title) => title.textContent);
  expect(titles.length).toBeGreaterThan(50);
  for (const title of titles) expect(names).toContain(title);
  expect(root.querySelector('script, iframe, object, embed, img, base, form, style, marquee')).toBeNull();
});
