import { Inflate } from 'fflate';
import { crc32 } from '../domain/backup/crc32.ts';
import { MANIFEST, MANIFEST_BYTES_MAX, type Part } from '../domain/backup/manifest.ts';
import { damaged, END_BYTES, LOCAL_BYTES, parseZipDirectory, parseZipEnd, type ZipFile, zipDataAt } from '../domain/backup/zip.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';

/** Packed bytes taken at once: deflate makes at most 1,032 of one, so this is what a bomb can blow up before it is seen. */
const PUSHED = 16_384;

export async function bytesOf(file: Blob, from: number, to: number): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await file.slice(from, to).arrayBuffer());
}

/** The files of a zip, from its directory alone. */
export async function zipFiles(file: Blob): Promise<ReadonlyMap<string, ZipFile> | Problem> {
  const end = parseZipEnd(await bytesOf(file, Math.max(0, file.size - END_BYTES), file.size), file.size);
  if (isProblem(end)) return end;
  return parseZipDirectory(await bytesOf(file, end.at, end.at + end.bytes), end.files, end.at);
}

/** Unpacks to exactly as many bytes as the directory says, or stops. */
function inflated(packed: Uint8Array, bytes: number): Uint8Array<ArrayBuffer> | undefined {
  const whole = new Uint8Array(bytes);
  let done = 0;
  let isTooLong = false;
  const inflate = new Inflate((chunk) => {
    isTooLong ||= done + chunk.length > bytes;
    if (!isTooLong) whole.set(chunk, done);
    done += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length && !isTooLong; at += PUSHED) {
      inflate.push(packed.subarray(at, at + PUSHED), at + PUSHED >= packed.length);
    }
  } catch {
    return undefined;
  }
  return done === bytes && !isTooLong ? whole : undefined;
}

export interface UnpackedPart {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Where its data lie in the file. */
  readonly at: number;
}

/** A file's bytes, as its CRC-32 vouches for them. */
async function unpack(file: Blob, entry: ZipFile): Promise<UnpackedPart | Problem> {
  const at = zipDataAt(await bytesOf(file, entry.at, entry.at + LOCAL_BYTES + entry.name.length), entry);
  if (isProblem(at)) return at;
  const packed = await bytesOf(file, at, at + entry.packed);
  const bytes = entry.method === 0 ? packed : inflated(packed, entry.bytes);
  if (!bytes || bytes.length !== entry.bytes || crc32(bytes) !== entry.crc) return damaged(`${entry.name} is not as it was written.`);
  return { bytes, at };
}

export async function unpackManifest(file: Blob, files: ReadonlyMap<string, ZipFile>): Promise<unknown> {
  const entry = files.get(MANIFEST);
  if (!entry) return problem('This is a zip file, but not a Mouldkeep backup.', 'Nothing was changed.');
  if (entry.bytes > MANIFEST_BYTES_MAX) return damaged('its list of contents is too long.');
  const part = await unpack(file, entry);
  if (isProblem(part)) return part;
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(part.bytes)) as unknown;
  } catch {
    return damaged('its list of contents cannot be read.');
  }
}

/** A part's bytes, as its SHA-256 vouches for them. */
export async function unpackPart(file: Blob, entry: ZipFile, { sha256 }: Part): Promise<UnpackedPart | Problem> {
  const part = await unpack(file, entry);
  if (isProblem(part)) return part;
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', part.bytes));
  const hex = Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex === sha256 ? part : damaged(`${entry.name} is not as it was written.`);
}
