import { describe, expect, it } from 'vitest';
import type { InjectorId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { foldOn } from '../../../src/domain/fold.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planFillInjector } from '../../../src/domain/plans/fill-injector.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import type { Shelf } from '../../../src/domain/shelf.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesk, anInjector, aShelf, aWax, day, nextId } from '../../support/builders.ts';

const green = aWax();
const grey = aWax({ name: 'Grey', pressure: 'needs high' });
const gentle = aWax({ name: 'Gentle', pressure: 'low only' });
const sticky = aWax({ name: 'Sticky', use: 'sticky' });
const empty = anInjector();
const filled = anInjector({ name: 'Hand pump', pressure: 'hand', holds: green.id });
const press = anInjector({ name: 'Press', pressure: 'high' });
const shelf = aShelf([green, grey, gentle, sticky, empty, filled, press]);
const fill = (injector: InjectorId, wax: typeof green.id | null, confirmed = false) =>
  planFillInjector(shelf, aDesk(), { injector, wax, confirmed });
const holds = (entries: ReturnType<typeof fill>, injector: InjectorId) =>
  (foldOn(shelf, entries as readonly Entry[]) as Shelf).things.injector.get(injector)?.holds;

describe('filling an injector', () => {
  it('says what it holds, and empties it again', () => {
    expect(holds(fill(empty.id, green.id), empty.id)).toBe(green.id);
    expect(holds(fill(filled.id, null), filled.id)).toBeUndefined();
  });

  it('writes nothing when it holds that already', () => {
    expect(fill(filled.id, green.id)).toEqual([]);
    expect(fill(empty.id, null)).toEqual([]);
  });

  it.each([
    ['a wax for high pressure elsewhere', empty.id, grey.id, 'Grey needs the high-pressure injector, and Big pot is not one.'],
    ['a wax for low pressure in the press', press.id, gentle.id, 'Gentle is for low pressure only, and Press works at high pressure.'],
    [
      'another wax on top of the first',
      filled.id,
      gentle.id,
      'Hand pump holds Green: empty and clean it first, so that the two do not mix.',
    ],
  ])('asks before %s', (_, injector, wax, says) => {
    const asked = fill(injector, wax);
    expect(isWarning(asked) && asked.warnings).toEqual([says]);
    expect(holds(fill(injector, wax, true), injector)).toBe(wax);
  });

  it('takes the wax for high pressure into the press without asking', () => {
    expect(holds(fill(press.id, grey.id), press.id)).toBe(grey.id);
  });

  it('refuses sticky wax, and what is gone or retired', () => {
    const outcome = fill(empty.id, sticky.id, true);
    expect(isProblem(outcome) && beside(outcome, 'wax')).toBe('Sticky is sticky wax, which is not for injecting.');
    expect(isProblem(fill(nextId<InjectorId>(), green.id))).toBe(true);
    const old = { ...green, retired: { on: day('2024-03-01'), reason: 'not wanted' as const } };
    expect(isProblem(planFillInjector(aShelf([old, empty]), aDesk(), { injector: empty.id, wax: old.id }))).toBe(true);
  });
});
