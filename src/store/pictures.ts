import type { Sha256 } from '../domain/brand.ts';
import type { MouldkeepDb, PictureRow } from './schema.ts';

/** A picture ready to be kept: re-encoded, without what a camera adds, and its thumbnail. */
export interface Picture {
  readonly sha: Sha256;
  readonly type: string;
  readonly bytes: ArrayBuffer;
  readonly thumb: { readonly type: string; readonly bytes: ArrayBuffer };
}

export async function keepPictures(db: MouldkeepDb, pictures: readonly Picture[]): Promise<void> {
  await db.transaction('rw', db.pictures, db.thumbs, async () => {
    await db.pictures.bulkPut(pictures.map(({ sha, type, bytes }) => ({ sha, type, bytes })));
    await db.thumbs.bulkPut(pictures.map(({ sha, thumb }) => ({ sha, ...thumb })));
  });
}

function blobOf(row: PictureRow | undefined): Blob | undefined {
  return row ? new Blob([row.bytes], { type: row.type }) : undefined;
}

export async function readPicture(db: MouldkeepDb, sha: Sha256, size: 'whole' | 'thumb'): Promise<Blob | undefined> {
  return blobOf(await (size === 'whole' ? db.pictures : db.thumbs).get(sha));
}
