import fc from 'fast-check';
import { zipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Manifest } from '../../src/domain/backup/manifest.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { OpenedStudio } from '../../src/worker/protocol.ts';
import { aPicture, backupOf, onPhone, readBackup, shaOf } from '../support/backups.ts';
import { aJournal, aRecorded } from '../support/entry-builders.ts';
import { aKeeper } from '../support/keepers.ts';
import { unzipped } from '../support/unzipped.ts';

vi.mock('../../src/device/worker-client.ts', async () => (await import('../support/worker-here.ts')).workerHere());

beforeEach(() => onPhone());
afterEach(() => vi.unstubAllGlobals());

type Files = Record<string, Uint8Array<ArrayBuffer>>;
type Bytes = Uint8Array<ArrayBuffer>;

let cached: Promise<{ bytes: Bytes; opened: OpenedStudio }> | undefined;
/** A backup of a small studio with two pictures, and what it says when it is whole. */
function whole(): Promise<{ bytes: Bytes; opened: OpenedStudio }> {
  cached ??= (async () => {
    const pictures = [aPicture(1), aPicture(2)];
    const keeper = await aKeeper([...aJournal(), aRecorded('wax', {}, { pictures: pictures.map(({ sha }) => sha) })]);
    await keeper.keepPictures(pictures);
    const { bytes } = await backupOf(keeper);
    const opened = await readBackup(bytes);
    if (isProblem(opened)) throw new Error(opened.says);
    return { bytes, opened };
  })();
  return cached;
}

/** The backup made anew by another zip writer, with its files or its manifest changed; pictures stored as they must be. */
async function remade(change: (files: Files, manifest: Manifest) => void, level: 0 | 6 = 0): Promise<Bytes> {
  const files: Files = {};
  for (const [name, data] of unzipped((await whole()).bytes)) files[name] = Uint8Array.from(data);
  const manifest = JSON.parse(new TextDecoder().decode(files['manifest.json'])) as Manifest;
  change(files, manifest);
  if (files['manifest.json']) files['manifest.json'] = Uint8Array.from(new TextEncoder().encode(JSON.stringify(manifest)));
  return Uint8Array.from(zipSync(files, { level }));
}

async function refused(bytes: Bytes | string): Promise<string> {
  const outcome = await readBackup(bytes);
  if (!isProblem(outcome)) throw new Error('it was taken');
  expect(outcome.kept).toMatch(/^Nothing was changed\./);
  return outcome.says;
}

const JOURNAL = 'journal/00001.jsonl';

describe('a backup from elsewhere', () => {
  it('is taken when another program packed the same files again', async () => {
    const again = await readBackup(await remade(() => undefined));
    expect(isProblem(again) ? again : again.entries).toEqual((await whole()).opened.entries);
  });

  it('is refused when it is cut short, wherever', async () => {
    const { bytes } = await whole();
    const cuts = [
      1,
      2,
      3,
      4,
      30,
      100,
      ...Array.from({ length: 60 }, (_, i) => Math.floor((bytes.length * (i + 1)) / 61)),
      bytes.length - 1,
    ];
    for (const cut of cuts) expect([cut, await refused(bytes.slice(0, cut))]).toEqual([cut, expect.stringMatching(/./)]);
    expect(await refused(bytes.slice(0, bytes.length / 2))).toBe('This backup is cut short: its end is missing.');
    expect(await refused(Uint8Array.from([...bytes, 0]))).toMatch(/cut short|damaged/);
    expect(await refused(Uint8Array.from(bytes.subarray(500)))).toMatch(/neither|not a Mouldkeep journal/);
  });

  it('is refused, or means the very same, with any bits of it flipped', async () => {
    const { bytes, opened } = await whole();
    const same = JSON.stringify(opened.entries);
    let refusals = 0;
    await fc.assert(
      fc.asyncProperty(fc.nat({ max: bytes.length - 1 }), fc.integer({ min: 1, max: 255 }), async (at, bits) => {
        const outcome = await readBackup(bytes.with(at, (bytes[at] as number) ^ bits));
        if (isProblem(outcome)) refusals += 1;
        else expect([JSON.stringify(outcome.entries), outcome.pictures]).toEqual([same, opened.pictures]);
      }),
      { numRuns: 250 },
    );
    // Only what no reader of a zip looks at, such as the hour it was packed, may change unseen.
    expect(refusals).toBeGreaterThan(180);
  });

  it.each<[string, (files: Files, manifest: Manifest) => void, RegExp]>([
    [
      'of a newer version',
      (_, manifest) => Object.assign(manifest, { version: 7, more: 1 }),
      /of version 7; this Mouldkeep reads version 1/,
    ],
    ['another program’s', (_, manifest) => Object.assign(manifest, { format: 'other' }), /not a Mouldkeep backup/],
    ['with no manifest', (files) => Reflect.deleteProperty(files, 'manifest.json'), /a zip file, but not a Mouldkeep backup/],
    ['with a file too many', (files) => Object.assign(files, { 'extra.txt': new Uint8Array(3) }), /a file is in it that its list/],
    [
      'with a way out of its folder',
      (files) => Object.assign(files, { '../../evil.txt': new Uint8Array(3) }),
      /a file is in it that its list/,
    ],
    ['with a file too few', (files) => Reflect.deleteProperty(files, JOURNAL), /journal\/00001\.jsonl is missing/],
    ['with a lie about sizes', (_, { journal }) => Object.assign(journal[0] as object, { bytes: 7 }), /has another size than it should/],
    [
      'with a lie about hashes',
      (_, { journal }) => Object.assign(journal[0] as object, { sha256: 'a'.repeat(64) }),
      /is not as it was written/,
    ],
    [
      'with a lie about entries',
      (_, manifest) => {
        Object.assign(manifest.journal[0] as object, { entries: 3 });
        Object.assign(manifest.counts, { entries: 3 });
      },
      /has other entries than it should/,
    ],
    [
      'with a picture under another’s name',
      (files, { pictures }) => {
        const [a, b] = pictures.map(({ of }) => `pictures/${of}.jpg`) as [string, string];
        [files[a], files[b]] = [files[b] as Bytes, files[a] as Bytes];
      },
      /is not as it was written/,
    ],
    [
      'with an entry that is none, under a true hash',
      (files, { journal }) => {
        const lines = new TextDecoder().decode(files[JOURNAL]).split('\n');
        const text = new TextEncoder().encode(lines.with(2, lines[2]?.replace('recorded', 'exploded') ?? '').join('\n'));
        files[JOURNAL] = Uint8Array.from(text);
        Object.assign(journal[0] as object, { bytes: text.length, sha256: shaOf(text) });
      },
      /Line 3: There is no entry of the kind “exploded”/,
    ],
    [
      'with text that is no text',
      (files, { journal }) => {
        const data = (files[JOURNAL] as Bytes).with(90, 0xff);
        files[JOURNAL] = data;
        Object.assign(journal[0] as object, { sha256: shaOf(data) });
      },
      /is not text/,
    ],
  ])('is refused %s', async (_, change, says) => {
    expect(await refused(await remade(change))).toMatch(says);
  });

  it('is refused with its pictures packed, which would be read as they lie', async () => {
    expect(await refused(await remade(() => undefined, 6))).toMatch(/packed in a way not known here/);
  });

  it('is refused with a file in it twice, or two over each other', async () => {
    const { bytes } = await whole();
    const view = Buffer.from(bytes);
    const [one, two] = (await whole()).opened.pictures.map(({ sha }) => Buffer.from(sha)) as [Buffer, Buffer];
    const directory = view.readUInt32LE(view.length - 6);
    const named = Buffer.from(view);
    for (let at = 0; ; ) {
      at = named.indexOf(two, at);
      if (at < 0) break;
      one.copy(named, at);
    }
    expect(await refused(Uint8Array.from(named))).toMatch(/twice/);
    // The second file of the directory is said to begin where the first does.
    const over = Buffer.from(view);
    const second = directory + 46 + over.readUInt16LE(directory + 28);
    over.writeUInt32LE(over.readUInt32LE(directory + 42), second + 42);
    expect(await refused(Uint8Array.from(over))).toMatch(/over each other/);
  });

  it('is not blown up: what unpacks to more than it says is stopped at what it says', async () => {
    const bomb = new Uint8Array(4_000_000);
    const packed = await remade((files, { journal }) => {
      files[JOURNAL] = bomb;
      Object.assign(journal[0] as object, { bytes: 1000, sha256: 'b'.repeat(64) });
    }, 6);
    expect(await refused(packed)).toMatch(/another size/);
    // And when the directory lies with it.
    const view = Buffer.from(packed);
    for (let at = view.readUInt32LE(view.length - 6); at < view.length - 46; at += 46 + view.readUInt16LE(at + 28)) {
      if (view.toString('utf8', at + 46, at + 46 + JOURNAL.length) === JOURNAL) view.writeUInt32LE(1000, at + 24);
    }
    expect(await refused(Uint8Array.from(view))).toMatch(/is not as it was written/);
  });

  it.each([
    ['nothing', new Uint8Array(0), /is empty/],
    ['a picture', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 1, 2, 3, 0xc0), /neither a Mouldkeep backup nor a saved journal/],
    ['text', 'Bull seal; 2 pieces', /not a Mouldkeep journal/],
    ['two letters', 'PK', /cut short/],
    ['an empty zip', Uint8Array.from(zipSync({})), /not a Mouldkeep backup/],
    ['another zip', Uint8Array.from(zipSync({ 'a.txt': new Uint8Array(40) })), /not a Mouldkeep backup/],
    [
      'a zip with a manifest of something else',
      Uint8Array.from(zipSync({ 'manifest.json': new TextEncoder().encode('{"name":"x"}') })),
      /not a Mouldkeep backup/,
    ],
    ['a zip with a broken manifest', Uint8Array.from(zipSync({ 'manifest.json': new TextEncoder().encode('{"for') })), /cannot be read/],
  ])('is refused when it is %s', async (_, bytes, says) => {
    expect(await refused(bytes)).toMatch(says);
  });
});
