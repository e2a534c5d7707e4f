import type { Day } from '../domain/brand.ts';
import { foldAll } from '../domain/fold.ts';
import { type Copied, readCopy, type Texts } from '../store/second-copy.ts';
import { handOverJournal } from './save-journal.ts';

/** Where a second copy may lie, for a screen that has no shelves. */
export interface CopyPlace {
  readonly texts: Texts | undefined;
  readonly today: () => Day;
}

export type { Copied };

/** The second copy of the journal, when the database it is a copy of cannot be opened; undefined when nothing of one can be read. */
export async function readSecondCopy({ texts }: CopyPlace): Promise<Copied | undefined> {
  const copied = await (texts && readCopy(texts));
  return copied && copied.entries.length > 0 ? copied : undefined;
}

/** Hands it over as the journal's text, as *Backup* reads it back in. False when the person thought better of it. */
export function saveSecondCopy({ entries }: Copied, today: Day): Promise<boolean> {
  return handOverJournal(foldAll(entries).studio.name, entries, today);
}
