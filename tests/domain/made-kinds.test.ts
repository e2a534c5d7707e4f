import { describe, expect, it } from 'vitest';
import { insteadOf } from '../../src/domain/instead.ts';
import { isLastOfItsKind, kindsLeftTo } from '../../src/domain/last-of-kind.ts';
import { kindsInWords, kindsMade, mouldsMaking, shareMade } from '../../src/domain/made-kinds.ts';
import { shotsFor, wantedKinds } from '../../src/domain/remake.ts';
import type { Master, Mould, Thing } from '../../src/domain/shelf.ts';
import { aDesign, aMaster, aMould, aShelf } from '../support/builders.ts';

const [owl, fox] = [aDesign({ name: 'Owl', keep: 10, route: 'lost wax' }), aDesign({ name: 'Fox', keep: 10, route: 'lost wax' })];
/** Masters that are gone, so that nothing can be made of them; a plate still says what it makes. */
const gone = (design: Thing, size?: string) => ({ ...aMaster({ state: 'broken' }), design: design.id, size }) as Master;
const [owls, oneFox] = [gone(owl, 'large'), gone(fox)];
const second = { ...owls, id: aMaster().id } as Master;
const bare = ({ master: _, masters: __, size: ___, ...rest }: Mould) => rest as Mould;
const living = { grade: 'sound', purpose: 'production' } as const;
const plate = {
  ...bare(aMould({ ...living, cavities: 3, shots: 95, good: 285, rejects: 0, sound: 0, scrap: 0 })),
  design: owl.id,
  master: owls.id,
  masters: [second.id, oneFox.id],
} as Mould;
const single = (design: Thing, size?: string) => ({ ...bare(aMould(living)), design: design.id, size }) as Mould;
const base = [owl, fox, owls, second, oneFox];

describe('a plate of several masters', () => {
  it('makes what each of them is, shared out by their number', () => {
    const shelf = aShelf([...base, plate]);
    const kinds = kindsMade(shelf, plate);
    expect(kinds.map(({ share, ...kind }) => [kind, Math.round(share * 300)])).toEqual([
      [{ design: owl.id, size: 'large' }, 200],
      [{ design: fox.id }, 100],
    ]);
    expect(kindsInWords(shelf, kinds)).toBe('Owl, large and Fox');
    expect(mouldsMaking(shelf, fox.id)).toEqual([plate]);
    expect(mouldsMaking(aShelf([...base, plate, single(owl)]), fox.id)).toEqual([plate]);
  });

  it('is the mould’s own design where a master says none, or is not recorded', () => {
    const { design: _, size: __, ...unsaid } = aMaster();
    const odd = { ...plate, size: 'small', masters: [unsaid.id] } as Mould;
    expect(kindsMade(aShelf([owl, unsaid as Thing, odd]), { ...odd, master: undefined as never })).toEqual([
      { design: owl.id, size: 'small', share: 1 },
    ]);
    expect(kindsMade(aShelf([owl, unsaid as Thing, odd]), odd)).toEqual([{ design: owl.id, size: 'small', share: 1 }]);
  });

  it('counts for every one of its designs when moulds are made again, by its share of a shot', () => {
    const shelf = aShelf([...base, plate]);
    expect(wantedKinds(shelf).map(({ design, size, moulds }) => [design, size, moulds.length])).toEqual([
      [owl.id, 'large', 1],
      [fox.id, undefined, 1],
    ]);
    const shots = (design: Thing) => shotsFor(plate, 90, shareMade(shelf, plate, design.id as never, undefined));
    expect([shots(owl), shots(fox), shotsFor(plate, 90)]).toEqual([50, 100, 34]);
  });

  it('is the last of its kind for whichever of its designs has no other, and keeps another mould from being it', () => {
    const left = (...others: readonly Thing[]) => kindsLeftTo(aShelf([...base, plate, ...others]), plate).map(({ design }) => design);
    expect(left()).toEqual([owl.id, fox.id]);
    expect(left(single(fox))).toEqual([owl.id]);
    expect(left(single(fox), single(owl, 'large'))).toEqual([]);
    expect(left(single(owl, 'large'), aMaster({ design: fox.id, state: 'sound' }))).toEqual([]);
    const alone = single(fox);
    expect(isLastOfItsKind(aShelf([...base, alone]), alone)).toBe(true);
    expect(isLastOfItsKind(aShelf([...base, alone, plate]), alone)).toBe(false);
  });

  it('is offered instead of a mould that failed, and when it fails itself what the others lack is named', () => {
    const failed = { ...single(fox), grade: 'failed' } as Mould;
    expect(insteadOf(aShelf([...base, failed, plate]), failed.id)).toMatchObject({
      moulds: [plate],
      says: expect.stringMatching(/^There is another mould of Fox/),
    });
    const torn = { ...plate, grade: 'failed' } as Mould;
    const other = single(owl, 'large');
    expect(insteadOf(aShelf([...base, torn, other]), torn.id)).toMatchObject({
      moulds: [other],
      masters: [],
      says: expect.stringMatching(/^There is another mould of Owl, large\..*None of them makes Fox, and there is no master of it\.$/),
    });
    const foxes = aMaster({ design: fox.id, state: 'sound' });
    const named = { ...foxes, size: undefined } as unknown as Master;
    expect(insteadOf(aShelf([...base, torn, other, named]), torn.id)).toMatchObject({
      masters: [named],
      says: expect.stringMatching(/None of them makes Fox: its masters are below\.$/),
    });
  });
});
