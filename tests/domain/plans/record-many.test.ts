import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/domain/apply.ts';
import type { ThingId } from '../../../src/domain/brand.ts';
import type { Entry } from '../../../src/domain/entry.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planRecordMany, type RecordMany } from '../../../src/domain/plans/record-many.ts';
import type { Problem } from '../../../src/domain/problem.ts';
import { aDesign, aDesk, aMaster, aMould, anInjectedWax, aPlace, aShelf, codeOf } from '../../support/builders.ts';

const drawer = aPlace({ name: 'Chest A2', label: 'A2', box: { x: 18, y: 18, w: 403, h: 117 } });
const away = aPlace({ name: 'The plater', kind: 'away' });
const design = aDesign();
const toggle = aMould({ name: 'Toggle 07', design: design.id, at: drawer.id, code: codeOf('mould', 3) });
const nameless = aMaster({ name: undefined as never, design: design.id, size: '9', at: away.id, usual: drawer.id });
const pile = anInjectedWax();
const shelf = aShelf([drawer, away, design, toggle, nameless, pile, aMould({ name: 'toggle 09' })]);
const plan = (command: RecordMany) => planRecordMany(shelf, aDesk(), command);
const fieldsOf = (entries: readonly Entry[] | Problem) =>
  (entries as unknown as { fields: Record<string, unknown> }[]).map(({ fields }) => fields);

describe('several like one', () => {
  it('are numbered on past what is taken, stand in the same place and carry a code each, in one action', () => {
    const entries = plan({ like: toggle.id, count: 12, by: 'name' }) as readonly Entry[];
    const fields = fieldsOf(entries);
    expect(fields.map(({ name }) => name).slice(0, 3)).toEqual(['Toggle 08', 'Toggle 10', 'Toggle 11']);
    expect(new Set(fields.map(({ code }) => code)).size).toBe(12);
    expect(entries.every((entry) => entry.kind === 'recorded' && entry.at === drawer.id)).toBe(true);
    expect(new Set(entries.slice(1).map(({ step }) => step))).toEqual(new Set([entries[0]?.id]));
    expect(fields[0]).toMatchObject({ design: design.id, rubber: 'natural', cavities: 4 });
  });

  it('take over what it is, and nothing of what happened to it', () => {
    const after = apply(shelf, plan({ like: toggle.id, count: 1, by: 'name' }) as readonly Entry[]);
    const [fresh] = [...after.things.mould.values()].filter(({ name }) => name === 'Toggle 08');
    expect(fresh).toMatchObject({ shots: 0, good: 0, rejects: 0, size: 'small' });
  });

  it('count on by their size, or not at all, and stand where a lent one belongs', () => {
    const sized = plan({ like: nameless.id, count: 2, by: 'size' });
    expect(fieldsOf(sized).map(({ size }) => size)).toEqual(['10', '11']);
    expect(sized).toMatchObject([{ at: drawer.id }, { at: drawer.id }]);
    expect(fieldsOf(plan({ like: nameless.id, count: 2, by: 'nothing' })).map(({ size }) => size)).toEqual(['9', '9']);
  });

  it('drawers get the next name and label, and no place on the front that is another’s', () => {
    expect(fieldsOf(plan({ like: drawer.id, count: 1, by: 'name' }))).toEqual([
      { name: 'Chest A3', label: 'A3', kind: 'drawer', capacity: 61, widthMm: 403, heightMm: 117, code: expect.stringMatching(/^P/) },
    ]);
  });

  it('a drawer’s next label may be on another cabinet’s drawer, and passes over those of its own', () => {
    const [here, there] = [aPlace({ kind: 'cabinet' }), aPlace({ kind: 'cabinet' })];
    const a1 = aPlace({ name: 'A1', label: 'A1', in: here.id });
    const others = [aPlace({ name: 'A2', label: 'A2', in: there.id }), aPlace({ name: 'A3', label: 'A3', in: here.id })];
    const entries = planRecordMany(aShelf([here, there, a1, ...others]), aDesk(), { like: a1.id, count: 2, by: 'name' });
    expect(fieldsOf(entries).map(({ name, label }) => [name, label])).toEqual([
      ['A2', 'A2'],
      ['A4', 'A4'],
    ]);
  });

  it.each([
    ['none', { like: toggle.id, count: 0, by: 'name' }, 'count'],
    ['too many', { like: toggle.id, count: 201, by: 'name' }, 'count'],
    ['half a one', { like: toggle.id, count: 1.5, by: 'name' }, 'count'],
    ['no name to count on from', { like: nameless.id, count: 2, by: 'name' }, 'by'],
  ] as const)('are refused with %s', (_, command, field) => {
    expect(beside(plan(command) as Problem, field)).toMatch(/\w/);
  });

  it('are refused for a pile, whose pieces say how many it is, and for what is gone', () => {
    const nothing = { kept: 'Nothing has been written down.' };
    expect(plan({ like: pile.id, count: 2, by: 'nothing' })).toMatchObject(nothing);
    expect(plan({ like: 'gone' as ThingId, count: 2, by: 'nothing' })).toMatchObject(nothing);
  });

  it('a name grown too long is refused whole', () => {
    const long = aMould({ name: `${'x'.repeat(119)}9` });
    expect(beside(planRecordMany(aShelf([long]), aDesk(), { like: long.id, count: 3, by: 'name' }) as Problem, 'name')).toMatch(/\w/);
  });
});
