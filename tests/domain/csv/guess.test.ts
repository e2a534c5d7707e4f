import { describe, expect, test } from 'vitest';
import { guessColumns, guessTarget } from '../../../src/domain/csv/guess.ts';
import { COLUMNS, TARGETS, type Target } from '../../../src/domain/csv/targets.ts';

const guessed = (target: Target, ...headings: string[]) => guessColumns(headings, target);

describe('columns guessed from headings', () => {
  test('a list of moulds as studios head them', () => {
    expect(guessed('mould', 'Mould no', 'Form', 'Size', 'Drawer', 'Qty shots', 'Rubber', 'Period', 'Cond.', 'Remarks', 'Price')).toEqual([
      'number',
      'design',
      'size',
      'place',
      'shots',
      'rubber',
      'period',
      'grade',
      'note',
      null,
    ]);
  });
  test('case, accents, spacing, the other spelling and slips of the finger', () => {
    expect(guessed('mould', 'MOLD NO.', 'désign', 'Cavitys', 'Location ', 'rubber type', 'Wax weight (g)', '# shots')).toEqual([
      'number',
      'design',
      'cavities',
      'place',
      'rubber',
      'shotGrams',
      'shots',
    ]);
    expect(guessed('wax', 'Color', 'Name', 'Stock g', 'Room temp.')).toEqual(['colour', 'name', 'grams', 'room']);
  });
  test('cabinet and drawer together', () => expect(guessed('mould', 'Cabinet', 'Drawer')).toEqual(['cabinet', 'place']));
  test('places, masters, designs', () => {
    expect(guessed('place', 'Drawer', 'Cabinet', 'Topic', 'Capacity', 'Width mm')).toEqual(['name', 'in', 'period', 'capacity', 'widthMm']);
    expect(guessed('master', 'Master no', 'Design', 'Type', 'Made of', 'Length (mm)', 'Where')).toEqual([
      'number',
      'design',
      'kind',
      'material',
      'lengthMm',
      'place',
    ]);
    expect(guessed('design', 'Piece', 'Era', 'Sizes', 'Alloys', 'Min stock')).toEqual(['name', 'period', 'sizes', 'metals', 'keep']);
  });
  test('no field twice, nothing for an empty heading, and each label leads to its own field', () => {
    expect(guessed('mould', 'Drawer', 'Drawer', '')).toEqual(['place', null, null]);
    for (const target of TARGETS) {
      const columns = Object.entries(COLUMNS[target]);
      expect(
        guessColumns(
          columns.map(([, column]) => column.label),
          target,
        ),
      ).toEqual(columns.map(([name]) => name));
    }
  });
  test('what the list is of', () => {
    expect(guessTarget(['Design', 'Size', 'Period', 'Place'], TARGETS)).toBe('mould');
    expect(guessTarget(['Design', 'Size', 'Period'], TARGETS)).toBe('design');
    expect(guessTarget(['Mould no', 'Design', 'Rubber', 'Shots'], TARGETS)).toBe('mould');
    expect(guessTarget(['Wax', 'Colour', 'Stock kg', 'Room range'], TARGETS)).toBe('wax');
    expect(guessTarget(['Drawer', 'Cabinet', 'Capacity', 'Width mm'], TARGETS)).toBe('place');
    expect(guessTarget(['Drawer', 'Cabinet', 'Topic'], TARGETS)).toBe('place');
    expect(guessTarget(['Master', 'Design', 'Kind', 'Material', 'Length'], TARGETS)).toBe('master');
    expect(guessTarget(['Design', 'Period', 'Sizes', 'Metals', 'Route'], TARGETS)).toBe('design');
  });
});
