import { expect, test } from 'vitest';
import { rootAddress } from '../../sw/address.ts';

const scope = 'https://host.example/studio/';

test.each([
  ['https://host.example/studio/', undefined],
  ['https://host.example/studio/?demo', undefined],
  ['https://host.example/studio/index.html', undefined],
  ['https://host.example/studio/some/where', scope],
  ['https://host.example/studio/some/where?demo', `${scope}?demo`],
])('a page at %s is sent to %s', (url, expected) => {
  expect(rootAddress(new URL(url), scope)).toBe(expected);
});
