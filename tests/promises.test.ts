import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const page = readFileSync(new URL('../DEVELOPERS.md', import.meta.url), 'utf8');
const section = page.split('## Each promise and its test')[1]?.split('\n## ')[0] ?? '';
const promises = section
  .split('\n')
  .filter((line) => line.startsWith('| ') && !line.startsWith('| ---') && line !== '| promise | test |')
  .map((line) => line.split('|').map((cell) => cell.trim()));

test('each promise of the developers’ page names its tests, and all of them are there', () => {
  expect(promises.length).toBeGreaterThan(10);
  for (const [, promise = '', named = ''] of promises) {
    const files = [...named.matchAll(/`([^`]+)`/g)].map(([, file = '']) => file);
    expect(files, promise).not.toEqual([]);
    expect(
      files.filter((file) => !/^tests\/.+\.test\.tsx?$/.test(file) || !existsSync(new URL(`../${file}`, import.meta.url))),
      promise,
    ).toEqual([]);
  }
});
