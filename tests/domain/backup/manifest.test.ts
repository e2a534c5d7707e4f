import { readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Manifest, manifestFields, parseManifest, partsOf } from '../../../src/domain/backup/manifest.ts';
import { ENTRY_KINDS } from '../../../src/domain/entry.ts';
import { isProblem } from '../../../src/domain/problem.ts';
import { aPicture, backupOf, onPhone, readBackup, shaOf } from '../../support/backups.ts';
import { sha } from '../../support/builders.ts';
import { aJournal, aRecorded } from '../../support/entry-builders.ts';
import { aKeeper } from '../../support/keepers.ts';
import { unzipped } from '../../support/unzipped.ts';

vi.mock('../../../src/device/worker-client.ts', async () => (await import('../../support/worker-here.ts')).workerHere());

beforeEach(() => onPhone());
afterEach(() => vi.unstubAllGlobals());

const schema = JSON.parse(readFileSync(new URL('../../../src/domain/backup/backup.schema.json', import.meta.url), 'utf8'));
const ajv = new Ajv2020({ strict: false, validateFormats: false });
const fits = ajv.compile(schema);
const headerFits = ajv.compile({ $ref: '#/$defs/header', $defs: schema.$defs });
const entryFits = ajv.compile({ $ref: '#/$defs/entry', $defs: schema.$defs });

const picture = { of: sha(1), type: 'image/jpeg', bytes: 9, thumb: { type: 'image/png', bytes: 3, sha256: sha(2) } } as const;
const manifest: Manifest = {
  format: 'mouldkeep-backup',
  version: 1,
  madeOn: '2026-11-25' as never,
  device: 'ABC123',
  studio: 'Quay',
  counts: { entries: 7, pictures: 1 },
  journal: [
    { bytes: 900, sha256: sha(3), entries: 5 },
    { bytes: 400, sha256: sha(4), entries: 2 },
  ],
  pictures: [picture],
};

/** Every record and list of a value, each with a way to put something in the place of one of its parts. */
function* spots(value: unknown, put: (next: unknown) => unknown): Generator<(next: unknown) => unknown> {
  yield put;
  if (Array.isArray(value)) {
    for (const [i, each] of value.entries()) yield* spots(each, (next) => put(value.with(i, next)));
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, each] of Object.entries(value)) yield* spots(each, (next) => put({ ...value, [key]: next }));
    yield (next) => put({ ...value, unknown: next });
  }
}
const ODD = [
  undefined,
  null,
  0,
  -1,
  1,
  1.5,
  2,
  1e12,
  64_000_001,
  true,
  '',
  ' ',
  'x',
  'y'.repeat(121),
  'ABC12U',
  sha(5),
  sha(5).toUpperCase(),
  '2026-13-01',
  'image/gif',
  [],
  {},
  ['x'],
];

describe('the manifest of a backup', () => {
  it('is what the schema says, in a backup as it is really written; so are the header and the entries', async () => {
    const keeper = await aKeeper([...aJournal(), aRecorded('wax', {}, { pictures: [aPicture(1).sha] })]);
    await keeper.keepPictures([aPicture(1)]);
    const files = unzipped((await backupOf(keeper)).bytes);
    const real = JSON.parse(String(files.get('manifest.json')));
    expect([fits(real), fits.errors]).toEqual([true, null]);
    expect(real.pictures).toHaveLength(1);
    expect([...files.keys()]).toEqual([...partsOf(real).map(({ name }) => name), 'manifest.json']);
    const [header, ...entries] = String(files.get('journal/00001.jsonl'))
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect([headerFits(header), header.entries, entries.length]).toEqual([true, real.counts.entries, real.counts.entries]);
    for (const entry of entries) expect([entry, entryFits(entry)]).toEqual([entry, true]);
  });

  it('is read by the parser exactly when it fits the schema, whatever is wrong with it', () => {
    let refused = 0;
    for (const spot of spots(manifest, (next) => next)) {
      for (const odd of ODD) {
        const raw: unknown = JSON.parse(JSON.stringify(spot(odd) ?? null));
        const isRead = !isProblem(manifestFields(raw));
        expect([raw, isRead]).toEqual([raw, fits(raw)]);
        refused += isRead ? 0 : 1;
      }
    }
    expect(fits(manifest)).toBe(true);
    expect(refused).toBeGreaterThan(300);
  });

  it('knows the kinds of entries there are', () => {
    expect(schema.$defs.entry.properties.kind.enum).toEqual(ENTRY_KINDS);
  });

  it.each([
    [null, /not a Mouldkeep backup/],
    [{ ...manifest, format: 'other' }, /not a Mouldkeep backup/],
    [{ format: 'mouldkeep-backup', version: 2, whatever: true }, /of version 2; this Mouldkeep reads version 1. Update it first/],
    [{ ...manifest, version: 0 }, /damaged/],
    [{ ...manifest, counts: { entries: 6, pictures: 1 } }, /figures do not agree/],
    [{ ...manifest, counts: { entries: 7, pictures: 2 } }, /figures do not agree/],
    [{ ...manifest, counts: { entries: 0, pictures: 1 }, journal: [] }, /figures do not agree/],
    [{ ...manifest, counts: { entries: 7, pictures: 2 }, pictures: [picture, picture] }, /figures do not agree/],
  ])('is refused when it is not ours, newer, or at odds with itself: %#', (raw, says) => {
    expect(parseManifest(raw)).toMatchObject({ says: expect.stringMatching(says), kept: 'Nothing was changed.' });
  });

  it('lists every file with the name, size and hash it must have', () => {
    expect(partsOf(manifest)).toEqual([
      { name: 'journal/00001.jsonl', bytes: 900, sha256: sha(3), entries: 5 },
      { name: 'journal/00002.jsonl', bytes: 400, sha256: sha(4), entries: 2 },
      { name: `pictures/${sha(1)}.jpg`, bytes: 9, sha256: sha(1) },
      { name: `thumbs/${sha(1)}.png`, bytes: 3, sha256: sha(2) },
    ]);
  });

  it('is not all there is to it: the bytes are hashed too', async () => {
    expect(shaOf(new Uint8Array([97, 98, 99]))).toMatch(/^ba7816bf/);
    expect(await readBackup('{"mouldkeep":"journal"}')).toMatchObject({ problem: true });
  });
});
