import { expect, test } from 'vitest';
import type { ThingId } from '../../src/domain/brand.ts';
import type { Entry, EntryKind } from '../../src/domain/entry.ts';
import { ENTRY_KINDS } from '../../src/domain/entry.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { SI_UNITS, type Units } from '../../src/domain/units.ts';
import { historyOf } from '../../src/views/history.ts';
import { day } from '../support/builders.ts';
import { aCorrected, aJournal, aMoved, anInjected, aRecorded } from '../support/entry-builders.ts';

const journal = aJournal();
const shelf = foldAll(journal);
const says = (entry: Entry, units: Units = SI_UNITS) => historyOf(shelf, [entry], units)[0]?.says;
const first = (kind: EntryKind) => journal.find((entry) => entry.kind === kind) as Entry;

test('every kind of entry reads as a sentence without ids', () => {
  for (const kind of ENTRY_KINDS) {
    const sentence = says(first(kind)) ?? '';
    expect(sentence).toMatch(/^[A-Z0-9“].*\.$/s);
    expect(sentence).not.toMatch(/[0-9A-HJKMNP-TV-Z]{18}|undefined|NaN|\[object/);
  }
});

test('a run says shots, wax, good waxes, rejects, settings and where they went', () => {
  expect(says(first('injected'))).toBe(
    '11 shots in Green: 39 good waxes; rejects: 3 bubbles, 2 short fill (67 °C, 52 kPa, 7 s). The waxes went to Cabinet A › Tray A2.',
  );
  expect(says(anInjected({ shots: 1234, good: 0, rejects: {}, wax: 'gone' as never }))).toBe(
    '1\u202f234 shots in a wax that is no longer recorded; how many of the waxes were good is not known.',
  );
  expect(says(anInjected({ shots: 1, good: 1, rejects: {}, waxC: 67 as never }), { ...SI_UNITS, temperature: '°F' })).toContain(
    '1 shot in a wax that is no longer recorded: 1 good wax, no rejects (153 °F',
  );
});

test('a move says where to, for how long, and that it was a loan', () => {
  const away = aRecorded('place', { name: 'Plater', kind: 'away', holder: 'Ann' });
  const there = foldAll([...journal, away]);
  const lent = aMoved({ to: away.id as never, until: day('2024-04-01'), usual: 'kept', things: ['a', 'b', 'c'] as never });
  expect(historyOf(there, [lent], SI_UNITS)[0]?.says).toBe('Lent to Ann until 1 April 2024 with 2 other things.');
  expect(says(aMoved({ to: 'gone' as never }))).toBe('Moved to a place that is no longer recorded.');
});

test('a correction names the fields, flags set aside and pictures in words', () => {
  const mould = { id: 'x', noun: 'mould' } as const;
  expect(says(aCorrected(mould, { shotGrams: 4, waxC: null }))).toBe('Put right: wax in a shot, wax temperature.');
  expect(says({ ...aCorrected(mould, {}), aside: { worn: day('2024-04-02'), stray: null } } as Entry)).toBe(
    '“worn” set aside until 2 April 2024; “stray” taken up again.',
  );
});

test('a line about another thing says about which', () => {
  const place = aRecorded('place', { name: 'Rack E' });
  const master = aRecorded('master', { name: 'Bull seal' }, { at: place.id as never });
  const mould = aRecorded('mould', { name: 'Bull 1' });
  const wax = aRecorded('wax', { name: 'Amber' });
  const run = anInjected({ mould: mould.id as never, wax: wax.id as never, shots: 2, good: 2, rejects: {} });
  const moved = aMoved({ to: place.id as never, things: [mould.id, master.id] as never });
  const there = foldAll([place, master, mould, wax]);
  const saidOn = (of: string, entry: Entry) => historyOf(there, [entry], SI_UNITS, of as ThingId)[0]?.says;
  expect(saidOn(place.id, master)).toBe('Master “Bull seal”: recorded in Rack E.');
  expect(saidOn(master.id, master)).toBe('Recorded in Rack E.');
  expect(saidOn(wax.id, run)).toMatch(/^Mould “Bull 1”: 2 shots in Amber/);
  expect(saidOn(place.id, moved)).toBe('Mould “Bull 1”: moved to Rack E with 1 other thing.');
  expect(saidOn(master.id, moved)).toBe('Moved to Rack E with 1 other thing.');
  expect(saidOn(place.id, aRecorded('mould', { name: 'gone' }, { at: place.id as never }))).toBe(
    'Something that is no longer recorded: recorded in Rack E.',
  );
});

test('a line carries its day, who, note and pictures', () => {
  const entry: Entry = { ...anInjected(), by: 'Maren', note: 'the pot was low', pictures: ['p' as never] };
  expect(historyOf(shelf, [entry], SI_UNITS)[0]).toMatchObject({
    day: '5 March 2024',
    by: 'Maren',
    note: 'the pot was low',
    pictures: ['p'],
    entry,
  });
});
