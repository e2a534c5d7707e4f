import { type BackupTarget, chooseTarget } from '../device/backup-target.ts';
import { BackupZip, type PackedFile, sha256Of } from '../device/backup-zip.ts';
import { saveFile } from '../device/files.ts';
import { type Progress, startJob } from '../device/worker-client.ts';
import {
  BACKUP_BYTES_MAX,
  FORMAT,
  type JournalPart,
  journalName,
  MANIFEST,
  type Manifest,
  PICTURE_TYPES,
  type PicturePart,
  type PictureType,
  pictureName,
  thumbName,
  VERSION,
} from '../domain/backup/manifest.ts';
import { type Census, censusOf } from '../domain/backup-reminder.ts';
import { makeJournalHead, makeJournalLines } from '../domain/journal.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { StudioCopy } from '../store/copy.ts';
import type { Deps } from './deps.ts';
import { noteBackup } from './last-backup.ts';

type Needed = Pick<Deps, 'keeper' | 'settings' | 'today' | 'isDemo'>;

export interface MadeBackup {
  readonly file: File;
  readonly entries: number;
  readonly pictures: number;
  /** Pictures that entries name and that are not in it: they stayed on another device, or are damaged here. */
  readonly absent: number;
  /** Whether it lies where it was wanted already, so that nothing has to be handed over. */
  readonly isPlaced: boolean;
  readonly census: Census;
}

export type BackupStep = Progress & { readonly doing: 'writing' | 'checking' };

/** Entries in one part of the journal, about a megabyte. */
const PART_ENTRIES = 5000;
const NOTHING = 'Nothing was changed on your shelves, and no backup was made.';
const FAILED = problem('The backup could not be made.', `${NOTHING} Free some room on the device, close other tabs, and try again.`);

/**
 * Makes a backup of the whole studio in a stream, and reads it back before anything is claimed. Undefined when the person closed the choice
 * of a file, or called it off. Has to be called right after a tap.
 */
export async function makeBackup(
  deps: Needed,
  tell: (step: BackupStep) => void,
  isOff: () => boolean = () => false,
): Promise<MadeBackup | Problem | undefined> {
  const target = await chooseTarget(`mouldkeep-${deps.isDemo ? 'demo-' : ''}backup-${deps.today()}.zip`);
  if (!target) return undefined;
  let isWritten = false;
  try {
    const census = censusOf(deps.keeper.shelf());
    const copy = await (await deps.keeper.vault()).copy();
    const written = await writeBackup(deps, copy, target, tell, isOff);
    if (written === undefined || isProblem(written)) {
      await target.drop();
      return written;
    }
    const file = await target.finish();
    isWritten = true;
    const check = await startJob('backup', { file, isOnlyChecked: true }, (progress) => tell({ ...progress, doing: 'checking' })).answer;
    if (!check || isProblem(check)) return problem(`The backup was written, but cannot be read back: ${check?.says ?? ''}`, NOTHING);
    const { entries, pictures } = written.counts;
    return { file, entries, pictures, absent: copy.absent + copy.pictures.length - pictures, isPlaced: target.isPlaced, census };
  } catch {
    if (!isWritten) await target.drop().catch(() => undefined);
    return FAILED;
  }
}

/** Hands a made backup over, and notes the day. False when the person closed the share sheet. */
export async function handOver(deps: Needed, made: MadeBackup): Promise<boolean> {
  const isOver = made.isPlaced || (await saveFile(made.file.name, made.file));
  if (isOver) noteBackup(deps, made.census, true);
  return isOver;
}

async function writeBackup(
  { keeper, today }: Needed,
  copy: StudioCopy,
  target: BackupTarget,
  tell: (step: BackupStep) => void,
  isOff: () => boolean,
): Promise<Manifest | Problem | undefined> {
  const zip = new BackupZip(target);
  const name = keeper.shelf().studio.name;
  // A picture takes about as long as a hundred entries.
  const total = copy.entries + 100 * copy.pictures.length;
  const journal = await writeJournal(zip, copy, name, (entries) => tell({ done: entries, total, doing: 'writing' }), isOff);
  const pictures: PicturePart[] = [];
  for (const [i, sha] of copy.pictures.entries()) {
    if (isOff()) return undefined;
    if (zip.bytes > BACKUP_BYTES_MAX) return problem('The studio is larger than one backup file can hold (4 GB).', NOTHING);
    const picture = await copy.picture(sha);
    if (picture && isType(picture.type) && isType(picture.thumb.type) && (await sha256Of(picture.bytes)) === sha) {
      const { type, bytes, thumb } = picture;
      await zip.store(pictureName(sha, type), bytes);
      await zip.store(thumbName(sha, picture.thumb.type), thumb.bytes);
      const small = { type: picture.thumb.type, bytes: thumb.bytes.byteLength, sha256: await sha256Of(thumb.bytes) };
      pictures.push({ of: sha, type, bytes: bytes.byteLength, thumb: small });
    }
    tell({ done: copy.entries + 100 * (i + 1), total, doing: 'writing' });
  }
  if (isOff()) return undefined;
  const counts = { entries: copy.entries, pictures: pictures.length };
  const manifest: Manifest = {
    format: FORMAT,
    version: VERSION,
    madeOn: today(),
    device: copy.device,
    ...(name === undefined ? {} : { studio: name }),
    counts,
    journal,
    pictures,
  };
  const list = zip.begin(MANIFEST);
  await list.add(new TextEncoder().encode(`${JSON.stringify(manifest, null, 1)}\n`));
  await list.end();
  await zip.end();
  return manifest;
}

function isType(type: string): type is PictureType {
  return (PICTURE_TYPES as readonly string[]).includes(type);
}

/** The journal in parts of whole lines; put together they are the journal as it is saved as text. */
async function writeJournal(
  zip: BackupZip,
  copy: StudioCopy,
  name: string | undefined,
  tell: (entries: number) => void,
  isOff: () => boolean,
): Promise<JournalPart[]> {
  const text = new TextEncoder();
  const parts: JournalPart[] = [];
  let part: PackedFile | undefined = zip.begin(journalName(0));
  await part.add(text.encode(makeJournalHead(name ?? 'Studio', copy.entries)));
  let entries = 0;
  let done = 0;
  for await (const page of copy.pages()) {
    if (isOff()) break;
    part ??= zip.begin(journalName(parts.length));
    await part.add(text.encode(makeJournalLines(page)));
    entries += page.length;
    done += page.length;
    tell(done);
    if (entries < PART_ENTRIES) continue;
    parts.push({ ...(await part.end()), entries });
    part = undefined;
    entries = 0;
  }
  if (part) parts.push({ ...(await part.end()), entries });
  return parts;
}
