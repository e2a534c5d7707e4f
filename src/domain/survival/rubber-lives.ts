import { expectedLife, type LifeFrom } from '../life.ts';
import { RUBBERS, type Rubber } from '../mould.ts';
import type { Mould, Shelf } from '../shelf.ts';
import type { StudioFields } from '../studio.ts';
import type { LivesToSum } from './life-sums.ts';
import { type Lifetime, lifetimeOf } from './lifetime.ts';

/** Moulds of which nobody said the rubber are kept together. */
export const NOT_SAID = 'not said';
export const RUBBER_GROUPS = [...RUBBERS, NOT_SAID] as const;
export type RubberGroup = Rubber | typeof NOT_SAID;

export const groupOf = (mould: Mould): RubberGroup => mould.rubber ?? NOT_SAID;

/** What the studio's moulds of one rubber say about it. */
export interface RubberLives extends LivesToSum {
  readonly group: RubberGroup;
  /** Tells the sums of these lives from all others. */
  readonly key: string;
  readonly moulds: number;
  readonly ends: number;
}

/** Shots a mould is expected to last, and where the figure is from; undefined when nothing is known of its rubber. */
export function expectedShotsOf(mould: Mould, studio: StudioFields): { readonly value: number; readonly from: LifeFrom } | undefined {
  return expectedLife(mould, studio).shots;
}

const known = new WeakMap<Shelf['things']['mould'], { readonly studio: StudioFields; readonly lives: readonly RubberLives[] }>();

type Lived = Pick<Shelf, 'things' | 'studio'>;

const knownFor = ({ things, studio }: Lived): readonly RubberLives[] | undefined => {
  const before = known.get(things.mould);
  return before?.studio === studio ? before.lives : undefined;
};

/** Whether `livesByRubber` has its answer ready. */
export const areLivesKnown = (shelf: Lived): boolean => knownFor(shelf) !== undefined;

/**
 * The lives of each rubber's moulds, rubbers without any left out. Moulds of one rubber are taken to wear alike in parts of the shots each
 * is expected to last, so that one with a figure of its own teaches the others too.
 */
export function livesByRubber(shelf: Lived): readonly RubberLives[] {
  const slices = livesInSlices(shelf);
  while (!slices.next().done);
  return knownFor(shelf) ?? [];
}

/** Moulds looked at between two breaths. */
const SLICE = 100;

/** The same a slice at a time, for a page that must not be held up: `livesByRubber` answers at once when it is through. */
export function* livesInSlices({ things, studio }: Lived): Generator<void, void> {
  if (areLivesKnown({ things, studio })) return;
  let looked = 0;
  const groups = new Map<RubberGroup, { readonly lives: Lifetime[]; readonly expected: number[] }>();
  for (const mould of things.mould.values()) {
    looked += 1;
    if (looked % SLICE === 0) yield;
    const life = lifetimeOf(mould as Mould);
    const expected = life && expectedShotsOf(mould as Mould, studio)?.value;
    if (!expected) continue;
    const group = groups.get(groupOf(mould as Mould));
    if (group) {
      group.lives.push(life);
      group.expected.push(expected);
    } else groups.set(groupOf(mould as Mould), { lives: [life], expected: [expected] });
  }
  const lives: RubberLives[] = [];
  for (const group of RUBBER_GROUPS) {
    const found = groups.get(group);
    if (!found) continue;
    lives.push(summed(group, found));
    yield;
  }
  known.set(things.mould, { studio, lives });
}

function summed(group: RubberGroup, { lives, expected }: LivesToSum): RubberLives {
  const key = keyOf({ lives, expected });
  return { group, key, lives, expected, moulds: lives.length, ends: lives.filter(({ isEnd }) => isEnd).length };
}

/** Two sums of 32 bits over all figures in order (FNV-1a and a like one): cheaper by far than the figures themselves, and never the same by chance. */
function keyOf({ lives, expected }: LivesToSum): string {
  let a = 0x811c9dc5;
  let b = 0x9e3779b9;
  for (let i = 0; i < lives.length; i++) {
    const { shots, isEnd } = lives[i] as Lifetime;
    for (const figure of [shots * 2 + (isEnd ? 1 : 0), expected[i] as number]) {
      a = Math.imul(a ^ figure, 0x01000193);
      b = Math.imul(b ^ (b >>> 15) ^ figure, 0x85ebca6b);
    }
  }
  return `${lives.length} ${a >>> 0} ${b >>> 0}`;
}

/** All rubbers together, for the curve over everything. */
export function allLives(rubbers: readonly RubberLives[]): LivesToSum & { readonly key: string } {
  return {
    key: rubbers.map(({ key }) => key).join('|'),
    lives: rubbers.flatMap(({ lives }) => lives),
    expected: rubbers.flatMap(({ expected }) => expected),
  };
}
