import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../src/domain/fields.ts';
import { beside } from '../../src/domain/form-problem.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import type { Problem } from '../../src/domain/problem.ts';
import type { Units } from '../../src/domain/units.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { day, figure, lines, many, one, ref, refs, sizes, text, year, yes } from '../../src/ui/form-editor.ts';
import { changedFields, typedFields } from '../../src/ui/form-values.ts';
import { FORMS } from '../../src/ui/forms.ts';

const AMERICAN: Units = { mass: 'oz t', length: 'in', temperature: '°F', pressure: 'psi' };
const editors = [
  text('name'),
  lines('note'),
  figure('keepGrams', 'mass'),
  figure('injection.waxC', 'temperature'),
  figure('injection.holdS', 'seconds'),
  one('use', ['injecting', 'sticky']),
  many('metals', ['pewter', 'bronze']),
  ref('design', 'design'),
  refs('periods', 'period'),
  day('made'),
  year('from'),
  yes('open'),
  sizes('sizes'),
];
const fields = {
  name: 'Green',
  keepGrams: 31.103,
  injection: { waxC: 70, holdS: 4 },
  use: 'sticky',
  metals: ['bronze'],
  design: 'd1',
  periods: ['e1', 'e2'],
  made: '2024-02-29',
  from: -149,
  open: true,
  sizes: [{ label: 'S', mm: 25.4 }, { label: 'L' }],
};

describe('a form', () => {
  it('shows every field in the studio’s units and changes nothing that was not touched', () => {
    const typed = typedFields(editors, fields, AMERICAN);
    expect(typed).toMatchObject({
      keepGrams: '1',
      'injection.waxC': '158',
      from: '150 BC',
      open: 'yes',
      periods: 'e1\ne2',
      sizes: 'S; 1\nL',
      note: '',
    });
    expect(changedFields(editors, typed, typed, AMERICAN)).toEqual({});
  });

  it('reads what was typed back to what it shows', () => {
    const typed = typedFields(editors, fields, SI_UNITS);
    expect(changedFields(editors, typed, {}, SI_UNITS)).toEqual(fields);
  });

  it('clears what was emptied, and keeps the other parts of a group', () => {
    const begun = typedFields(editors, fields, SI_UNITS);
    const typed = { ...begun, use: '', 'injection.holdS': ' ', made: '' };
    expect(changedFields(editors, typed, begun, SI_UNITS)).toEqual({ use: null, made: null, injection: { waxC: 70 } });
    const bare = { ...typed, 'injection.waxC': '' };
    expect(changedFields(editors, bare, begun, SI_UNITS)).toMatchObject({ injection: null });
  });

  it('tells each field that cannot be read', () => {
    const typed = { keepGrams: 'lots', 'injection.waxC': 'hot', from: '0 BC', sizes: 'S; wide' };
    const wrong = changedFields(editors, typed, {}, SI_UNITS) as Problem & { fields: object };
    expect(Object.keys(wrong.fields).sort()).toEqual(['from', 'injection.waxC', 'keepGrams', 'sizes']);
    expect(beside(wrong, 'keepGrams')).toBe('“lots” is not a number.');
  });
});

/** Told by printing a label and by calling a record doubtful, each a verb of its own that asks no more than that: no form asks for them. */
const TOLD_BY_A_VERB = ['labelled', 'doubt'];

describe.each(NOUNS)('the form of a %s', (noun) => {
  it('has every field a record may carry, each once', () => {
    const asked = [...FORMS[noun].main, ...FORMS[noun].more].map(({ field }) => field);
    expect(new Set(asked).size).toBe(asked.length);
    const carried = Object.keys(FIELDS[noun]).filter((field) => !TOLD_BY_A_VERB.includes(field));
    expect([...new Set(asked.map((field) => field.split('.')[0]))].sort()).toEqual(carried.sort());
  });
});
