import { describe, expect, test } from 'vitest';
import type { Code, MouldId } from '../../src/domain/brand.ts';
import { TARGETS } from '../../src/domain/csv/targets.ts';
import { guardedWhole, writeSheet, writeTable } from '../../src/domain/csv/write.ts';
import type { Check } from '../../src/domain/field.ts';
import { FIELDS } from '../../src/domain/fields.ts';
import { foldAll } from '../../src/domain/fold.ts';
import { makeJournal, parseJournal } from '../../src/domain/journal.ts';
import { parseCode } from '../../src/domain/label.ts';
import { NOUNS } from '../../src/domain/noun.ts';
import { parseEntry } from '../../src/domain/parse-entry.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { STUDIO_FIELDS } from '../../src/domain/studio.ts';
import { whereIs } from '../../src/views/where-is.ts';
import { aJournal, aRecorded, aStudioCorrected } from '../support/entry-builders.ts';
import { entriesOfPlan, planOf, tableOf } from '../support/import.ts';
import { keptAs, NASTIEST, NAUGHTY } from '../support/naughty.ts';

test('the list is whole, and the nastiest of it are some dozens', () => {
  expect(NAUGHTY.length).toBe(461);
  expect(NASTIEST.length).toBeGreaterThan(30);
});

/** Text is trimmed, and loses control characters that nobody can see; nothing else may change. */
function isKept(raw: unknown, value: unknown): boolean {
  return isProblem(value) ? /\S/.test(value.says) : JSON.stringify(value) === keptAll(raw);
}

test.each([...NOUNS.map((noun) => [noun, FIELDS[noun]] as const), ['studio', STUDIO_FIELDS] as const])(
  'every field of a %s refuses each, or keeps it as it is',
  (_, checks) => {
    const wrong: string[] = [];
    for (const [field, check] of Object.entries(checks as Readonly<Record<string, Check<unknown>>>)) {
      for (const text of NAUGHTY) {
        for (const raw of [text, [text], { [text]: text }, { label: text }, [{ label: text }]]) {
          const value = check(raw);
          if (!isKept(raw, value)) wrong.push(`${field}: ${JSON.stringify(raw)} became ${JSON.stringify(value)}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  },
);

function keptAll(raw: unknown): string {
  return JSON.stringify(raw, (_, value: unknown) => (typeof value === 'string' ? (keptAs(value, 4000) ?? value) : value));
}

/** Blanks in lists are as spreadsheets left them. */
const squeezed = (text: string | undefined) => text?.replace(/\s+/g, ' ');

const named = NAUGHTY.flatMap((text) => {
  const name = keptAs(text);
  return name === undefined ? [] : [{ text, name }];
});

test('names and notes come through entries, the shelf and a saved journal as they were typed', () => {
  const entries = named.map(({ text }) =>
    aRecorded('mould', { name: text, size: text.slice(0, 40), note: text } as object, { note: text, by: text }),
  );
  const checked = entries.map((entry) => {
    const read = parseEntry(JSON.parse(JSON.stringify(entry)));
    if (!isProblem(read)) return read;
    // A size cut off in the middle may have nothing left to show.
    expect(read.says).toContain('size');
    return parseEntry(aRecorded('mould', { name: entry.fields.name as string, note: entry.fields.note as string }));
  });
  const journal = parseJournal(
    makeJournal(
      '<img src=x>',
      checked.flatMap((entry) => (isProblem(entry) ? [] : [entry])),
    ),
  );
  if (isProblem(journal)) throw new Error(journal.says);
  const shelf = foldAll(journal.entries);
  const moulds = journal.entries.map((entry) => shelf.things.mould.get(entry.id as string as MouldId));
  expect(moulds.map((mould) => [mould?.name, mould?.note])).toEqual(named.map(({ name }) => [name, name]));
});

test('the studio may be called anything', () => {
  for (const { text, name } of named) {
    const entry = parseEntry(aStudioCorrected({ name: text }));
    if (isProblem(entry)) throw new Error(entry.says);
    expect(foldAll([entry]).studio.name).toBe(name);
  }
});

test('a list of them is read cell by cell as it was written, also by way of a spreadsheet', () => {
  // Line ends other than the rows' own are the one thing that a list cannot tell apart.
  const rows = NAUGHTY.filter((text) => text.trim() !== '' && !text.includes('\r')).map((text) => [text, 'x']);
  expect(tableOf(writeTable(rows)).rows.map((row) => row.cells)).toEqual(rows);
  const sheet = tableOf(writeSheet(rows)).rows.map((row) => row.cells[0] ?? '');
  for (const [at, cell] of sheet.entries()) {
    expect(cell.endsWith(rows[at]?.[0] ?? '?')).toBe(true);
    expect(cell).not.toMatch(/^[=+\-@\t]/);
  }
});

describe.each(TARGETS)('a list of %ss brought in', (target) => {
  const heading = target === 'place' ? ['Name', 'Label'] : ['Name', 'Note'];
  test('has each name as it was written, blanks aside, or says of the row why not', () => {
    for (const { text, name } of named) {
      const plan = planOf(writeTable([heading, [guardedWhole(text), '1']]), target);
      const [row] = plan.rows;
      const entries = row?.state === 'unreadable' ? [] : entriesOfPlan(plan, undefined, row && !row.take ? [row.line] : []);
      const names = entries.map(parseEntry).flatMap((entry) => {
        if (isProblem(entry)) throw new Error(entry.says);
        return entry.kind === 'recorded' ? [entry.fields.name] : [];
      });
      if (!names.map(squeezed).includes(squeezed(name)))
        expect(row?.says.join(' ') || `${name} went missing`).toMatch(/unreadable|cell|code|name|characters/i);
    }
  });

  test('has every column made of them, and only entries that would be taken anywhere', () => {
    const wide = NAUGHTY.slice(0, 60).map((text) => text || 'x');
    for (let i = 0; i < NAUGHTY.length; i += 20) {
      const rows = NAUGHTY.slice(i, i + 20).map((text) =>
        wide.map((_, column) => (column % 3 === 0 ? text : (NAUGHTY[(i * column) % 461] ?? ''))),
      );
      const plan = planOf(
        writeTable([['Name', 'Place', 'Cabinet', 'Period', 'Kind', 'Made on', 'Size', 'Shots', 'Grams', ...wide], ...rows]),
        target,
      );
      for (const entry of entriesOfPlan(plan)) expect(isProblem(parseEntry(JSON.parse(JSON.stringify(entry))))).toBe(false);
    }
  });
});

test('none of them is taken for a label, and each is told so', () => {
  for (const text of NAUGHTY) {
    const code = parseCode(text);
    expect(isProblem(code) && code.says).toMatch(/\.$/);
    expect(isProblem(parseCode(`https://example.org/#/c/${text}` as Code))).toBe(true);
  }
});

test('looking for them finds things or nothing, and never goes wrong', () => {
  const shelf = foldAll([...aJournal(), ...named.slice(0, 200).map(({ name }) => aRecorded('design', { name }))]);
  for (const { name } of named.slice(0, 200)) {
    const { things, more } = whereIs(shelf, name);
    const isFound = more > 0 || things.some(({ title }) => title === name);
    // A text without letters or figures has no words to look for.
    if (/[\p{L}\p{N}]{2}/u.test(name)) expect(isFound, name).toBe(true);
  }
  for (const text of NAUGHTY) expect(whereIs(shelf, text).things.length).toBeLessThanOrEqual(60);
});
