import { describe, expect, it } from 'vitest';
import { insteadOf } from '../../src/domain/instead.ts';
import { aDesign, aMaster, aMould, aPlace, aShelf, day } from '../support/builders.ts';

const drawer = aPlace({ name: 'A3', label: 'A3' });
const design = aDesign({ name: 'Owl seal' });
const like = { design: design.id, size: 'small', rubber: 'natural' } as const;
const failed = aMould({ ...like, name: 'Torn', grade: 'failed' });

describe('what to use instead of a failed mould', () => {
  it('is other moulds of the design and size, by grade, then by share of life used', () => {
    const worn = aMould({ ...like, name: 'Worn', grade: 'worn', shots: 1 });
    const shotOut = aMould({ ...like, name: 'Sound, shot out', grade: 'sound', shots: 200, expectedShots: 200 });
    const old = aMould({ ...like, name: 'Sound, old', grade: 'sound', shots: 900 });
    // 100 of 200 shots are more of a life than 900 of 2000.
    const spent = aMould({ ...like, name: 'Sound, spent', grade: 'sound', shots: 100, expectedShots: 200, at: drawer.id });
    const watch = aMould({ ...like, name: 'Watch', grade: 'watch', shots: 2 });
    const unseen = aMould({ ...like, name: 'Unseen', shots: 3 });
    const found = insteadOf(aShelf([design, drawer, failed, worn, shotOut, spent, old, watch, unseen]), failed.id);
    expect(found.moulds.map((mould) => mould.name)).toEqual(['Sound, old', 'Sound, spent', 'Unseen', 'Watch']);
    expect([found.lastResort, found.masters]).toEqual([[], []]);
    expect(found.says).toBe('There are 4 other moulds of Owl seal, small.');
  });

  it('puts one whose rubber is past its years after those to be trusted', () => {
    const aged = aMould({ ...like, name: 'Aged', grade: 'sound', made: day('1994-05-01'), shots: 1 });
    const unseen = aMould({ ...like, name: 'Unseen', shots: 3 });
    const shelf = aShelf([design, failed, aged, unseen]);
    const names = (today: string) => insteadOf(shelf, failed.id, day(today)).moulds.map((mould) => mould.name);
    expect([names('2024-04-30'), names('2024-05-01')]).toEqual([
      ['Aged', 'Unseen'],
      ['Unseen', 'Aged'],
    ]);
  });

  it('names a worn one only as a last resort, with the master beside it', () => {
    const worn = aMould({ ...like, name: 'Worn', grade: 'worn' });
    const shotOut = aMould({ ...like, name: 'Shot out', shots: 2000 });
    const master = aMaster({ design: design.id, size: 'small', at: drawer.id });
    const found = insteadOf(aShelf([design, drawer, failed, worn, shotOut, master]), failed.id);
    expect([found.moulds, found.lastResort.map(({ name }) => name), found.masters]).toEqual([[], ['Shot out', 'Worn'], [master]]);
    expect(found.says).toBe(
      '2 other moulds of Owl seal, small are left, all worn or past their expected shots: a last resort. ' +
        'A new one can be made from its master, sound, in A3.',
    );
    expect(insteadOf(aShelf([design, failed, worn]), failed.id).says).toBe(
      'The only other mould of Owl seal, small is worn or past its expected shots: a last resort. There is no master to make a new one from.',
    );
  });

  it('for an intermediate mould is another intermediate one', () => {
    const torn = aMould({ ...like, purpose: 'intermediate', grade: 'failed' });
    const other = aMould({ ...like, purpose: 'intermediate' });
    const found = insteadOf(aShelf([design, torn, other, aMould(like)]), torn.id);
    expect(found.moulds).toEqual([other]);
    expect(found.says).toBe('There is another intermediate mould of Owl seal, small.');
  });

  it('says where the only one stands', () => {
    const other = aMould({ ...like, at: drawer.id });
    expect(insteadOf(aShelf([design, drawer, failed, other]), failed.id).says).toBe(
      'There is another mould of Owl seal, small. The best one is in A3.',
    );
  });

  it('leaves out other sizes, intermediate, retired and failed moulds, and then names the master', () => {
    const none = [
      aMould({ ...like, size: 'large' }),
      aMould({ ...like, purpose: 'intermediate' }),
      aMould({ ...like, retired: { on: day('2024-01-02'), reason: 'dud' } }),
      aMould({ ...like, grade: 'failed' }),
    ];
    const master = aMaster({ design: design.id, size: 'small', at: drawer.id });
    const found = insteadOf(aShelf([design, drawer, failed, ...none, master]), failed.id);
    expect(found.moulds).toEqual([]);
    expect(found.masters).toEqual([master]);
    expect(found.says).toBe('No other mould of Owl seal, small can be used. A new one can be made from its master, sound, in A3.');
  });

  it('puts its own master first and a worn one last, and knows broken and lost ones are none', () => {
    const of = { design: design.id, size: 'small' };
    const own = aMaster({ name: 'Own' });
    const worn = aMaster({ ...of, name: 'Worn', state: 'worn' });
    const sound = aMaster({ ...of, name: 'Sound' });
    const unfit = [aMaster({ ...of, state: 'broken' }), aMaster({ ...of, state: 'lost' }), aMaster({ ...of, grade: 'failed' })];
    const torn = aMould({ ...like, master: own.id });
    const found = insteadOf(aShelf([design, torn, worn, sound, own, ...unfit]), torn.id);
    expect(found.masters.map((master) => master.name)).toEqual(['Own', 'Sound', 'Worn']);
  });

  it('says so when there is neither', () => {
    expect(insteadOf(aShelf([design, failed]), failed.id).says).toBe(
      'There is no other mould of Owl seal, small, and no master to make one from.',
    );
  });

  it('goes by the master when no design was written down', () => {
    const { design: _, ...bare } = like;
    const master = aMaster();
    const torn = aMould({ ...bare, master: master.id });
    const other = aMould({ ...bare, master: master.id });
    expect(insteadOf(aShelf([torn, other, master, failed]), torn.id).moulds).toEqual([other]);
  });
});
