import { describe, expect, it } from 'vitest';
import { mastersByDesign, mouldsByDesign } from '../../src/domain/by-design.ts';
import { foldOn } from '../../src/domain/fold.ts';
import type { Shelf } from '../../src/domain/shelf.ts';
import { aDesign, aMaster, aMould, aShelf } from '../support/builders.ts';
import { anInspected, aRecorded } from '../support/entry-builders.ts';

const [toggle, seal] = [aDesign(), aDesign({ name: 'Seal' })];
const [one, two, three] = [aMould({ design: toggle.id }), aMould({ design: toggle.id }), aMould({ design: seal.id })];
const master = aMaster({ design: seal.id });
const start = aShelf([toggle, seal, one, two, three, master]);

/** The slow way. */
function slowly(shelf: Shelf) {
  const groups: Record<string, unknown[]> = {};
  for (const mould of shelf.things.mould.values()) if (mould.design) groups[mould.design] = [...(groups[mould.design] ?? []), mould];
  return groups;
}

describe('moulds and masters by design', () => {
  it('stays the same as grouping afresh, while moulds change, come, and move to another design', () => {
    const shelves = [start];
    const fresh = () => aRecorded('mould', { name: 'New', design: toggle.id });
    const entries = [anInspected({ of: one.id }), fresh(), anInspected({ of: three.id, grade: 'worn' })];
    for (const entry of entries) shelves.push(foldOn(shelves.at(-1) as Shelf, [entry]) as Shelf);
    const moved = new Map((shelves.at(-1) as Shelf).things.mould).set(two.id, { ...two, design: seal.id });
    shelves.push({ ...start, things: { ...start.things, mould: moved } });
    // Back to the start too: what was taken back is as if it had never been.
    for (const shelf of [...shelves, start]) expect(Object.fromEntries(mouldsByDesign(shelf))).toEqual(slowly(shelf));
  });

  it('keeps the list of a design that nothing touched', () => {
    const before = mouldsByDesign(start).get(seal.id);
    const after = mouldsByDesign(foldOn(start, [anInspected({ of: one.id })]) as Shelf);
    expect(after.get(seal.id)).toBe(before);
    expect(mastersByDesign(start).get(seal.id)).toEqual([master]);
  });
});
