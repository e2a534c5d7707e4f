import { SLICE } from '../domain/apply.ts';
import { MANIFEST, type Manifest, type Part, parseManifest, partsOf } from '../domain/backup/manifest.ts';
import { damaged, holdsExactly, type ZipFile } from '../domain/backup/zip.ts';
import type { Sha256 } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import { foldInSlices } from '../domain/fold.ts';
import { type Journal, JournalReader } from '../domain/journal.ts';
import { NOUNS } from '../domain/noun.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import type { Jobs, OpenedStudio, PlacedPicture, Progress } from './protocol.ts';
import { bytesOf, unpackManifest, unpackPart, zipFiles } from './zip-parts.ts';

const UNTOUCHED = 'Nothing was changed.';
/** Far above 100,000 entries (about 19 MB). */
const JOURNAL_BYTES_MAX = 200_000_000;
const ZIP = [0x50, 0x4b];
/** Summing an entry takes about as long as reading so many bytes. */
const SUM_BYTES = 500;

/**
 * Reads a backup, or a journal saved as text, and vouches for every byte of it before anything is answered. Refused whole when it is
 * damaged, cut short, of a newer version, or none of ours. `isOnlyChecked` answers without the entries.
 */
export async function openBackup(
  { file, isOnlyChecked }: Jobs['backup']['asks'],
  tell: (progress: Progress) => void,
): Promise<OpenedStudio | Problem> {
  if (file.size === 0) return problem('That file is empty.', UNTOUCHED);
  const head = await bytesOf(file, 0, 2);
  const opened = head.every((byte, i) => byte === ZIP[i]) ? await openZip(file, isOnlyChecked, tell) : await openText(file);
  if (isProblem(opened)) return opened;
  const { manifest, journal, pictures } = opened;
  const shelf = isOnlyChecked ? undefined : summed(journal.entries, opened.read, tell);
  return {
    ...(manifest ? { manifest } : {}),
    name: manifest ? manifest.studio : journal.header.name,
    entries: isOnlyChecked ? [] : journal.entries,
    things: NOUNS.map((noun) => [noun, [...(shelf?.things[noun].keys() ?? [])]]),
    pictures,
  };
}

function summed(entries: readonly Entry[], read: number, tell: (progress: Progress) => void): Shelf {
  const slices = foldInSlices(entries);
  const total = read + SUM_BYTES * entries.length;
  for (let done = read; ; done += SUM_BYTES * SLICE) {
    const { done: isOver, value } = slices.next();
    if (isOver) return value;
    tell({ done: Math.min(done, total), total });
  }
}

interface Opened {
  /** Bytes of all parts. */
  readonly read: number;
  readonly manifest?: Manifest;
  readonly journal: Journal;
  readonly pictures: readonly PlacedPicture[];
}

async function openText(file: Blob): Promise<Opened | Problem> {
  const NOT_OURS = problem('This is neither a Mouldkeep backup nor a saved journal.', UNTOUCHED);
  if (file.size > JOURNAL_BYTES_MAX) return NOT_OURS;
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
  } catch {
    return NOT_OURS;
  }
  const reader = new JournalReader();
  const journal = reader.take(text) ?? reader.end();
  return isProblem(journal) ? journal : { read: file.size, journal, pictures: [] };
}

async function openZip(file: Blob, isOnlyChecked: boolean, tell: (progress: Progress) => void): Promise<Opened | Problem> {
  const files = await zipFiles(file);
  if (isProblem(files)) return files;
  const raw = await unpackManifest(file, files);
  if (isProblem(raw)) return raw;
  const manifest = parseManifest(raw);
  if (isProblem(manifest)) return manifest;
  const parts = partsOf(manifest);
  const wrong = holdsExactly(files, [...parts, { name: MANIFEST, bytes: files.get(MANIFEST)?.bytes ?? 0 }]);
  if (wrong) return wrong;
  const read = parts.reduce((sum, { bytes }) => sum + bytes, 0);
  const total = read + (isOnlyChecked ? 0 : SUM_BYTES * manifest.counts.entries);
  const reader = new JournalReader(isOnlyChecked);
  const outcome = await readParts(file, files, manifest, parts, reader, (done) => tell({ done, total }));
  return isProblem(outcome) ? outcome : { read, ...outcome };
}

async function readParts(
  file: Blob,
  files: ReadonlyMap<string, ZipFile>,
  manifest: Manifest,
  parts: readonly Part[],
  reader: JournalReader,
  tell: (done: number) => void,
): Promise<Omit<Opened, 'read'> | Problem> {
  const text = new TextDecoder('utf-8', { fatal: true });
  const at = new Map<string, number>();
  let done = 0;
  for (const part of parts) {
    const entry = files.get(part.name) as ZipFile;
    // Pictures are packed already; stored as they are, they can be read without unpacking when they are taken in.
    if (part.entries === undefined && entry.method !== 0) return damaged(`${part.name} is packed in a way not known here.`);
    const unpacked = await unpackPart(file, entry, part);
    if (isProblem(unpacked)) return unpacked;
    if (part.entries === undefined) at.set(part.name, unpacked.at);
    else {
      const wrong = takeJournal(reader, text, unpacked.bytes, part);
      if (wrong) return wrong;
    }
    done += part.bytes;
    tell(done);
  }
  const journal = reader.end();
  if (isProblem(journal)) return journal;
  return { manifest, journal, pictures: placed(manifest, parts, at) };
}

function takeJournal(reader: JournalReader, decoder: TextDecoder, bytes: Uint8Array, part: Part): Problem | undefined {
  const before = reader.count;
  let text: string;
  try {
    text = decoder.decode(bytes);
  } catch {
    return damaged(`${part.name} is not text.`);
  }
  if (!text.endsWith('\n')) return damaged(`${part.name} ends in the middle of a line.`);
  return (
    reader.take(text) ?? (reader.count - before === part.entries ? undefined : damaged(`${part.name} has other entries than it should.`))
  );
}

function placed({ pictures }: Manifest, parts: readonly Part[], at: ReadonlyMap<string, number>): PlacedPicture[] {
  const ofPictures = parts.filter(({ entries }) => entries === undefined);
  return pictures.map(({ of, type, bytes, thumb }, i) => {
    const [whole, small] = [ofPictures[2 * i], ofPictures[2 * i + 1]].map((part) => at.get(part?.name ?? '') ?? 0);
    return {
      sha: of as Sha256,
      type,
      at: whole ?? 0,
      bytes,
      thumb: { type: thumb.type, at: small ?? 0, bytes: thumb.bytes, sha: thumb.sha256 },
    };
  });
}
