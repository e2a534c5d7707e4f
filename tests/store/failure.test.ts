import { describe, expect, it, test } from 'vitest';
import { openingProblem, storageProblem } from '../../src/store/failure.ts';

const quota = { name: 'QuotaExceededError', message: 'full' };

describe('a failure of the storage', () => {
  it('advises nothing about a full device that cannot be done: no screen removes pictures', () => {
    expect(storageProblem(quota).kept).toMatch(/Free some room on the device .*, then try again\./);
  });

  it.each([
    ['no room, told by the write', quota, /no room left/],
    ['no room, told by the commit', { name: 'AbortError', message: 'aborted', inner: quota }, /no room left/],
    ['no room, told by one of many writes', { name: 'BulkError', message: '1 of 3 failed', failures: [quota] }, /no room left/],
    ['a newer database', { name: 'VersionError', message: '' }, /newer Mouldkeep/],
    ['a private window', { name: 'SecurityError', message: '' }, /does not let Mouldkeep keep/],
    [
      'a browser that opens nothing',
      { name: 'OpenFailedError', message: '', inner: { name: 'InvalidStateError' } },
      /does not let Mouldkeep keep/,
    ],
    ['an update in another tab', { name: 'DatabaseClosedError', message: '' }, /brought up to date/],
    ['a damaged page', new SyntaxError('Unexpected end of JSON input'), /damaged/],
    ['anything else', { name: 'UnknownError', message: 'disk on fire' }, /UnknownError: disk on fire/],
    ['nothing at all', undefined, /could not be saved/],
  ])('is told in words, with what was kept: %s', (_, error, says) => {
    const problem = storageProblem(error);
    expect(problem.says).toMatch(says);
    expect(problem.kept).not.toBe('');
  });
});

test('a database that cannot be opened is not told of as something typed that was not saved', () => {
  for (const error of [quota, { name: 'UnknownError', message: 'Internal error opening backing store' }, undefined]) {
    const { says, kept } = openingProblem(error);
    expect(says).toMatch(/could not (be )?open/);
    expect(kept).toMatch(/^Nothing was changed\./);
  }
});
