import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { foldAll } from '../../../src/domain/fold.ts';
import { type ChangePictures, planPictures } from '../../../src/domain/plans/pictures.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { type Mould, type Shelf, thingOf } from '../../../src/domain/shelf.ts';
import { historyOf } from '../../../src/views/history.ts';
import { aDesk, aMould, aShelf, idAt, sha } from '../../support/builders.ts';
import { aCorrected, aFailed, aRecorded } from '../../support/entry-builders.ts';

const mould = aMould({ pictures: [sha(1), sha(2)], looks: [sha(3)] });
const shelf = aShelf([mould]);
const plan = (command: Omit<ChangePictures, 'of'>) => planPictures(shelf, aDesk(), { of: mould.id, ...command }) as readonly Entry[];
const changed = (command: Omit<ChangePictures, 'of'>): Mould => thingOf(apply(shelf, plan(command)), mould.id) as Mould;

describe('the pictures of a thing', () => {
  it('come off it, from its own and from those of what happened to it, and nothing is written when none would', () => {
    const left = changed({ without: [sha(1), sha(3), sha(9)] });
    expect([left.pictures, left.looks]).toEqual([[sha(2)], undefined]);
    expect(plan({ without: [sha(1), sha(9)] })).toMatchObject([{ kind: 'corrected', without: [sha(1)], fields: {} }]);
    expect(plan({ without: [sha(9)] })).toEqual([]);
  });

  it('are led by the one that was chosen, also when it showed what happened', () => {
    expect(changed({ first: sha(2) }).pictures).toEqual([sha(2), sha(1)]);
    const look = changed({ first: sha(3) });
    expect([look.pictures, look.looks]).toEqual([[sha(3), sha(1), sha(2)], undefined]);
    expect(plan({ first: sha(1) })).toEqual([]);
    expect(plan({ first: sha(9) })).toEqual([]);
  });

  it('are left alone where the thing is gone', () => {
    const outcome = planPictures(shelf as Shelf, aDesk(), { of: idAt(999) as string as Mould['id'], without: [sha(1)] });
    expect(isProblem(outcome) && outcome.says).toBe('This is no longer recorded.');
  });

  it('come back when the taking off is taken back, and when they are added again', () => {
    const recorded = aRecorded('mould', { name: 'Heron' }, { pictures: [sha(1), sha(2)] });
    const thing = { id: recorded.id, noun: 'mould' } as const;
    const off = aCorrected(thing, {}, { without: [sha(1)] });
    const undo: Entry = { ...aCorrected(thing, {}), kind: 'withdrawn', entry: off.id } as never;
    const again = aCorrected(thing, {}, { pictures: [sha(1)] });
    const pictures = (...entries: Entry[]) => (thingOf(foldAll([recorded, ...entries]), recorded.id) as Mould).pictures;
    expect(pictures(off)).toEqual([sha(2)]);
    expect(pictures(off, undo)).toEqual([sha(1), sha(2)]);
    expect(pictures(off, again)).toEqual([sha(2), sha(1)]);
  });

  it('that came off are not shown in the lines before it, and the history says so', () => {
    const failed = aFailed({ of: mould.id, pictures: [sha(3), sha(4)] });
    const off = aCorrected(mould, {}, { without: [sha(3)] });
    const chosen = aCorrected(mould, {}, { first: sha(4) });
    const lines = historyOf(shelf, [chosen, off, failed], {} as never);
    expect(lines.map(({ says, pictures }) => [says, pictures])).toEqual([
      ['Chose another picture to be known by.', []],
      ['Took 1 picture off.', []],
      ['Failed: torn gate, curled.', [sha(4)]],
    ]);
  });
});
