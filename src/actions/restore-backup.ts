import { pictureFrom } from '../device/backup-pictures.ts';
import type { Progress } from '../device/worker-client.ts';
import type { Sha256 } from '../domain/brand.ts';
import type { Picture } from '../domain/picture.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { PAGE_ENTRIES } from '../store/pages.ts';
import type { Replaced } from '../store/replaced.ts';
import type { Deps } from './deps.ts';
import { NOT_IN_DEMO, type OpenedBackup } from './open-backup.ts';

export type { Replaced };

type Needed = Pick<Deps, 'keeper' | 'today' | 'isDemo'>;

/** Bytes of pictures in one write. */
const BATCH_BYTES = 8_000_000;
/** A picture takes about as long as a hundred entries. */
const PICTURE_WEIGHT = 100;

/** `join` adds what is new; `replace` puts the backup in the place of what is here, which is kept aside. */
export type Way = 'join' | 'replace';

/**
 * Takes a backup in. Its pictures come first, which changes nothing anybody sees; then the journal in one transaction. What goes wrong before
 * that leaves the shelves as they were, and takes the pictures away again. Gives how many entries were new.
 */
export async function restoreBackup(
  deps: Needed,
  opened: OpenedBackup,
  way: Way,
  tell: (progress: Progress) => void,
): Promise<number | Problem> {
  if (deps.isDemo) return NOT_IN_DEMO;
  return (await deps.keeper.vault()).alone(() => restore(deps, opened, way, tell));
}

async function restore(deps: Needed, opened: OpenedBackup, way: Way, tell: (progress: Progress) => void): Promise<number | Problem> {
  const { keeper, today } = deps;
  const added: Sha256[] = [];
  const { entries } = opened;
  const total = entries.length + PICTURE_WEIGHT * opened.freshPictures.size;
  const wrong = await takePictures(deps, opened, added, () => tell({ done: PICTURE_WEIGHT * added.length, total }));
  let turns = 0;
  const turn = () => {
    turns += 1;
    tell({ done: Math.min(total, PICTURE_WEIGHT * added.length + (turns * PAGE_ENTRIES) / 2), total });
  };
  const outcome =
    wrong ?? (way === 'join' ? await keeper.join(entries, turn) : await (await keeper.vault()).replace(entries, today(), turn));
  if (!isProblem(outcome)) return outcome ?? opened.difference.entries.fresh;
  await keeper.dropPictures(added);
  return outcome;
}

async function takePictures(
  { keeper }: Needed,
  { file, pictures }: OpenedBackup,
  added: Sha256[],
  tell: () => void,
): Promise<Problem | undefined> {
  // Asked again: another tab may have thrown one away since the backup was looked at.
  const here = await (await keeper.vault()).known(pictures.map(({ sha }) => sha));
  const wanted = pictures.filter(({ sha }) => !here.has(sha));
  let batch: Picture[] = [];
  let bytes = 0;
  const write = async () => {
    added.push(...batch.map(({ sha }) => sha));
    const wrong = await keeper.keepPictures(batch);
    batch = [];
    bytes = 0;
    tell();
    return wrong;
  };
  for (const placed of wanted) {
    const picture = await pictureFrom(file, placed);
    if (isProblem(picture)) return picture;
    batch.push(picture);
    bytes += placed.bytes + placed.thumb.bytes;
    const wrong = bytes >= BATCH_BYTES ? await write() : undefined;
    if (wrong) return wrong;
  }
  return batch.length > 0 ? write() : undefined;
}

/** The studio that a backup was put in the place of, while it is still kept. */
export async function replacedStudio({ keeper }: Pick<Deps, 'keeper'>): Promise<Replaced | undefined> {
  return (await keeper.vault()).replaced();
}

/** Brings the replaced studio back; what is here now is kept aside in its turn. */
export async function bringBack({ keeper, today }: Needed): Promise<Problem | undefined> {
  return (await keeper.vault()).bringBack(today());
}

/** Lets go of the replaced studio. */
export async function letGo({ keeper }: Pick<Deps, 'keeper'>): Promise<Problem | undefined> {
  return (await keeper.vault()).forget();
}
