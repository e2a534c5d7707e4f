/** Pieces of which it is certain that at least `least`, and possible that up to `most`, are doubtful. */
export interface Pool {
  readonly total: number;
  readonly least: number;
  readonly most: number;
}

export const EMPTY_POOL: Pool = { total: 0, least: 0, most: 0 };

export function join(a: Pool, b: Pool): Pool {
  return { total: a.total + b.total, least: a.least + b.least, most: a.most + b.most };
}

/**
 * Pieces taken off a pool, and what is left, when nobody wrote down which ones: of k taken from n, no fewer than k − (n − least) can be
 * doubtful and no more than `most`. Pieces taken beyond what the pool held are of unknown origin and not reckoned.
 */
export function draw(pool: Pool, pieces: number): { readonly taken: Pool; readonly left: Pool } {
  const known = Math.min(pieces, pool.total);
  const taken = {
    total: pieces,
    least: Math.max(0, known - (pool.total - pool.least)),
    most: Math.min(known, pool.most),
  };
  const total = pool.total - known;
  return { taken, left: { total, least: Math.max(0, pool.least - known), most: Math.min(total, pool.most) } };
}

/** What of these pieces can be among so many of them. */
export function among(pool: Pool, pieces: number): Pool {
  return draw(pool, pieces).taken;
}
