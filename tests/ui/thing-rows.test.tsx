import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import type { Celsius } from '../../src/domain/brand.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { ThingRows } from '../../src/ui/parts/thing-rows.tsx';
import { attentionOf, attentionTo } from '../../src/views/attention.ts';
import { thingPage } from '../../src/views/thing-page.ts';
import { anInjector, aShelf, aWax, day } from '../support/builders.ts';

afterEach(cleanup);

it.each([
  ['2025-06-10', 'wax wrong next month'],
  ['2025-07-10', 'wax wrong'],
])('on %s an injector’s page marks the wax in it “%s”', (today, word) => {
  const wax = aWax({ name: 'Cold green', grams: 9000, roomLowC: 10 as Celsius, roomHighC: 27 as Celsius });
  const pot = anInjector({ name: 'Pot', holds: wax.id });
  const months = { '6': { lowC: 17 as Celsius, highC: 24 as Celsius }, '7': { lowC: 29 as Celsius, highC: 33 as Celsius } };
  const shelf = aShelf([wax, pot], { studio: { months } });
  const page = thingPage(shelf, pot.id, SI_UNITS, (id) => attentionTo(attentionOf(shelf, day(today), SI_UNITS), id));
  const rows = page?.related.flatMap((group) => group.rows) ?? [];
  const root = render(<ThingRows rows={rows} />).container;
  expect([...root.querySelectorAll('.mark')].map((mark) => mark.textContent)).toEqual([word]);
});
