import type { Day, Sha256 } from '../brand.ts';
import { day, type FieldsOf, listOf, NAME_MAX, oneOf, sha256, shape, text, whole } from '../field.ts';
import { isProblem, type Problem, problem, quoted } from '../problem.ts';

/** A backup is a zip file. What is in it, and how each part is checked, its `manifest.json` says; backup.schema.json beside this file describes it. */
export const FORMAT = 'mouldkeep-backup';
export const VERSION = 1;
export const MANIFEST = 'manifest.json';
export const MANIFEST_BYTES_MAX = 16_000_000;
export const PARTS_MAX = 60_000;
/** A journal is written in parts, so that none of them is too much for a phone's memory. Bytes, unpacked. */
export const JOURNAL_PART_MAX = 64_000_000;
/** Far above a picture of 2,048 px. */
export const PICTURE_BYTES_MAX = 100_000_000;
/** What a zip without its 64-bit extension can hold. */
export const BACKUP_BYTES_MAX = 4_000_000_000;
const ENTRIES_MAX = 10_000_000;

export const PICTURE_TYPES = ['image/jpeg', 'image/png', 'image/webp', 'image/svg+xml'] as const;
export type PictureType = (typeof PICTURE_TYPES)[number];
const ENDING: Readonly<Record<PictureType, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/svg+xml': 'svg',
};

export const JOURNAL_FIELDS = {
  bytes: whole(1, JOURNAL_PART_MAX),
  sha256,
  /** Entries in this part; the journal's header is none. */
  entries: whole(0, ENTRIES_MAX),
} as const;

export const PICTURE_FIELDS = {
  /** The picture's name, which is the SHA-256 of its bytes. */
  of: sha256,
  type: oneOf(PICTURE_TYPES),
  bytes: whole(0, PICTURE_BYTES_MAX),
  thumb: shape({ type: oneOf(PICTURE_TYPES), bytes: whole(0, PICTURE_BYTES_MAX), sha256 }, ['type', 'bytes', 'sha256']),
} as const;

export const MANIFEST_FIELDS = {
  format: oneOf([FORMAT]),
  version: whole(VERSION, VERSION),
  madeOn: day,
  /** The device it was made on, by its name in the ids of entries. */
  device: (raw: unknown): string | Problem =>
    typeof raw === 'string' && /^[0-9A-HJKMNP-TV-Z]{6}$/.test(raw) ? raw : problem(`${quoted(raw)} is no device.`),
  studio: text(NAME_MAX),
  counts: shape({ entries: whole(0, ENTRIES_MAX), pictures: whole(0, PARTS_MAX) }, ['entries', 'pictures']),
  journal: listOf(shape(JOURNAL_FIELDS, ['bytes', 'sha256', 'entries']), PARTS_MAX),
  pictures: listOf(shape(PICTURE_FIELDS, ['of', 'type', 'bytes', 'thumb']), PARTS_MAX),
} as const;
const manifestShape = shape(MANIFEST_FIELDS, ['format', 'version', 'madeOn', 'device', 'counts', 'journal', 'pictures']);

export type JournalPart = Required<FieldsOf<typeof JOURNAL_FIELDS>>;
export type PicturePart = Required<FieldsOf<typeof PICTURE_FIELDS>>;
export interface Manifest {
  readonly format: typeof FORMAT;
  readonly version: number;
  readonly madeOn: Day;
  readonly device: string;
  /** The studio's name; absent until somebody has given it one. */
  readonly studio?: string;
  readonly counts: { readonly entries: number; readonly pictures: number };
  readonly journal: readonly JournalPart[];
  readonly pictures: readonly PicturePart[];
}

/** A file in the zip, and what its bytes must come to. */
export interface Part {
  readonly name: string;
  readonly bytes: number;
  readonly sha256: Sha256;
  readonly entries?: number;
}

export const journalName = (index: number) => `journal/${String(index + 1).padStart(5, '0')}.jsonl`;
export const pictureName = (of: Sha256, type: PictureType) => `pictures/${of}.${ENDING[type]}`;
export const thumbName = (of: Sha256, type: PictureType) => `thumbs/${of}.${ENDING[type]}`;

/** All files a backup must hold besides its manifest, and no others, in the order they lie in it. */
export function partsOf({ journal, pictures }: Pick<Manifest, 'journal' | 'pictures'>): readonly Part[] {
  return [
    ...journal.map((part, index) => ({ name: journalName(index), ...part })),
    ...pictures.flatMap(({ of, type, bytes, thumb }) => [
      { name: pictureName(of, type), bytes, sha256: of },
      { name: thumbName(of, thumb.type), bytes: thumb.bytes, sha256: thumb.sha256 },
    ]),
  ];
}

export const UNTOUCHED = 'Nothing was changed.';

/** What the schema describes: fields and their ranges, not yet whether the counts agree. */
export function manifestFields(raw: unknown): Manifest | Problem {
  return manifestShape(raw) as Manifest | Problem;
}

/** Reads a manifest: not ours, of a newer version, damaged, or one whose figures agree with each other. */
export function parseManifest(raw: unknown): Manifest | Problem {
  const { format, version } = (typeof raw === 'object' && raw !== null ? raw : {}) as Record<string, unknown>;
  if (format !== FORMAT) return problem('This is not a Mouldkeep backup.', UNTOUCHED);
  if (typeof version === 'number' && version > VERSION)
    return problem(`This backup is of version ${version}; this Mouldkeep reads version ${VERSION}. Update it first.`, UNTOUCHED);
  const manifest = manifestFields(raw);
  if (isProblem(manifest)) return problem(`This backup’s list of contents is damaged: ${manifest.says}`, UNTOUCHED);
  const { counts, journal, pictures } = manifest;
  const entries = journal.reduce((sum, part) => sum + part.entries, 0);
  const isWhole = journal.length > 0 && entries === counts.entries && pictures.length === counts.pictures;
  if (!isWhole || new Set(pictures.map(({ of }) => of)).size !== pictures.length)
    return problem('This backup’s list of contents is damaged: its figures do not agree.', UNTOUCHED);
  return manifest;
}
