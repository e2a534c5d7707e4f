import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTable } from '../../src/domain/csv/table.ts';
import { writeTable } from '../../src/domain/csv/write.ts';
import { tableOf } from '../support/import.ts';

const cellsOf = (text: string) => tableOf(text).rows.map((row) => row.cells);

// RFC 4180, Common Format and MIME Type for CSV Files, section 2 (rules 1 to 5 seen; 6 and 7 from memory).
describe('RFC 4180 section 2', () => {
  const rows = [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ];
  test('1: each record on a line of its own, ended by CRLF', () => expect(cellsOf('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual(rows));
  test('2: the last record may have no line break', () => expect(cellsOf('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toEqual(rows));
  test('3: a header line looks like any other', () =>
    expect(cellsOf('field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual([
      ['field_name', 'field_name', 'field_name'],
      ...rows,
    ]));
  test('4: spaces are part of a field', () => expect(cellsOf(' aaa , bbb,ccc \r\n')).toEqual([[' aaa ', ' bbb', 'ccc ']]));
  test('5: fields may be enclosed in quotes', () => expect(cellsOf('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual(rows));
  test('6: quoted fields may hold line breaks, quotes and commas', () =>
    expect(cellsOf('"aaa","b\r\nbb","c,cc"\r\nzzz,yyy,xxx')).toEqual([['aaa', 'b\r\nbb', 'c,cc'], rows[1]]));
  test('7: a quote inside a quoted field is doubled', () => expect(cellsOf('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]));
});

// The corpus of the npm package csv-spectrum 2.0.0, "a variety of CSV files to serve as an acid test for CSV parsing libraries".
describe('csv-spectrum', () => {
  const folder = dirname(createRequire(import.meta.url).resolve('csv-spectrum'));
  const names = [
    'comma_in_quotes',
    'empty',
    'empty_crlf',
    'escaped_quotes',
    'json',
    'newlines',
    'newlines_crlf',
    'quotes_and_newlines',
    'simple',
    'simple_crlf',
    'utf8',
  ];
  test.each(names)('%s', (name) => {
    const [head = [], ...rows] = cellsOf(readFileSync(join(folder, 'csvs', `${name}.csv`), 'utf8'));
    const objects = rows.map((row) => Object.fromEntries(head.map((key, i) => [key, row[i]])));
    expect(objects).toEqual(JSON.parse(readFileSync(join(folder, 'json', `${name}.json`), 'utf8')));
  });
  test('location_coordinates: inch marks in cells without quotes (its JSON gives another telephone number than its CSV)', () => {
    const [, row = []] = cellsOf(readFileSync(join(folder, 'csvs', 'location_coordinates.csv'), 'utf8'));
    const expected = JSON.parse(readFileSync(join(folder, 'json', 'location_coordinates.json'), 'utf8')) as Record<string, string>;
    expect(row).toHaveLength(4);
    expect(row[1]?.replace(/[^\d.'"NW]/g, '')).toBe(expected['Location Coordinates']?.replace(/[^\d.'"NW]/g, ''));
    expect(row.slice(2)).toEqual([expected['Cities'], expected['Counties']]);
  });
});

describe('laws', () => {
  const cell = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\t', ' ') }),
    fc.constantFrom('a\nb', 'a\r\nb', '""', '"', ',,'),
  );
  const table = fc
    .integer({ min: 1, max: 6 })
    .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 12 }))
    .filter((rows) => rows.every((row) => row.some((each) => each.trim() !== '')) && !/\r(?!\n)/.test(rows.flat().join('|')));
  test('what is written is read back, with its lines', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const text = writeTable(rows);
        const read = readTable(text, ',');
        if (!('rows' in read)) throw new Error(read.says);
        const hasMixedEnds = /(?<!\r)\n/.test(text);
        const even = (each: string) => (hasMixedEnds ? each.replace(/\r\n/g, '\n') : each);
        expect(read.rows.map((row) => row.cells)).toEqual(rows.map((row) => row.map(even)));
        let line = 1;
        for (const [i, row] of rows.entries()) {
          expect(read.rows[i]?.line).toBe(line);
          line += row.join('').split('\n').length;
        }
      }),
      { numRuns: 300 },
    );
  });
  test('no text makes it throw, and no line with anything on it is lost', () => {
    const piece = fc.constantFrom('"', '""', ',', ';', '\t', '\n', '\r\n', '\r', 'a', 'b c', '0,5', '\ufeff', 'sep=;\n', '\u0000', ' ');
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
        const table = readTable(pieces.join(''));
        if (!('rows' in table)) return;
        for (const letter of ['a', 'b c']) {
          const count = (text: string) => text.split(letter).length - 1;
          expect(count(table.rows.flatMap((row) => row.cells).join('|'))).toBeGreaterThanOrEqual(count(pieces.join('')));
        }
      }),
      { numRuns: 1500 },
    );
  });
});
