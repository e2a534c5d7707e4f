import { Dexie, type EntityTable } from 'dexie';

/** One action: its entries as a JSON array, in one row, so that an action is there whole or not at all. */
export interface TailRow {
  /** Id of its first entry. */
  readonly id: string;
  readonly text: string;
}

/** A few hundred older entries, as a JSON array. */
export interface PageRow {
  readonly id: string;
  readonly last: string;
  readonly count: number;
  readonly text: string;
}

/** All things of one noun as of the last sealed entry, as a JSON array; `studio` holds the studio's own fields. */
export interface ShelfRow {
  readonly noun: string;
  readonly text: string;
}

export interface PictureRow {
  readonly sha: string;
  readonly type: string;
  /** ArrayBuffers rather than Blobs: Safari has lost blobs kept in IndexedDB. */
  readonly bytes: ArrayBuffer;
}

export interface MetaRow {
  readonly key: string;
  readonly value: unknown;
}

/** Before the keys in `meta` of the pages of a studio that another one was put in the place of. */
export const REPLACED = 'replaced:';

/** The key in `meta` of how often the studio here was put in another's place. */
export const GENERATION = 'generation';

/** What the second copy put back, under `Keeper.recall`, until somebody has read of it. */
export const RESCUED = 'rescued';

/** Raised when older code must not open the database any more. Dexie itself opens a newer one without a word. */
export const CODE_VERSION = 1;

/** The schema only grows: a version that was released is never edited, a new one is added below it. */
export class MouldkeepDb extends Dexie {
  declare tail: EntityTable<TailRow, 'id'>;
  declare pages: EntityTable<PageRow, 'id'>;
  declare shelf: EntityTable<ShelfRow, 'noun'>;
  declare pictures: EntityTable<PictureRow, 'sha'>;
  declare thumbs: EntityTable<PictureRow, 'sha'>;
  declare meta: EntityTable<MetaRow, 'key'>;

  constructor(name: string) {
    super(name, { chromeTransactionDurability: 'strict' });
    this.version(1).stores({ tail: 'id', pages: 'id, last', shelf: 'noun', pictures: 'sha', thumbs: 'sha', meta: 'key' });
  }
}
