import { expect, it } from 'vitest';
import { isLastOfItsKind, lastOfTheirKind, usableMasters } from '../../src/domain/last-of-kind.ts';
import type { Thing } from '../../src/domain/shelf.ts';
import { aDesign, aMaster, aMould, aShelf, day, nextId } from '../support/builders.ts';

const design = aDesign({});
const { master: _, ...plain } = aMould({ design: design.id, size: 'large', grade: 'sound' });
const mould = (over: object = {}) => ({ ...aMould(over), ...over }) as typeof plain;
const isLast = (...others: readonly Thing[]) => isLastOfItsKind(aShelf([design, plain, ...others]), plain);

it('is the last when there is no other living mould of its size, and no master', () => {
  expect(isLast()).toBe(true);
  expect(isLast(mould({ design: design.id, size: 'small' }))).toBe(true);
  expect(isLast(mould({ design: design.id, size: 'large' }))).toBe(false);
  // Nobody wrote its size: it may well be the same.
  expect(isLast(mould({ design: design.id, size: undefined }))).toBe(false);
  expect(isLast(mould({ design: design.id, size: 'large', purpose: 'intermediate' }))).toBe(false);
  expect(isLast(mould({ design: design.id, size: 'large', grade: 'failed' }))).toBe(true);
  expect(isLast(mould({ design: design.id, size: 'large', retired: { on: day('2024-05-06'), reason: 'lost' } }))).toBe(true);
});

it('is not the last while a mould can be made from a master, be it a worn one', () => {
  const master = (state: 'sound' | 'worn' | 'broken' | 'lost') => aMaster({ design: design.id, size: 'large', state });
  expect(isLast(master('sound'))).toBe(false);
  expect(isLast(master('worn'))).toBe(false);
  expect(isLast(master('broken'), master('lost'))).toBe(true);
  expect(isLast({ ...master('sound'), retired: { on: day('2024-05-06'), reason: 'sold' } })).toBe(true);
  const own = aMaster({ state: 'sound' });
  const ofOwn = { ...plain, master: own.id };
  expect(isLastOfItsKind(aShelf([design, ofOwn, own]), ofOwn)).toBe(false);
});

it('says nothing of a mould that is gone, or whose design nobody wrote down', () => {
  const gone = { ...plain, retired: { on: day('2024-05-06'), reason: 'torn' } } as typeof plain;
  const { design: __, ...rest } = plain;
  const unknown = { ...rest, id: nextId() } as typeof plain;
  expect(isLastOfItsKind(aShelf([design, gone]), gone)).toBe(false);
  expect(isLastOfItsKind(aShelf([unknown]), unknown)).toBe(false);
  expect(lastOfTheirKind(aShelf([design, plain, unknown])).map(({ id }) => id)).toEqual([plain.id]);
});

it('offers sound masters before worn ones', () => {
  const worn = aMaster({ design: design.id, size: 'large', state: 'worn' });
  const sound = aMaster({ design: design.id, size: 'large', state: 'sound' });
  const other = aMaster({ design: design.id, size: 'small', state: 'sound' });
  expect(usableMasters(aShelf([design, worn, sound, other]), design.id, 'large').map(({ id }) => id)).toEqual([sound.id, worn.id]);
});
