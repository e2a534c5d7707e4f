/** Lowest score first; equal scores by id, so that the order is always the same. */
export function ranked<T extends { readonly id: string }>(list: readonly T[], score: (each: T) => number): T[] {
  const scored = list.map((each) => ({ each, score: score(each) }));
  return scored.sort((a, b) => a.score - b.score || (a.each.id < b.each.id ? -1 : 1)).map(({ each }) => each);
}

export function total(parts: Readonly<Record<string, number>>): number {
  return Object.values(parts).reduce((sum, each) => sum + each, 0);
}
