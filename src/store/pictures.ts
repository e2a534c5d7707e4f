import type { Sha256 } from '../domain/brand.ts';
import type { Picture } from '../domain/picture.ts';
import { type MouldkeepDb, type PictureRow, REPLACED } from './schema.ts';

export async function keepPictures(db: MouldkeepDb, pictures: readonly Picture[]): Promise<void> {
  await db.transaction('rw', db.pictures, db.thumbs, async () => {
    await db.pictures.bulkPut(pictures.map(({ sha, type, bytes }) => ({ sha, type, bytes })));
    await db.thumbs.bulkPut(pictures.map(({ sha, thumb }) => ({ sha, ...thumb })));
  });
}

/** Throws pictures away that no entry names. Gives those it threw away. */
export async function dropPictures(db: MouldkeepDb, shas: readonly Sha256[]): Promise<readonly Sha256[]> {
  return db.transaction('rw', db.tail, db.pages, db.meta, db.pictures, db.thumbs, async () => {
    const named = new Set<Sha256>();
    const look = ({ text }: { readonly text: string }) => {
      for (const sha of shas) if (text.includes(sha)) named.add(sha);
    };
    await db.tail.each(look);
    await db.pages.each(look);
    await db.meta
      .where('key')
      .startsWith(REPLACED)
      .each(({ value }) => look({ text: String(value) }));
    const dropped = shas.filter((sha) => !named.has(sha));
    await db.pictures.bulkDelete([...dropped]);
    await db.thumbs.bulkDelete([...dropped]);
    return dropped;
  });
}

function blobOf(row: PictureRow | undefined): Blob | undefined {
  return row ? new Blob([row.bytes], { type: row.type }) : undefined;
}

export async function readPicture(db: MouldkeepDb, sha: Sha256, size: 'whole' | 'thumb'): Promise<Blob | undefined> {
  return blobOf(await (size === 'whole' ? db.pictures : db.thumbs).get(sha));
}
