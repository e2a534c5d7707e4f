/** One object as every store is given it. */
export interface Row {
  readonly id: string;
  readonly kind: string;
  readonly text: string;
}

export const TABLES = ['entries', 'things'] as const;
export type TableName = (typeof TABLES)[number];

/** A general local store, used as its own documentation recommends: its bulk call, its own settings for one tab. */
export interface Peer {
  readonly name: string;
  /** Opens the store of that name, empty or as it was left; everything that has to be read before work can begin counts. */
  open(name: string): Promise<PeerStore>;
}

export interface PeerStore {
  /** Resolves once all of them are written. */
  add(table: TableName, rows: readonly Row[]): Promise<void>;
  /** Every thing as an object in memory. */
  things(): Promise<readonly Row[]>;
  /** How many things have the word in their text. */
  find(word: string): Promise<number>;
  /** What logging a run writes: a new entry, and the changed mould. Resolves once it is written. */
  log(entry: Row, mould: Row): Promise<void>;
  close(): Promise<void>;
}
