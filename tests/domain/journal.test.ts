import { describe, expect, it } from 'vitest';
import { makeJournal, mentions, parseJournal } from '../../src/domain/journal.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { aJournal, anInvested, aRecorded, SOME } from '../support/entry-builders.ts';

const entries = aJournal();
const whole = makeJournal('Tern Quay', entries);
const lines = whole.trimEnd().split('\n');

function refusal(text: string): string {
  const answer = parseJournal(text);
  if (!isProblem(answer)) return 'taken';
  expect(answer.kept).not.toBe('');
  return answer.says;
}

describe('a journal file', () => {
  it('is read back as it was written', () => {
    expect(parseJournal(whole)).toStrictEqual({
      header: { mouldkeep: 'journal', version: 1, name: 'Tern Quay', entries: entries.length },
      entries,
    });
    expect(lines).toHaveLength(entries.length + 1);
    expect(parseJournal(makeJournal('', []))).toMatchObject({ entries: [] });
  });

  it('is refused whole when its first line is not a journal’s', () => {
    for (const text of ['', 'hello', '[]', '7', 'null', '{"mouldkeep":"list"}', '<html>'])
      expect(refusal(text)).toMatch(/not a Mouldkeep journal/);
    expect(refusal('{"mouldkeep":"journal","version":2,"name":"x","entries":0}')).toMatch(/version “2”/);
    expect(refusal('{"mouldkeep":"journal","version":{"toString":1,"valueOf":1},"name":"x","entries":0}')).toMatch(/version/);
    expect(refusal('{"mouldkeep":"journal","version":1,"name":7,"entries":0}')).toMatch(/damaged/);
    expect(refusal('{"mouldkeep":"journal","version":1,"name":"x","entries":0.5}')).toMatch(/damaged/);
  });

  it('is refused with the number of the line that is damaged, unknown or there twice', () => {
    expect(refusal([...lines.slice(0, 4), lines[4]?.slice(0, 30), ...lines.slice(5)].join('\n'))).toMatch(/^Line 5 .* damaged/);
    expect(refusal([...lines.slice(0, 6), '{"kind":"conjured"}', ...lines.slice(7)].join('\n'))).toMatch(/^Line 7: .*conjured/);
    expect(refusal([...lines, lines[2]].join('\n'))).toMatch(new RegExp(`^Line ${lines.length + 1}: .*twice`));
    expect(refusal(lines.slice(0, -1).join('\n'))).toMatch(new RegExp(`hold ${entries.length} entries and holds ${entries.length - 1}`));
    expect(refusal(`${whole}\n`)).toMatch(/damaged/);
  });
});

describe('what an entry mentions', () => {
  it('is every id in it, however deep, but not the action it was made in', () => {
    const invested = anInvested();
    expect(mentions(invested, SOME.flask)).toBe(true);
    expect(mentions(invested, SOME.injectedWax)).toBe(true);
    expect(mentions(invested, invested.id)).toBe(true);
    expect(mentions(invested, SOME.mould)).toBe(false);
    expect(mentions(aRecorded('want', {}, { step: invested.id }), invested.id)).toBe(false);
  });
});
