import { afterEach, expect, test, vi } from 'vitest';
import { refusedShares, sharedPictures } from '../../src/device/shared-pictures.ts';
import { isProblem } from '../../src/domain/problem.ts';

afterEach(() => vi.unstubAllGlobals());

const told = (query: string) => {
  const problem = refusedShares(new URLSearchParams(query));
  return problem && `${problem.says} | ${problem.kept}`;
};
const LEFT = 'What was not taken is still where it was shared from.';

test.each([
  ['kind=1&kept=0', `1 file is no picture. | ${LEFT} Nothing was changed.`],
  ['kind=2&empty=1&kept=1', `2 files are no pictures. 1 file is empty. | ${LEFT} 1 picture was taken.`],
  [
    'large=1&many=3&kept=20',
    `1 picture is larger than 60 MB. 3 pictures are too many: 20 can be taken at once. | ${LEFT} 20 pictures were taken.`,
  ],
  ['room=2&kept=1', `There is no room on this device for 2 pictures. | ${LEFT} 1 picture was taken.`],
  ['unread=1&kept=0', `What was shared could not be read. | ${LEFT} Nothing was changed.`],
  ['none=1&kept=0', 'No picture came with what was shared. | Nothing was changed.'],
])('what was not taken is told with its reason, and what was kept: %s', (query, says) => {
  expect(told(query)).toBe(says);
});

test.each(['', 'kept=3', 'kind=x', 'kind=-1', 'kind=1e9', 'kind=Infinity', 'kind=0', '__proto__=1', 'refused=<b>'])(
  'nothing is told by an address that says nothing: %s',
  (query) => {
    expect(told(query)).toBeUndefined();
  },
);

test('a device that does not give out what waits says so; one that keeps none has none', async () => {
  const keys = () => Promise.reject(new DOMException('', 'UnknownError'));
  vi.stubGlobal('caches', { open: async () => ({ keys }) });
  expect(isProblem(await sharedPictures())).toBe(true);
  vi.stubGlobal('caches', undefined);
  expect(await sharedPictures()).toEqual([]);
});
