import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/domain/entry.ts';
import { rulesOf } from '../../../src/domain/flag.ts';
import { mouldFlags } from '../../../src/domain/flag-mould.ts';
import { foldOn } from '../../../src/domain/fold.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planStudioFigures, type StudioFigures } from '../../../src/domain/plans/studio-figures.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import type { Shelf } from '../../../src/domain/shelf.ts';
import { aDesk, aMould, aShelf, START_DAY } from '../../support/builders.ts';

const shelf = aShelf([], { studio: { name: 'Gannet Yard', lookDays: 75, life: { 'tin silicone': { shots: 65, years: 4 } } } });
const plan = (command: StudioFigures) => planStudioFigures(shelf, aDesk(), command);
const studioAfter = (command: StudioFigures) => (foldOn(shelf, plan(command) as readonly Entry[]) as Shelf).studio;

describe('the studio’s own figures', () => {
  it('writes down what differs, as one entry, and keeps the rest', () => {
    const life = { natural: { shots: 1500 }, 'tin silicone': { shots: 65, years: 4 } };
    const command = { name: ' Gannet Yard ', hemisphere: 'south', lookDays: 120, life } as const;
    expect(plan(command)).toMatchObject([
      {
        kind: 'corrected',
        noun: 'studio',
        on: START_DAY,
        fields: { hemisphere: 'south', lookDays: 120, life: { natural: { shots: 1500 } } },
      },
    ]);
    expect(studioAfter(command)).toEqual({
      name: 'Gannet Yard',
      hemisphere: 'south',
      lookDays: 120,
      life: { natural: { shots: 1500 }, 'tin silicone': { shots: 65, years: 4 } },
    });
  });

  it('writes nothing when nothing differs, nor a default that is typed in again', () => {
    expect(plan({ name: 'Gannet Yard', hemisphere: 'north', lookDays: 75, life: { natural: { shots: 2000, years: 30 } } })).toEqual([]);
    expect(plan({})).toEqual([]);
  });

  it('goes back to the figure from memory where one is emptied', () => {
    expect(studioAfter({ lookDays: null, life: { 'tin silicone': { years: 4 } } })).toMatchObject({
      lookDays: 180,
      life: { 'tin silicone': { years: 4 } },
    });
    expect(studioAfter({ life: { 'tin silicone': {} } }).life).toEqual({ 'tin silicone': {} });
  });

  it('changes what a mould is flagged for', () => {
    const mould = aMould({ rubber: 'natural', shots: 1450 });
    const kinds = (studio: Shelf['studio']) => mouldFlags(mould, rulesOf(START_DAY, studio)).map(({ kind }) => kind);
    expect(kinds(shelf.studio)).not.toContain('old shots');
    expect(kinds(studioAfter({ life: { natural: { shots: 1500 } } }))).toContain('old shots');
  });

  it.each([
    [{ life: { natural: { shots: 0 } } }, 'natural shots', 'natural: shots are a whole number from 1 to 1 000 000.'],
    [{ life: { natural: { shots: 12.5 } } }, 'natural shots', 'natural: shots are a whole number from 1 to 1 000 000.'],
    [{ life: { natural: { years: 201 } } }, 'natural years', 'natural: years are a number from 0.1 to 200.'],
    [{ life: { natural: { years: Number.NaN } } }, 'natural years', 'natural: years are a number from 0.1 to 200.'],
    [{ lookDays: -3 }, 'lookDays', 'Days between looks: a whole number from 1 to 3650.'],
    [{ name: ' ' }, 'name', 'The studio has a name already: type another instead of none.'],
    [{ name: 'a'.repeat(121) }, 'name', 'That is 121 characters; 120 fit here.'],
  ])('refuses %o beside its field, and writes nothing', (command, field, says) => {
    const outcome = plan({ hemisphere: 'south', ...command });
    expect(isProblem(outcome) && beside(outcome, field)).toBe(says);
  });
});
