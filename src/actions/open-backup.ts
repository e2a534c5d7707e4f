import { type OpenedStudio, type Progress, startJob } from '../device/worker-client.ts';
import { Comparison, type Difference } from '../domain/backup/compare.ts';
import type { Sha256 } from '../domain/brand.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import { inBreaths } from '../store/breaths.ts';
import { CopyMoved } from '../store/pages.ts';
import type { Deps } from './deps.ts';

/** What a backup holds, beside what is here, before any of it is taken in. */
export interface OpenedBackup extends OpenedStudio {
  readonly file: Blob;
  readonly difference: Difference;
  /** Its pictures that are not on this device. */
  readonly freshPictures: ReadonlySet<Sha256>;
}

export type { Progress };

export interface Opening {
  /** Undefined when it was called off. */
  readonly answer: Promise<OpenedBackup | Problem | undefined>;
  cancel(): void;
}

const UNTOUCHED = 'Nothing was changed.';
export const NOT_IN_DEMO = problem(
  'A backup is not opened in the demo: it would be mixed with an invented studio.',
  `${UNTOUCHED} Leave the demo first, then open it on your own shelves.`,
);

/**
 * Reads a backup, or a journal saved as text, off the page, vouches for all of it and compares it with what is here; nothing is changed.
 * Refused whole, with the reason, when it is damaged, cut short, of a newer version or none of ours.
 */
export function openBackup({ keeper, isDemo }: Pick<Deps, 'keeper' | 'isDemo'>, file: Blob, tell: (progress: Progress) => void): Opening {
  if (isDemo) return { answer: Promise.resolve(NOT_IN_DEMO), cancel: () => undefined };
  const job = startJob('backup', { file, isOnlyChecked: false }, tell);
  async function compared(): Promise<OpenedBackup | Problem | undefined> {
    const opened = await job.answer;
    if (opened === undefined || isProblem(opened)) return opened;
    try {
      const vault = await keeper.vault();
      const shas = opened.pictures.map(({ sha }) => sha);
      const here = await vault.known(shas);
      const comparison = await inBreaths(Comparison.with(opened.entries));
      for await (const page of (await vault.copy()).pages()) comparison.take(page);
      return {
        ...opened,
        file,
        difference: await inBreaths(comparison.done(keeper.shelf(), opened.things)),
        freshPictures: new Set(shas.filter((sha) => !here.has(sha))),
      };
    } catch (error) {
      const says = error instanceof CopyMoved ? 'The shelves were replaced in another tab meanwhile.' : 'What is here could not be read.';
      return problem(says, `${UNTOUCHED} Load the page again and try once more.`);
    }
  }
  return { answer: compared(), cancel: job.cancel };
}
