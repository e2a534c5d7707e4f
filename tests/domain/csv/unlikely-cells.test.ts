import { describe, expect, test } from 'vitest';
import type { Target } from '../../../src/domain/csv/targets.ts';
import { parseEntry } from '../../../src/domain/parse-entry.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { entriesOfPlan, planOf } from '../../support/import.ts';

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
