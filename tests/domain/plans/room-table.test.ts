import { describe, expect, it } from 'vitest';
import type { Celsius } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { foldOn } from '../../../src/domain/fold.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planRoomTable, type RoomTable } from '../../../src/domain/plans/room-table.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { roomIn } from '../../../src/domain/room.ts';
import type { Shelf } from '../../../src/domain/shelf.ts';
import { SI_UNITS } from '../../../src/domain/units.ts';
import { aDesk, aShelf, START_DAY } from '../../support/builders.ts';

const shelf = aShelf([], { studio: { months: { '2': { lowC: 6 as Celsius, highC: 13 as Celsius } } } });
const plan = (command: RoomTable) => planRoomTable(shelf, aDesk(), command);
const studioAfter = (command: RoomTable) => (foldOn(shelf, plan(command) as readonly Entry[]) as Shelf).studio;

describe('the workshop’s months', () => {
  it('writes down the months that differ, and keeps the others', () => {
    expect(studioAfter({ months: { '7': { lowC: 21, highC: 34.5 } } }).months).toEqual({
      '2': { lowC: 6, highC: 13 },
      '7': { lowC: 21, highC: 34.5 },
    });
    expect(plan({ months: { '2': { lowC: 6, highC: 13 } } })).toEqual([]);
  });

  it('turns the assumed months over with the hemisphere', () => {
    const studio = studioAfter({ hemisphere: 'south' });
    expect(roomIn(1, studio)).toMatchObject({ ...roomIn(7, {}), month: '1' });
    expect(plan({ hemisphere: 'north' })).toEqual([]);
  });

  it.each([
    [{ lowC: 20, highC: 19.5 }, 'August: the low is higher than the high.'],
    [{ lowC: 20 }, 'August: give both the low and the high.'],
    [{ lowC: -41, highC: 3 }, 'August: between −40 °C and 60 °C.'],
    [{ lowC: 3, highC: Number.NaN }, 'August: between −40 °C and 60 °C.'],
  ])('refuses %o beside its month, and writes nothing', (month, says) => {
    const outcome = plan({ months: { '8': month, '7': { lowC: 1, highC: 2 } } });
    expect(isProblem(outcome) && beside(outcome, '8')).toBe(says);
  });

  it('says what a room may be in the units asked for', () => {
    const outcome = plan({ months: { '8': { lowC: -41, highC: 3 } }, units: { ...SI_UNITS, temperature: '°F' } });
    expect(isProblem(outcome) && beside(outcome, '8')).toBe('August: between −40 °F and 140 °F.');
  });

  it('can be folded on any day', () => {
    expect(plan({ hemisphere: 'south' })).toMatchObject([{ kind: 'corrected', noun: 'studio', on: START_DAY }]);
  });
});
