import { describe, expect, it } from 'vitest';
import { parsePastDay, UNFINISHED_DAY } from '../../src/domain/typed-day.ts';
import { day } from '../support/builders.ts';

const today = day('2024-03-05');

describe('the day something happened', () => {
  it('is today when nothing is typed, and may be today or before', () => {
    expect(parsePastDay('', today)).toBeUndefined();
    expect(parsePastDay('2024-03-05', today)).toBe('2024-03-05');
    expect(parsePastDay('2024-02-29', today)).toBe('2024-02-29');
  });

  it.each([
    ['2024-03-06', '6 March 2024 has not come yet.'],
    ['2023-02-29', '“2023-02-29” is not a day that exists (YYYY-MM-DD).'],
    ['2023-13-01', '“2023-13-01” is not a day that exists (YYYY-MM-DD).'],
    [UNFINISHED_DAY, 'That day is not complete, or does not exist.'],
  ])('is refused as %s', (typed, says) => {
    expect(parsePastDay(typed, today)).toMatchObject({ says });
  });
});
