import { type Problem, problem } from '../problem.ts';
import { UNTOUCHED } from './manifest.ts';

/** What a zip's central directory says of one file (PKWARE APPNOTE 4.3.12). */
export interface ZipFile {
  readonly name: string;
  /** 0 stored, 8 deflated. */
  readonly method: 0 | 8;
  readonly crc: number;
  readonly packed: number;
  readonly bytes: number;
  /** Where its local header begins. */
  readonly at: number;
  /** Where its data must have ended: the next local header, or the directory. */
  readonly until: number;
}

/** Bytes of the end record of a zip without a comment (4.3.16), which is how ours end. */
export const END_BYTES = 22;
/** Bytes of a local header before the name (4.3.7). */
export const LOCAL_BYTES = 30;
const DIRECTORY_BYTES_MAX = 32_000_000;
const FILES_MAX = 65_000;
const NAME_MAX = 120;

export const damaged = (says: string) => problem(`This backup is damaged: ${says}`, UNTOUCHED);
const CUT_SHORT = problem('This backup is cut short: its end is missing.', `${UNTOUCHED} Copy it over again from where it was kept.`);

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** Names in a backup are plain ASCII; anything else is none of ours. */
function nameAt(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length));
}

/** Where the directory lies, from the last END_BYTES of a file that long. */
export function parseZipEnd(
  end: Uint8Array,
  fileBytes: number,
): { readonly at: number; readonly bytes: number; readonly files: number } | Problem {
  if (end.length < END_BYTES) return CUT_SHORT;
  const view = viewOf(end);
  if (view.getUint32(0, true) !== 0x06054b50) return CUT_SHORT;
  const files = view.getUint16(10, true);
  const bytes = view.getUint32(12, true);
  const at = view.getUint32(16, true);
  const isOne = view.getUint16(4, true) === 0 && view.getUint16(6, true) === 0 && view.getUint16(8, true) === files;
  if (!isOne || view.getUint16(20, true) !== 0 || files > FILES_MAX || bytes > DIRECTORY_BYTES_MAX || at + bytes + END_BYTES !== fileBytes)
    return damaged('its directory is not where it should be.');
  return { at, bytes, files };
}

/** The files of a zip. Refused when one comes twice, lies over another, is encrypted, or is named as no file of ours is. */
export function parseZipDirectory(directory: Uint8Array, files: number, directoryAt: number): ReadonlyMap<string, ZipFile> | Problem {
  const view = viewOf(directory);
  const found: Omit<ZipFile, 'until'>[] = [];
  let at = 0;
  for (let i = 0; i < files; i++) {
    if (at + 46 > directory.length || view.getUint32(at, true) !== 0x02014b50) return damaged('its directory cannot be read.');
    const [nameBytes, extra, comment] = [view.getUint16(at + 28, true), view.getUint16(at + 30, true), view.getUint16(at + 32, true)];
    const next = at + 46 + nameBytes + extra + comment;
    const method = view.getUint16(at + 10, true);
    if (next > directory.length || nameBytes > NAME_MAX) return damaged('its directory cannot be read.');
    if ((view.getUint16(at + 8, true) & 1) !== 0 || (method !== 0 && method !== 8))
      return damaged('a file in it is packed in a way not known here.');
    const [crc, packed, bytes] = [view.getUint32(at + 16, true), view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
    if (method === 0 && packed !== bytes) return damaged('a file in it has two sizes.');
    found.push({ name: nameAt(directory, at + 46, nameBytes), method, crc, packed, bytes, at: view.getUint32(at + 42, true) });
    at = next;
  }
  if (at !== directory.length) return damaged('its directory cannot be read.');
  return apart(found, directoryAt);
}

/** By name, each with where its data must have ended. */
function apart(found: readonly Omit<ZipFile, 'until'>[], directoryAt: number): ReadonlyMap<string, ZipFile> | Problem {
  const inOrder = [...found].sort((a, b) => a.at - b.at);
  const byName = new Map<string, ZipFile>();
  for (const [i, file] of inOrder.entries()) {
    const until = inOrder[i + 1]?.at ?? directoryAt;
    if (file.at + LOCAL_BYTES + file.name.length + file.packed > until) return damaged('files in it lie over each other.');
    if (byName.has(file.name)) return damaged('a file is in it twice.');
    byName.set(file.name, { ...file, until });
  }
  return byName;
}

/** Where a file's data begin, from its local header: LOCAL_BYTES and its name. */
export function zipDataAt(header: Uint8Array, file: ZipFile): number | Problem {
  const view = viewOf(header);
  if (header.length < LOCAL_BYTES + file.name.length || view.getUint32(0, true) !== 0x04034b50)
    return damaged(`${file.name} cannot be found.`);
  const nameBytes = view.getUint16(26, true);
  const at = file.at + LOCAL_BYTES + nameBytes + view.getUint16(28, true);
  if (nameBytes !== file.name.length || nameAt(header, LOCAL_BYTES, nameBytes) !== file.name || at + file.packed > file.until)
    return damaged(`${file.name} is not where it should be.`);
  return at;
}

/** Whether a zip holds exactly these files, each of the size that is said of it. */
export function holdsExactly(
  files: ReadonlyMap<string, ZipFile>,
  wanted: readonly { readonly name: string; readonly bytes: number }[],
): Problem | undefined {
  const names = new Set(wanted.map(({ name }) => name));
  const stray = [...files.keys()].find((name) => !names.has(name));
  if (stray !== undefined) return damaged('a file is in it that its list of contents does not know.');
  for (const { name, bytes } of wanted) {
    const file = files.get(name);
    if (!file) return damaged(`${name} is missing.`);
    if (file.bytes !== bytes) return damaged(`${name} has another size than it should.`);
  }
  return undefined;
}
