import type { Day, Sha256 } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import type { Entry } from '../domain/entry.ts';
import { portraitOf } from '../domain/portrait.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { subjectOf } from '../domain/subject.ts';
import type { Units } from '../domain/units.ts';
import { historyOf } from './history.ts';

/** A picture of a thing, with the day it was put down and what happened then. */
export interface DatedPicture {
  readonly sha: Sha256;
  readonly on: Day;
  readonly day: string;
  readonly says: string;
  readonly isPortrait: boolean;
}

/** The pictures a thing has, oldest first; `entries` is its history. One that several entries name stands at the first of them. */
export function picturesInTime(shelf: Shelf, thing: Thing, entries: readonly Entry[], units: Units): readonly DatedPicture[] {
  const has = new Set([...(thing.pictures ?? []), ...(thing.looks ?? [])]);
  const portrait = portraitOf(shelf, thing);
  const found = new Map<Sha256, DatedPicture>();
  const oldestFirst = historyOf(
    shelf,
    [...entries].sort((a, b) => (a.on === b.on ? (a.id < b.id ? -1 : 1) : a.on < b.on ? -1 : 1)),
    units,
  );
  for (const { entry, says } of oldestFirst) {
    if (subjectOf(entry) !== thing.id) continue;
    for (const sha of entry.pictures ?? []) {
      if (!has.has(sha) || found.has(sha)) continue;
      found.set(sha, { sha, on: entry.on, day: dayInWords(entry.on), says, isPortrait: sha === portrait });
    }
  }
  return [...found.values()];
}
