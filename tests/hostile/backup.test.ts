import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { parseManifest } from '../../src/domain/backup/manifest.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';
import { DRAWS, LONG_MS, SEED } from '../support/amount.ts';
import { aPicture, backupOf, onPhone, readBackup } from '../support/backups.ts';
import { forDraws } from '../support/draws.ts';
import { aJournal, aRecorded } from '../support/entry-builders.ts';
import { aKeeper } from '../support/keepers.ts';
import { Mutator } from '../support/mutate.ts';
import { unzipped } from '../support/unzipped.ts';

vi.mock('../../src/device/worker-client.ts', async () => (await import('../support/worker-here.ts')).workerHere());

let whole: Uint8Array<ArrayBuffer>;
let manifest: unknown;

beforeAll(async () => {
  onPhone();
  const pictures = [aPicture(1), aPicture(2)];
  const keeper = await aKeeper([...aJournal(), aRecorded('wax', {}, { pictures: pictures.map(({ sha }) => sha) })]);
  await keeper.keepPictures(pictures);
  whole = (await backupOf(keeper)).bytes;
  manifest = JSON.parse(new TextDecoder().decode(unzipped(whole).get('manifest.json')));
});
afterAll(() => vi.unstubAllGlobals());

/** A refusal somebody can read, which says that nothing was changed. */
function mustSay({ says, kept }: Problem): void {
  expect(says).toMatch(/\S.*[.…”]$/s);
  expect(kept).toContain('Nothing was changed');
}

test(
  'a list of contents from elsewhere is refused, or reads back the same',
  () => {
    expect(isProblem(parseManifest(manifest))).toBe(false);
    forDraws(
      (mutator) => mutator.value([manifest]),
      (raw) => {
        const read = parseManifest(raw);
        if (isProblem(read)) mustSay(read);
        else expect(parseManifest(JSON.parse(JSON.stringify(read)))).toStrictEqual(read);
      },
    );
  },
  LONG_MS,
);

const latin = (bytes: Uint8Array) => String.fromCharCode(...bytes);
const bytesOf = (text: string) => Uint8Array.from(text, (character) => character.charCodeAt(0) & 255);

test(
  'a backup whose bytes were changed is refused whole, or holds what it held',
  async () => {
    const sample = latin(whole);
    const before = await readBackup(whole);
    let refused = 0;
    for (let i = 0; i < DRAWS; i++) {
      const bytes = bytesOf(new Mutator(SEED + i).text([sample]));
      try {
        const read = await readBackup(bytes);
        if (isProblem(read)) {
          mustSay(read);
          refused += 1;
        } else expect(read.entries).toStrictEqual(isProblem(before) ? [] : before.entries);
      } catch (error) {
        throw new Error(`MOULDKEEP_SEED=${SEED + i}: ${bytes.length} bytes`, { cause: error });
      }
    }
    expect(refused).toBeGreaterThan(DRAWS / 2);
  },
  LONG_MS,
);
