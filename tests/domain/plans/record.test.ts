import { describe, expect, it } from 'vitest';
import type { Grams, PlaceId } from '../../../src/domain/brand.ts';
import { beside } from '../../../src/domain/form-problem.ts';
import { planRecord, type RecordThing } from '../../../src/domain/plans/record.ts';
import { isProblem, type Problem } from '../../../src/domain/problem.ts';
import { isWarning } from '../../../src/domain/warning.ts';
import { aDesign, aDesk, aMould, aPlace, aShelf, aWax, codeOf } from '../../support/builders.ts';

const drawer = aPlace();
const design = aDesign();
const known = aMould({ code: codeOf('mould', 3) });
const shelf = aShelf([drawer, design, known, aWax()]);
const plan = (command: RecordThing) => planRecord(shelf, aDesk(), command);

describe('recording', () => {
  it('takes a name and a place and draws a code', () => {
    const entries = plan({ noun: 'mould', fields: { name: 'Toggle 2' }, at: drawer.id });
    expect(entries).toMatchObject([
      { kind: 'recorded', noun: 'mould', fields: { name: 'Toggle 2', code: expect.stringMatching(/^M.{7}$/) }, at: drawer.id },
    ]);
  });

  it('takes a code as typed, and a design in place of a name', () => {
    const code = codeOf('mould', 9);
    const entries = plan({ noun: 'mould', fields: { design: design.id, code: ` ${code.toLowerCase()} ` } });
    expect(entries).toMatchObject([{ fields: { design: design.id, code } }]);
  });

  it('records twelve alike, each with a code of its own, in one action', () => {
    const entries = plan({ noun: 'mould', fields: { design: design.id }, count: 12, at: drawer.id });
    if (isProblem(entries)) throw new Error(entries.says);
    const codes = new Set(entries.map((entry) => (entry as { fields: { code: string } }).fields.code));
    expect(codes.size).toBe(12);
    expect(new Set(entries.slice(1).map((entry) => entry.step))).toEqual(new Set([entries[0]?.id]));
  });

  it('numbers several of a name on from it, past what is taken', () => {
    const names = (plan({ noun: 'mould', fields: { name: 'Dolphin' }, count: 3 }) as unknown as { fields: { name: string } }[]).map(
      (entry) => entry.fields.name,
    );
    expect(names).toEqual(['Dolphin', 'Dolphin 2', 'Dolphin 3']);
    expect(plan({ noun: 'mould', fields: { name: 'Dolphin 0' }, count: 2 })).toMatchObject([
      { fields: { name: 'Dolphin 0' } },
      { fields: { name: 'Dolphin 2' } },
    ]);
  });

  it('puts a place into a place by its field, a pile’s pieces and a tub’s grams beside the fields', () => {
    expect(plan({ noun: 'place', fields: { name: 'Box', kind: 'box' }, at: drawer.id })).toMatchObject([{ fields: { in: drawer.id } }]);
    expect(plan({ noun: 'injectedWax', fields: { design: design.id }, pieces: 8 })).toMatchObject([{ pieces: 8 }]);
    expect(plan({ noun: 'wax', fields: { name: 'Violet' }, grams: 900 as Grams })).toMatchObject([{ grams: 900 }]);
  });

  it.each([
    ['no name', { noun: 'injector', fields: {} }, 'name'],
    ['a name too long', { noun: 'mould', fields: { name: 'x'.repeat(121) } }, 'name'],
    ['an unknown field', { noun: 'mould', fields: { name: 'A', wheels: 4 } }, 'wheels'],
    ['a field that is everyone’s', { noun: 'mould', fields: { name: 'A', constructor: 'x' } }, 'constructor'],
    ['a day that does not exist', { noun: 'mould', fields: { name: 'A', made: '2023-02-30' } }, 'made'],
    ['a day to come', { noun: 'mould', fields: { name: 'A', made: '2024-03-06' } }, 'made'],
    ['no cavity', { noun: 'mould', fields: { name: 'A', cavities: 0 } }, 'cavities'],
    ['a slip in the code', { noun: 'mould', fields: { name: 'A', code: 'M0000000' } }, 'code'],
    ['a code of another kind', { noun: 'mould', fields: { name: 'A', code: codeOf('wax', 1) } }, 'code'],
    ['a code that is taken', { noun: 'mould', fields: { name: 'A', code: known.code } }, 'code'],
    ['one code for several', { noun: 'mould', fields: { name: 'A', code: codeOf('mould', 5) }, count: 2 }, 'code'],
    ['too many', { noun: 'mould', fields: { name: 'A' }, count: 201 }, 'count'],
    ['a place that is gone', { noun: 'mould', fields: { name: 'A' }, at: 'gone' as PlaceId }, 'at'],
    ['a design that is none', { noun: 'mould', fields: { design: drawer.id } }, 'design'],
    ['a period that ends before it begins', { noun: 'period', fields: { name: 'A', from: 30, to: 20 } }, 'to'],
    ['a range upside down', { noun: 'wax', fields: { name: 'A', roomLowC: 30, roomHighC: 20 } }, 'roomHighC'],
    ['negative pieces', { noun: 'casting', fields: { design: design.id }, pieces: -1 }, 'pieces'],
  ] as const)('is refused with %s, beside the field', (_, command, field) => {
    const refused = plan(command as RecordThing) as Problem;
    expect(isProblem(refused)).toBe(true);
    expect(beside(refused, field)).toMatch(/\w/);
  });

  it('names what carries the code already', () => {
    expect(plan({ noun: 'mould', fields: { name: 'A', code: known.code } })).toMatchObject({
      says: `${known.code} is on Dolphin 1 already, a mould.`,
    });
  });

  it('tells all that is wrong at once', () => {
    const refused = plan({ noun: 'mould', fields: { name: '', cavities: 1.5 } }) as Problem & { fields: object };
    expect(Object.keys(refused.fields)).toEqual(['name', 'cavities']);
  });

  it('keeps markup as plain text', () => {
    const name = '<img src=x onerror=alert(1)>';
    expect(plan({ noun: 'design', fields: { name } })).toMatchObject([{ fields: { name } }]);
  });

  it('asks about a namesake', () => {
    const warned = plan({ noun: 'design', fields: { name: 'dolphin TOGGLE' } });
    expect(isWarning(warned) && warned.warnings).toEqual(['There is a design called dolphin TOGGLE already.']);
    expect(plan({ noun: 'design', fields: { name: 'dolphin TOGGLE' }, confirmed: true })).toHaveLength(1);
    expect(plan({ noun: 'place', fields: { name: 'Drawer A2', in: drawer.id } })).toHaveLength(1);
  });
});
