import { describe, expect, it } from 'vitest';
import { backupReminder, type Census, censusOf, type LastBackup, REMINDER, sinceBackup } from '../../src/domain/backup-reminder.ts';
import { addDays } from '../../src/domain/day.ts';
import { aMould, aPlace, aShelf, START_DAY, sha } from '../support/builders.ts';

const today = START_DAY;
const backup: LastBackup = { on: today, last: 'a', entries: 100, things: 40, pictures: 9 };
const now = (more: Partial<Census>): Census => ({ last: 'b', entries: 100, things: 40, pictures: 9, since: today, ...more });
const { line, note } = REMINDER;

describe('what a backup is reckoned from', () => {
  it('counts things and their different pictures, of the thing and of what happened to it', () => {
    const shelf = aShelf([aPlace(), aMould({ pictures: [sha(1), sha(2)], looks: [sha(3)] }), aMould({ pictures: [sha(2)] })]);
    expect(censusOf(shelf)).toMatchObject({ things: 3, pictures: 3, since: START_DAY });
    expect(censusOf(shelf)).toBe(censusOf(shelf));
    expect(censusOf(aShelf([]))).not.toHaveProperty('since');
  });

  it('is what came in since; a taking-back alone is one entry, and never less than nothing', () => {
    expect(sinceBackup(now({ last: 'a' }), backup)).toBeUndefined();
    expect(sinceBackup(now({ entries: 134, things: 43, pictures: 14 }), backup)).toEqual({ entries: 34, things: 3, pictures: 5 });
    expect(sinceBackup(now({ entries: 97, things: 39, pictures: 2 }), backup)).toEqual({ entries: 1, things: 0, pictures: 0 });
  });

  it('is everything while there has been none, and nothing in an empty studio', () => {
    expect(sinceBackup(now({}), undefined)).toMatchObject({ entries: 100, things: 40, pictures: 9 });
    expect(sinceBackup(now({ entries: 0, things: 0, pictures: 0 }), undefined)).toBeUndefined();
  });
});

describe('the reminder', () => {
  const stake = (more: Partial<Census>, days = 0, aside?: number) =>
    backupReminder(now(more), backup, addDays(today, days), aside === undefined ? undefined : addDays(today, aside)).stake;

  it.each([
    ['a little', { entries: 100 + line.entries - 1 }, 0, 'quiet'],
    ['some working days', { entries: 100 + line.entries }, 0, 'line'],
    ['a few pictures', { pictures: 9 + line.pictures }, 0, 'line'],
    ['one entry, long ago', { entries: 101 }, line.days, 'line'],
    ['one entry, very long ago', { entries: 101 }, note.days * 5, 'line'],
    ['some working days, very long ago', { entries: 100 + line.entries }, note.days, 'note'],
    ['some weeks', { entries: 100 + note.entries }, 0, 'note'],
    ['many pictures', { pictures: 9 + note.pictures }, 0, 'note'],
    ['nothing, however long ago', { last: 'a' }, 9999, 'quiet'],
  ] as const)('grows with what is at stake: %s', (_, more, days, expected) => {
    expect(stake(more, days)).toBe(expected);
  });

  it('stays away until the day it was set aside to', () => {
    const much = { entries: 100 + note.entries };
    expect([stake(much, 13, 14), stake(much, 14, 14)]).toEqual(['quiet', 'note']);
  });

  it('counts days from the first thing while there has been no backup', () => {
    expect(backupReminder(now({ entries: 3 }), undefined, addDays(today, line.days))).toMatchObject({ stake: 'line', days: line.days });
    expect(backupReminder(now({ entries: 0, things: 0, pictures: 0 }), undefined, today)).toEqual({ stake: 'quiet', days: 0 });
  });
});
