/** A caliper reading of a named dimension, mm. */
export interface Reading {
  readonly name: string;
  readonly mm: number;
}

/** Dimensions a thing keeps its last reading of. */
export const READINGS_KEPT = 40;

/** “Length” and “length” are one dimension. */
export function sameDimension(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}

/** The last reading of each dimension; the newest come last, and the oldest go when there are too many. */
export function withReadings(before: readonly Reading[], after: readonly Reading[]): readonly Reading[] {
  const all = [...before, ...after];
  return all.filter(({ name }, at) => !all.slice(at + 1).some((later) => sameDimension(later.name, name))).slice(-READINGS_KEPT);
}
