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

export async function readPicture(db: MouldkeepDb, sha: Sha256): Promise<Blob | undefined> {
  return blobOf(await db.pictures.get(sha));
}

/** Reads thumbnails; those that a list asks for at once come with one look into the database. */
export function thumbReader(db: MouldkeepDb): (sha: Sha256) => Promise<Blob | undefined> {
  let asked: Sha256[] = [];
  let reading: Promise<readonly (PictureRow | undefined)[]> | undefined;
  return async (sha) => {
    const at = asked.push(sha) - 1;
    reading ??= Promise.resolve().then(() => {
      const shas = asked;
      asked = [];
      reading = undefined;
      return db.thumbs.bulkGet(shas);
    });
    return blobOf((await reading)[at]);
  };
}
