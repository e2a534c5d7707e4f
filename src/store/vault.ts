import type { Day, Sha256 } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import type { Problem } from '../domain/problem.ts';
import { alone } from './alone.ts';
import { copyStudio, namesIn, type StudioCopy } from './copy.ts';
import { storageProblem } from './failure.ts';
import { forgetReplaced, type Replaced, readReplaced, replacedEntries, replaceStudio } from './replaced.ts';
import { type MouldkeepDb, REPLACED } from './schema.ts';
import type { Refolded } from './seal.ts';

/** The rarer half of the keeper: the whole studio at once. */
export interface Vault {
  copy(): Promise<StudioCopy>;
  /** Puts another journal in this one's place; what was here is kept aside. Its pictures have to be kept already. `tell` as in `Keeper.join`. */
  replace(entries: readonly Entry[], on: Day, tell?: () => void): Promise<Problem | undefined>;
  /** What was replaced and can be brought back. */
  replaced(): Promise<Replaced | undefined>;
  /** Brings back what was replaced; what is here now is kept aside in its turn. */
  bringBack(on: Day): Promise<Problem | undefined>;
  /** Lets go of what was replaced. */
  forget(): Promise<Problem | undefined>;
  /** Of these pictures, those that are on this device. */
  known(shas: readonly Sha256[]): Promise<ReadonlySet<Sha256>>;
  /** Pictures that neither an entry, nor what was replaced, nor `isHeld` names: what forms that were given up left behind. */
  unnamed(isHeld: (sha: Sha256) => boolean): Promise<readonly Sha256[]>;
  /** Keeps pictures that nothing names yet from being thrown away in another tab: both take their turn here. */
  alone<T>(job: () => Promise<T>): Promise<T>;
}

interface Inner {
  readonly inTurn: <T>(job: () => Promise<T>) => Promise<T>;
  readonly adopt: (whole: Refolded) => void;
}

export function openVault(db: MouldkeepDb, device: string, { inTurn, adopt }: Inner): Vault {
  function change(job: () => Promise<Refolded | undefined>): Promise<Problem | undefined> {
    return inTurn(async () => {
      const whole = await job();
      if (whole) adopt(whole);
      return undefined;
    }).catch(storageProblem);
  }
  return {
    copy: () => copyStudio(db, device),
    replace: (entries, on, tell) => change(() => replaceStudio(db, entries, on, tell)),
    replaced: () => readReplaced(db),
    bringBack: (on) => change(async () => ((await readReplaced(db)) ? replaceStudio(db, await replacedEntries(db), on) : undefined)),
    forget: () => forgetReplaced(db).then(() => undefined, storageProblem),
    alone: (job) => alone(db.name, job),
    known: async (shas) => new Set((await db.pictures.where('sha').anyOf(shas).primaryKeys()) as Sha256[]),
    unnamed: (isHeld) =>
      db.transaction('r', db.tail, db.pages, db.meta, db.pictures, async () => {
        const named = new Set<Sha256>();
        await db.tail.each(({ text }) => namesIn(text, named));
        await db.pages.each(({ text }) => namesIn(text, named));
        await db.meta
          .where('key')
          .startsWith(REPLACED)
          .each(({ value }) => namesIn(String(value), named));
        const all = (await db.pictures.toCollection().primaryKeys()) as Sha256[];
        return all.filter((sha) => !named.has(sha) && !isHeld(sha));
      }),
  };
}
