import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { sha256Of } from '../../src/device/backup-zip.ts';
import { crc32 } from '../../src/domain/backup/crc32.ts';
import { type Manifest, partsOf } from '../../src/domain/backup/manifest.ts';
import { makeJournal, parseJournal } from '../../src/domain/journal.ts';
import { aPicture, backupOf, onPhone, shaOf } from '../support/backups.ts';
import { aJournal, aRecorded } from '../support/entry-builders.ts';
import { aKeeper } from '../support/keepers.ts';
import { unzipped } from '../support/unzipped.ts';

vi.mock('../../src/device/worker-client.ts', async () => (await import('../support/worker-here.ts')).workerHere());

beforeEach(() => onPhone());
afterEach(() => vi.unstubAllGlobals());

const bytes = (text: string) => new TextEncoder().encode(text);

describe('CRC-32 (ISO 3309; check value of the catalogue of parametrised CRC algorithms, and zlib’s own)', () => {
  it.each([
    ['', '00000000'],
    ['a', 'e8b7be43'],
    ['abc', '352441c2'],
    ['123456789', 'cbf43926'],
    ['The quick brown fox jumps over the lazy dog', '414fa339'],
  ])('of “%s”', (text, crc) => {
    expect(crc32(bytes(text)).toString(16).padStart(8, '0')).toBe(crc);
    expect(crc32(bytes(text).subarray(1), crc32(bytes(text).subarray(0, 1)))).toBe(crc32(bytes(text)));
  });
});

describe('SHA-256 (FIPS 180-4 and the messages of NIST’s validation programme)', () => {
  it.each([
    [bytes(''), 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [bytes('abc'), 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [bytes('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'), '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'],
    [bytes('a'.repeat(1_000_000)), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
    [Uint8Array.of(0xbd), '68325720aabd7c82f30f554b313d0570c95accbb7dc4b5aae11204c08ffe732b'],
  ])('%#', async (message, digest) => {
    expect(await sha256Of(message)).toBe(digest);
  });
});

describe('a backup', () => {
  async function written() {
    const entries = [...aJournal(), ...Array.from({ length: 6000 }, (_, i) => aRecorded('wax', { name: `Wax ${i}` }))];
    const named = aRecorded('mould', { name: 'Heron' }, { pictures: [aPicture(1, 5000).sha] });
    const keeper = await aKeeper([...entries, named]);
    await keeper.keepPictures([aPicture(1, 5000)]);
    return { ...(await backupOf(keeper)), keeper };
  }

  it('is a zip as zlib and another reading of the format (PKWARE APPNOTE) find it, and its hashes are those of node:crypto', async () => {
    const { bytes: zip, keeper } = await written();
    const files = unzipped(zip);
    const manifest = JSON.parse(String(files.get('manifest.json'))) as Manifest;
    expect(manifest.journal.length).toBe(2);
    for (const part of partsOf(manifest)) {
      const file = files.get(part.name) as Buffer;
      expect([part.name, file.length, shaOf(file)]).toEqual([part.name, part.bytes, part.sha256]);
    }
    // Put together, the parts of the journal are the journal as it is saved as text.
    const text = manifest.journal.map((_, i) => String(files.get(`journal/0000${i + 1}.jsonl`))).join('');
    expect(text).toBe(makeJournal(keeper.shelf().studio.name ?? '', await keeper.journal()));
    expect(parseJournal(text)).toMatchObject({ header: { entries: manifest.counts.entries } });
  });
});
