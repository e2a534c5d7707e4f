import { describe, expect, test } from 'vitest';
import type { Target } from '../../../src/domain/csv/targets.ts';
import { parseEntry } from '../../../src/domain/parse-entry.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { codeOf } from '../../support/builders.ts';
import { entriesOfPlan, planOf } from '../../support/import.ts';

/** What the rows that come in are recorded with. */
const recordedAs = (text: string, target: Target = 'mould', flipped: readonly number[] = []) =>
  entriesOfPlan(planOf(text, target), undefined, flipped).flatMap((entry) =>
    entry.kind === 'recorded' && entry.noun === target ? [entry.fields as Readonly<Record<string, unknown>>] : [],
  );

describe('a figure that no entry may have holds up its own row, with its line and the range in words', () => {
  test.each<[string, Target, string]>([
    [
      'Mould no,Design,Wax temp\nK-1,Hare,7400\n',
      'mould',
      'Wax temperature: “7400” cannot be right: 7\u202f400 °C is outside 20 °C to 150 °C.',
    ],
    [
      'Mould no,Design,Wax temp (F)\nK-1,Hare,450\n',
      'mould',
      'Wax temperature: “450” cannot be right: 232.2 °C is outside 20 °C to 150 °C.',
    ],
    [
      'Mould no,Design,Pressure\nK-1,Hare,99 bar\n',
      'mould',
      'Pressure: “99 bar” cannot be right: 9\u202f900 kPa is outside 0 kPa to 1\u202f000 kPa.',
    ],
    ['Mould no,Design,Hold\nK-1,Hare,11 min\n', 'mould', 'Hold time: “11 min” cannot be right: 660 is outside 0 to 600.'],
    ['Mould no,Design,Cavities\nK-1,Hare,501\n', 'mould', 'Cavities: “501” cannot be right: 501 is outside 1 to 500.'],
    [
      'Mould no,Design,Shot g\nK-1,Hare,200 kg\n',
      'mould',
      'Wax a shot: “200 kg” cannot be right: 200\u202f000 g is outside 0 g to 100\u202f000 g.',
    ],
    [
      'Wax,Stock\nAmber,20000 kg\n',
      'wax',
      'Stock: “20000 kg” cannot be right: 20\u202f000\u202f000 g is outside 0 g to 10\u202f000\u202f000 g.',
    ],
    ['Wax,Injection range\nAmber,60-700\n', 'wax', 'Injection range: “60-700” cannot be right: 700 °C is outside 20 °C to 150 °C.'],
  ])('%j', (text, target, says) => {
    const plan = planOf(text, target);
    expect(plan.rows).toMatchObject([{ line: 2, state: 'unreadable', take: false, says: [says] }]);
    expect(entriesOfPlan(plan)).toEqual([]);
  });
  test('the rows around it come in', () => {
    const plan = planOf('Mould no,Design,Wax temp,Pressure\nK-1,Hare,74,120\nK-2,Hare,7400,120\nK-3,Hare,74,99 bar\n', 'mould');
    expect(plan.rows.map(({ line, state }) => [line, state])).toEqual([
      [2, 'new'],
      [3, 'unreadable'],
      [4, 'unreadable'],
    ]);
    const entries = entriesOfPlan(plan).map(parseEntry);
    expect(entries.filter(isProblem)).toEqual([]);
    expect(entries.length).toBeGreaterThan(0);
  });
  test.each<[string, Target, string]>([
    ['Further masters', 'mould', 'Further masters: 61 are named; 60 fit here.'],
    ['Period', 'mould', 'Period: 21 are named; 20 fit here.'],
    ['Period', 'place', 'Periods: 41 are named; 40 fit here.'],
  ])('more names in %s of a %s than an entry may have', (heading, target, says) => {
    const names = Array.from({ length: heading !== 'Period' ? 61 : target === 'place' ? 41 : 21 }, (_, i) => `"Name ${i}"`).join('; ');
    const plan = planOf(`Name,Design,${heading}\nOwl,Hare,"${names.replaceAll('"', '""')}"\n`, target);
    expect(plan.rows).toMatchObject([{ state: 'unreadable', says: [says] }]);
  });
});

describe('a rubber that the words leave open', () => {
  test.each(['RTV silicone', 'rtv', 'RTV-2', 'Room temperature vulcanised silicone', 'RTV vulc silicone', 'cold cure silicone'])(
    '%s is never taken for one vulcanised in a press, and stays empty',
    (cell) => {
      const plan = planOf(`Mould no,Design,Rubber\nK-1,Hare,${cell}\n`, 'mould');
      expect(plan.rows).toMatchObject([
        {
          state: 'doubtful',
          take: true,
          says: [`Rubber: “${cell}” is platinum silicone or tin silicone; it does not say which.`, 'New design: Hare.'],
        },
      ]);
      expect(recordedAs(`Mould no,Design,Rubber\nK-1,Hare,${cell}\n`)).toEqual([
        { code: expect.anything(), design: expect.anything(), name: 'K-1', note: `Rubber: ${cell}` },
      ]);
    },
  );
  test.each([
    ['platinum RTV', 'platinum silicone'],
    ['RTV (tin)', 'tin silicone'],
    ['condensation', 'tin silicone'],
    ['HTV silicone', 'vulcanised silicone'],
    ['vulcanised silicone', 'vulcanised silicone'],
    ['latex', 'natural'],
  ])('%s says enough', (cell, rubber) => {
    const text = `Mould no,Design,Rubber\nK-1,Hare,${cell}\n`;
    expect(planOf(text, 'mould').rows[0]?.state).toBe('new');
    expect(recordedAs(text)).toMatchObject([{ rubber }]);
  });
  test.each([
    ['silicone', 'vulcanised silicone', 'Rubber: “silicone” is read as vulcanised silicone; platinum or tin silicone may be meant.'],
    [
      'Silicone rubber',
      'vulcanised silicone',
      'Rubber: “Silicone rubber” is read as vulcanised silicone; platinum or tin silicone may be meant.',
    ],
    ['latex?', 'natural', 'Rubber: “latex?” is read as natural.'],
    ['tin silicone (?)', 'tin silicone', 'Rubber: “tin silicone (?)” is read as tin silicone.'],
  ])('%s is taken for %s, which is said', (cell, rubber, says) => {
    const text = `Mould no,Design,Rubber\nK-1,Hare,${cell}\n`;
    expect(planOf(text, 'mould').rows).toMatchObject([{ state: 'doubtful', take: true, says: [says, 'New design: Hare.'] }]);
    expect(recordedAs(text)).toMatchObject([{ rubber }]);
  });
  test('a question mark behind any word is heard', () =>
    expect(planOf('Mould no,Design,Condition\nK-1,Hare,good?\n', 'mould').rows[0]?.says[0]).toBe('Condition: “good?” is read as sound.'));
});

describe('a day of long ago', () => {
  test.each(['15.08.0024', '0024-08-15', '15 Aug 0024'])('%s is asked about and left out, and its words are kept', (cell) => {
    const text = `Mould no,Design,Made\nK-1,Hare,${cell}\n`;
    expect(planOf(text, 'mould').rows).toMatchObject([
      { state: 'doubtful', says: [`Made on: “${cell}” would be in the year 24; it is left out.`, 'New design: Hare.'] },
    ]);
    expect(recordedAs(text)).toEqual([{ code: expect.anything(), design: expect.anything(), name: 'K-1', note: `Made on: ${cell}` }]);
  });
  test('an old master keeps its day, which is asked about; 1900 is not', () => {
    const plan = planOf('Master,Made\nLion,1.5.1890\nOwl,2.1.1900\n', 'master');
    expect(plan.rows).toMatchObject([
      { state: 'doubtful', says: ['Made on: “1.5.1890” is more than a hundred years ago.'] },
      { state: 'new' },
    ]);
    expect(recordedAs('Master,Made\nLion,1.5.1890\n', 'master')).toMatchObject([{ made: '1890-05-01' }]);
  });
});

describe('a name without a letter or a digit', () => {
  const says = (name: string) => `“${name}” has neither a letter nor a digit. Choose it to bring it in all the same.`;
  test.each<[string, Target, string]>([
    ['Mould no\n%%%###@@@\n', 'mould', '%%%###@@@'],
    ['Design\n*** !!!\n', 'mould', '*** !!!'],
    ['Design,Size\n%%%,S\n', 'mould', '%%%'],
    ['Design\n%%%\n', 'design', '%%%'],
    ['Wax\n+++\n', 'wax', '+++'],
    ['Name,Stands in\n~~~,Cabinet A\n', 'place', '~~~'],
  ])('%j is not brought in unless it is chosen', (text, target, name) => {
    const plan = planOf(text, target);
    expect(plan.rows).toMatchObject([{ state: 'doubtful', take: false }]);
    expect(plan.rows[0]?.says).toContain(says(name));
    expect(entriesOfPlan(plan)).toEqual([]);
    expect(recordedAs(text, target, [2]).length).toBeGreaterThan(0);
  });
  test('letters of any script are letters, and a design or a label code is name enough', () => {
    expect(planOf('Mould no\nΓλαῦξ\n梟\n٣\n', 'mould').rows.map(({ state }) => state)).toEqual(['new', 'new', 'new']);
    expect(planOf('Mould,Design\n***,Hare\n', 'mould').rows).toMatchObject([{ state: 'new', take: true }]);
    expect(planOf(`Code,Name\n${codeOf('mould', 3)},★\n`, 'mould').rows).toMatchObject([{ state: 'new', take: true }]);
  });
});

describe('a pressure without a unit', () => {
  const says = (cell: string) =>
    `Pressure: “${cell}” has no unit and is too little for kPa: perhaps bar or psi. Write the unit in the heading; it is left out.`;
  test('too little for an injector is not taken for kPa, and its words are kept', () => {
    const text = 'Mould no;Design;Pressure\nK-1;Hare;0,6\nK-2;Hare;12\nK-3;Hare;19,9\nK-4;Hare;20\nK-5;Hare;0\n';
    expect(planOf(text, 'mould').rows.map(({ state, take, says: [first] }) => [state, take, first])).toEqual([
      ['doubtful', true, says('0,6')],
      ['doubtful', true, says('12')],
      ['doubtful', true, says('19,9')],
      ['new', true, undefined],
      ['new', true, undefined],
    ]);
    expect(recordedAs(text).map(({ injection, note }) => [injection, note])).toEqual([
      [undefined, 'Pressure: 0,6'],
      [undefined, 'Pressure: 12'],
      [undefined, 'Pressure: 19,9'],
      [{ pressureKpa: 20 }, undefined],
      [{ pressureKpa: 0 }, undefined],
    ]);
  });
  test('is in the unit that its heading or its cell names, however little it is', () => {
    const kpaOf = (heading: string, cell: string) =>
      recordedAs(`Mould no;Design;${heading}\nK-1;Hare;${cell}\n`).map(
        ({ injection }) => (injection as { pressureKpa: number }).pressureKpa,
      );
    expect(kpaOf('Pressure (bar)', '0,6')).toEqual([60]);
    expect(kpaOf('bar', '0,6')).toEqual([60]);
    expect(kpaOf('PSI', '10')).toEqual([68.9476]);
    expect(kpaOf('Pressure', '0,6 bar')).toEqual([60]);
    expect(kpaOf('Pressure (kPa)', '0,6')).toEqual([0.6]);
  });
  test('the least and the most that a wax needs are read in the same way', () => {
    const text = 'Wax,Pressure from,Pressure to\nAmber,0.5,1.2\n';
    expect(planOf(text, 'wax').rows[0]).toMatchObject({
      state: 'doubtful',
      says: [says('0.5').replace('Pressure', 'Pressure from'), says('1.2').replace('Pressure', 'Pressure to')],
    });
  });
});
