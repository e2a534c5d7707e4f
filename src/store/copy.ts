import type { Sha256 } from '../domain/brand.ts';
import type { Entry } from '../domain/entry.ts';
import type { Picture } from '../domain/picture.ts';
import { entriesOf, journalRows } from './pages.ts';
import type { MouldkeepDb } from './schema.ts';

/** The studio as it was at one moment, read a page and a picture at a time: never all of it is in memory. */
export interface StudioCopy {
  readonly device: string;
  readonly entries: number;
  /** Pictures that some entry names and this device has; names of them all. */
  readonly pictures: readonly Sha256[];
  /** Named by an entry, and not on this device. */
  readonly absent: number;
  /** Pages of the journal. Throws CopyMoved when the studio was replaced meanwhile. */
  pages(): AsyncGenerator<readonly Entry[]>;
  picture(sha: Sha256): Promise<Picture | undefined>;
}

const SHA = /"([0-9a-f]{64})"/g;

/** Names of all pictures that a row's text names. */
export function namesIn(text: string, into: Set<Sha256>): void {
  for (const [, sha] of text.matchAll(SHA)) into.add(sha as Sha256);
}

export async function copyStudio(db: MouldkeepDb, device: string): Promise<StudioCopy> {
  const rows = await journalRows(db);
  let entries = 0;
  const named = new Set<Sha256>();
  for await (const row of rows.read()) {
    entries += row.count ?? entriesOf(row).length;
    namesIn(row.text, named);
  }
  const here = new Set((await db.pictures.toCollection().primaryKeys()) as Sha256[]);
  const pictures = [...named].filter((sha) => here.has(sha)).sort();
  return {
    device,
    entries,
    pictures,
    absent: named.size - pictures.length,
    async *pages() {
      for await (const row of rows.read()) yield entriesOf(row);
    },
    async picture(sha) {
      const [whole, thumb] = await Promise.all([db.pictures.get(sha), db.thumbs.get(sha)]);
      return whole && { sha, type: whole.type, bytes: whole.bytes, thumb: thumb ?? { type: whole.type, bytes: whole.bytes } };
    },
  };
}
