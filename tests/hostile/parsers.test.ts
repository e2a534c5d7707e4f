import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Year } from '../../src/domain/brand.ts';
import { clockOf, makeEntryId, parseEntryId } from '../../src/domain/clock.ts';
import { parseDay } from '../../src/domain/day.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { makeJournal, parseJournal } from '../../src/domain/journal.ts';
import { labelCode, nounOfCode, parseCode } from '../../src/domain/label.ts';
import { parseEntry } from '../../src/domain/parse-entry.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';
import { parsePastDay } from '../../src/domain/typed-day.ts';
import { parseTypedNumber } from '../../src/domain/typed-number.ts';
import { SI_UNITS, type Units } from '../../src/domain/units.ts';
import { parseYear, yearInWords } from '../../src/domain/year.ts';
import { parseYears, yearsInWords } from '../../src/domain/years.ts';
import { changedFields, typedFields } from '../../src/ui/form-values.ts';
import { FORMS } from '../../src/ui/forms.ts';
import { DRAWS, LONG_MS } from '../support/amount.ts';
import { codeOf, START_DAY } from '../support/builders.ts';
import { forDraws } from '../support/draws.ts';
import { aJournal } from '../support/entry-builders.ts';
import { histories } from '../support/histories.ts';

const entries = [...aJournal(), ...fc.sample(histories(), { seed: 5, numRuns: 12 }).flat()];

/** A refusal somebody can read. */
function mustSay({ says, kept }: Problem): void {
  expect(says).toMatch(/\S.*[.…”]$/s);
  expect(typeof kept).toBe('string');
}

/** Either a refusal, or a value that means the same when it is written down and read again. */
function holds<T>(read: T | Problem, again: (value: T) => unknown): void {
  if (isProblem(read)) mustSay(read);
  else expect(again(read)).toStrictEqual(read);
}

/** One text typed, pasted, scanned or read from a file. */
const READERS: Readonly<Record<string, { samples: readonly string[]; look: (raw: string) => void }>> = {
  'a label': {
    samples: [
      codeOf('mould', 17),
      codeOf('place', 3),
      `https://example.org/keep/#/c/${codeOf('wax', 5)}`,
      codeOf('design', 9).toLowerCase(),
    ],
    look: (raw) =>
      holds(parseCode(raw), (code) => {
        nounOfCode(code);
        return labelCode(parseCode(code.toLowerCase()));
      }),
  },
  'an entry’s id': {
    samples: entries.slice(0, 9).map((entry) => entry.id),
    look: (raw) => holds(parseEntryId(raw), (id) => makeEntryId(clockOf(id), id.slice(12))),
  },
  'a day': { samples: ['2024-02-29', '1999-12-31', '2023-04-30'], look: (raw) => holds(parseDay(raw), (day) => parseDay(`${day}`)) },
  'a day gone by': {
    samples: ['2024-02-29', '', '?', '2031-01-01'],
    look: (raw) => holds(parsePastDay(raw, START_DAY), (day) => (day === undefined ? day : parseDay(day))),
  },
  'a figure': {
    samples: ['1,5', '0.25', '−3', '12 000', '.5', '7.'],
    look: (raw) =>
      holds(parseTypedNumber(raw), (figure) => {
        if (figure === undefined) return undefined;
        expect(figure).toBeTypeOf('number');
        expect(Number.isFinite(figure)).toBe(true);
        return figure;
      }),
  },
  'a year': {
    samples: ['1250', 'AD 42', '150 BC', 'c. 200 BCE', '−0599', '6 b.c.e.'],
    look: (raw) => holds(parseYear(raw), (year) => parseYear(yearInWords(year))),
  },
  'a span of years': {
    samples: ['480–50 BC', 'the 8th century BC', '1250s', '150 BC to AD 42', 'third century', '1100-1250', 'twenty-first c. ad'],
    look: (raw) =>
      holds(parseYears(raw), (years) => {
        expect(years.from).toBeLessThanOrEqual(years.to);
        return parseYears(yearsInWords(years));
      }),
  },
  'a saved journal': {
    samples: [makeJournal('Quay', aJournal()), makeJournal('', []), makeJournal('“x”', entries.slice(40, 44))],
    look: (raw) => holds(parseJournal(raw), (journal) => parseJournal(makeJournal(journal.header.name, journal.entries))),
  },
};

describe.each(Object.entries(READERS))('reading %s', (_, { samples, look }) => {
  test(
    'gives a value that reads back the same, or says what is wrong',
    () => {
      samples.forEach(look);
      forDraws((mutator) => mutator.text(samples), look);
    },
    LONG_MS,
  );
});

test(
  'an entry from elsewhere is refused, or means the same when read back, and can be summed',
  () => {
    let taken = 0;
    forDraws(
      (mutator) => mutator.value(entries),
      (raw) => {
        const entry = parseEntry(raw);
        holds(entry, (value) => parseEntry(JSON.parse(JSON.stringify(value))));
        if (isProblem(entry)) return;
        taken += 1;
        foldAll([entry]);
      },
    );
    expect(taken).toBeGreaterThan(100);
  },
  LONG_MS,
);

test(
  'entries from elsewhere that are taken sum to a shelf, whatever they say of one another',
  () => {
    forDraws(
      (mutator) => Array.from({ length: 12 }, () => mutator.value(entries)),
      (raws) => {
        const taken = raws.map(parseEntry).flatMap((entry) => (isProblem(entry) ? [] : [entry]));
        const ids = new Map(taken.map((entry) => [entry.id, entry]));
        expect(foldAll([...ids.values()]).entries).toBeLessThanOrEqual(ids.size);
      },
      DRAWS / 5,
    );
  },
  LONG_MS,
);

const UNITS: readonly Units[] = [SI_UNITS, { mass: 'oz t', length: 'in', temperature: '°F', pressure: 'psi' }];
const TYPED = ['12,5', 'Dolphin', 'small; 14', '150 BC', '2024-02-29', 'yes', 'pewter\nbronze', codeOf('mould', 4), entries[0]?.id ?? ''];

test(
  'a form filled with anything gives fields, or says beside each field what is wrong',
  () => {
    forDraws(
      (mutator) => {
        const form = mutator.one(Object.values(FORMS));
        const editors = [...form.main, ...form.more];
        const typed = Object.fromEntries(editors.map(({ field }) => [field, mutator.text(TYPED)]));
        return { editors, typed, units: mutator.one(UNITS) };
      },
      ({ editors, typed, units }) => {
        const fields = changedFields(editors, typed, {}, units);
        if (isProblem(fields)) mustSay(fields);
        else expect(Object.keys(typedFields(editors, fields, units)).length).toBe(editors.length);
      },
    );
  },
  LONG_MS,
);

test('years on either side of the era read back as written, all of them', () => {
  for (let year = -3000; year <= 2100; year++) expect(parseYear(yearInWords(year as Year))).toBe(year);
});

test('short spans on either side of the era read back as written, all of them', () => {
  for (let from = -130; from <= 130; from++) {
    for (let to = from; to <= from + 100; to++) {
      const years = { from: from as Year, to: to as Year };
      expect(parseYears(yearsInWords(years))).toStrictEqual(years);
    }
  }
});

test.each(['50–59 AD', 'AD 50–59', 'AD 50 to 59', 'CE 50 – 59', '0050s'])('an era named once holds for both years: %s', (text) => {
  expect(parseYears(text)).toStrictEqual({ from: 50, to: 59 });
});

test.each(['480 BC – 50', '5–9', '59–50 AD'])('%s is no span', (text) => {
  expect(isProblem(parseYears(text))).toBe(true);
});
