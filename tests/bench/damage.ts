import { appendFileSync, copyFileSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { crc32 } from '../../src/domain/backup/crc32.ts';
import { chance } from '../support/chance.ts';

/** A spoiled copy of a backup, and what the app has to say of it. */
export interface Damaged {
  readonly name: string;
  readonly says: RegExp;
  make(into: string): void;
}

const DAMAGE = /cut short|damaged/;

/** A few copies of a backup, spoiled at places that the seed chooses. */
export function damages(file: string, seed: number): readonly Damaged[] {
  const next = chance(seed);
  const { size } = statSync(file);
  const somewhere = () => Math.floor(next() * size);
  const cuts = [somewhere(), somewhere(), size - 1];
  const changes = [somewhere(), somewhere(), somewhere()];
  return [
    ...cuts.map((at) => ({ name: `cut after ${at} of ${size} bytes`, says: DAMAGE, make: (into: string) => cut(file, into, at) })),
    ...changes.map((at) => ({ name: `byte ${at} of ${size} changed`, says: DAMAGE, make: (into: string) => change(file, into, at) })),
    { name: 'of a newer version', says: /is of version 2; this Mouldkeep reads version 1/, make: (into) => makeNewer(file, into) },
  ];
}

function cut(file: string, into: string, at: number): void {
  copyFileSync(file, into);
  truncateSync(into, at);
}

function change(file: string, into: string, at: number): void {
  const bytes = readFileSync(file);
  bytes[at] = (bytes[at] as number) ^ 0x5a;
  writeFileSync(into, bytes);
}

const END_BYTES = 22;
const LOCAL_BYTES = 30;

/** The same backup as a later Mouldkeep might write it: a whole zip, with only the version in its manifest raised. The manifest is its last file. */
function makeNewer(file: string, into: string): void {
  const bytes = readFileSync(file);
  const end = Buffer.from(bytes.subarray(-END_BYTES));
  const directoryAt = end.readUInt32LE(16);
  const directory = Buffer.from(bytes.subarray(directoryAt, directoryAt + end.readUInt32LE(12)));
  let record = 0;
  for (let next = 0; next < directory.length; next += 46 + namesBytes(directory, next)) record = next;
  const at = directory.readUInt32LE(record + 42);
  const local = Buffer.from(bytes.subarray(at, at + LOCAL_BYTES + bytes.readUInt16LE(at + 26)));
  const dataAt = at + LOCAL_BYTES + bytes.readUInt16LE(at + 26) + bytes.readUInt16LE(at + 28);
  const manifest = inflateRawSync(bytes.subarray(dataAt, dataAt + directory.readUInt32LE(record + 20))).toString();
  const newer = Buffer.from(manifest.replace('"version": 1', '"version": 2'));
  const packed = deflateRawSync(newer);
  const sizes = [crc32(newer), packed.length, newer.length];
  for (const [i, value] of sizes.entries()) {
    directory.writeUInt32LE(value, record + 16 + 4 * i);
    local.writeUInt32LE(value, 14 + 4 * i);
  }
  // Sizes stand before the data now, not behind them; and no extra field does.
  for (const [buffer, flags] of [
    [directory, record + 8],
    [local, 6],
  ] as const)
    buffer.writeUInt16LE(buffer.readUInt16LE(flags) & ~8, flags);
  local.writeUInt16LE(0, 28);
  end.writeUInt32LE(at + local.length + packed.length, 16);
  cut(file, into, at);
  appendFileSync(into, Buffer.concat([local, packed, directory, end]));
}

function namesBytes(directory: Buffer, at: number): number {
  return directory.readUInt16LE(at + 28) + directory.readUInt16LE(at + 30) + directory.readUInt16LE(at + 32);
}
