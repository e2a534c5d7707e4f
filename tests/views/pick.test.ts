import { expect, test } from 'vitest';
import { moveListOf } from '../../src/views/move-list.ts';
import { choicesFor, nearChoices } from '../../src/views/pick.ts';
import { aDesign, aMaster, aMould, aPlace, aShelf, aWax, codeOf, day } from '../support/builders.ts';

const cabinet = aPlace({ name: 'Tall cabinet', kind: 'cabinet' });
const c2 = aPlace({ name: 'Drawer two', label: 'C2', in: cabinet.id });
const c10 = aPlace({ name: 'Drawer ten', label: 'C10', in: cabinet.id });
const old = aPlace({ name: 'Old chest', kind: 'cabinet', retired: { on: day('2024-01-01'), reason: 'given away' } });
const away = aPlace({ name: 'Plater', kind: 'away' });
const owl = aMaster({ name: 'Éperon owl', code: codeOf('master', 2), at: c2.id });
const out = aMould({ name: 'Out', at: away.id, usual: c2.id });
const home = aMould({ name: 'Home', at: c10.id });
const shelf = aShelf([cabinet, c2, c10, old, away, owl, out, home]);

test('choices hold every word typed, whatever the case or accents, in the studio’s order', () => {
  expect(choicesFor(shelf, ['place'], 'tall c', 5).map(({ title }) => title)).toEqual([
    'Tall cabinet',
    'Tall cabinet › C2',
    'Tall cabinet › C10',
  ]);
  expect(choicesFor(shelf, ['place'], 'ten', 5).map(({ title }) => title)).toEqual(['Tall cabinet › C10']);
  expect(choicesFor(shelf, ['master'], 'OWL eperon', 5)).toMatchObject([{ id: owl.id, detail: `${owl.code} · Tall cabinet › C2` }]);
  expect(choicesFor(shelf, ['place'], 'c', 2)).toHaveLength(2);
});

test('moulds that are numbered are told apart by their designs, and found by them', () => {
  const [omega, heron] = [aDesign({ name: 'Omega brooch' }), aDesign({ name: 'Heron brooch' })];
  const [one, two] = [aMould({ name: 'M-001', design: heron.id, at: c2.id }), aMould({ name: 'M-002', design: omega.id, at: c2.id })];
  const numbered = aShelf([cabinet, c2, omega, heron, one, two]);
  expect(choicesFor(numbered, ['mould'], 'omega', 5)).toEqual([
    { id: two.id, title: 'M-002', detail: expect.stringContaining('Omega brooch · ') },
  ]);
  expect(moveListOf(numbered, [one.id]).things[0]?.detail).toBe('mould · Heron brooch · Tall cabinet › C2');
});

test('what is out of use is no choice', () => {
  expect(choicesFor(shelf, ['place'], 'old', 5)).toEqual([]);
});

test('a slip is forgiven as the search forgives it, in each word by itself; codes and sizes are not guessed at', () => {
  const waxes = aShelf([
    aWax({ name: 'Green ruby', code: codeOf('wax', 2) }),
    aWax({ name: 'Amber' }),
    aWax({ name: 'Greet', retired: { on: day('2024-01-01'), reason: 'used up' } }),
  ]);
  const titles = (typed: string) => nearChoices(waxes, ['wax'], typed, 5).map(({ title }) => title);
  expect(choicesFor(waxes, ['wax'], 'gren', 5)).toEqual([]);
  expect(titles('gren')).toEqual(['Green ruby']);
  expect(titles('gren rub')).toEqual(['Green ruby']);
  expect(titles('gren amber')).toEqual([]);
  expect(titles('zzzzz')).toEqual([]);
  expect(titles(codeOf('wax', 3))).toEqual([]);
});

test('putting back is offered only when every thing has a usual place', () => {
  expect(moveListOf(shelf, [out.id])).toMatchObject({ home: 'Tall cabinet › C2', holders: ['Plater'] });
  expect(moveListOf(shelf, [out.id, home.id])).not.toHaveProperty('home');
  expect(moveListOf(shelf, [])).not.toHaveProperty('home');
  expect(moveListOf(shelf, [home.id, 'gone']).things).toEqual([{ id: home.id, title: 'Home', detail: 'mould · Tall cabinet › C10' }]);
});
