import { demoPictures } from '../device/demo-pictures.ts';
import { journalInSlices } from '../domain/journal.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import { breathe, inBreaths } from '../store/breaths.ts';
import type { Keeper } from '../store/keeper.ts';

const OFFLINE = problem(
  'The demo studio could not be fetched.',
  'Nothing was changed. It has to be opened once while online; after that it works without a network.',
);

/** Fills the demo's own database on its first opening, through the parser that reads anyone's backup. */
export async function startDemo(keeper: Keeper): Promise<Problem | undefined> {
  if (keeper.shelf().entries > 0) return undefined;
  const files = await fetchDemo();
  if (!files) return OFFLINE;
  const journal = await inBreaths(journalInSlices(files.journal));
  if (isProblem(journal)) return journal;
  await breathe();
  const kept = await keeper.keepPictures(demoPictures(files.pictures));
  if (kept) return kept;
  const joined = await keeper.join(journal.entries);
  return isProblem(joined) ? joined : undefined;
}

async function fetchDemo(): Promise<{ journal: string; pictures: unknown } | null> {
  try {
    const { demoFiles } = await import('../device/demo-files.ts');
    return await demoFiles();
  } catch {
    return null;
  }
}
