import type { Kin } from '../lineage/kin.ts';
import type { Shelf } from '../shelf.ts';
import { through } from '../slices.ts';
import { sizeBasis } from './basis.ts';
import type { Reading } from './reading.ts';
import { sameDimension } from './reading.ts';
import { lineUp, type Step } from './step.ts';

/** How far pieces out of one mould differ, relative, for each step. Common practice, no source. */
export const PIECE_SPREAD = 0.002;
/** What a caliper read by hand is good for, mm. Common practice, no source. */
export const CALIPER_MM = 0.03;
/** A piece that grew more than this, or lost more, relative: a slip of the caliper, which teaches nothing. */
const GROWN_MOST = 0.02;
const LOST_MOST = 0.3;

/** A thing and what it came from, measured at the same place. */
export interface Pair {
  readonly child: Kin;
  readonly parent: Kin;
  readonly name: string;
  readonly childMm: number;
  readonly parentMm: number;
  /** The steps between the two, from the child up. */
  readonly steps: readonly Step[];
}

/** The last readings of a thing; a master's length counts as one. */
export function readingsOf(thing: Kin): readonly Reading[] {
  const sizes = thing.measured?.sizes ?? [];
  if (thing.noun !== 'master' || thing.lengthMm === undefined || sizes.some(({ name }) => sameDimension(name, 'length'))) return sizes;
  return [...sizes, { name: 'length', mm: thing.lengthMm }];
}

/** The nearest thing above that was measured at the same place, for each reading of a thing. */
export function pairsOf(shelf: Shelf, thing: Kin, readings: readonly Reading[] = readingsOf(thing)): readonly Pair[] {
  if (readings.length === 0 || thing.noun === 'mould') return [];
  const pairs: Pair[] = [];
  const line = lineUp(shelf, thing);
  for (const { name, mm } of readings) {
    const steps: Step[] = [...(line[0]?.steps ?? [])];
    for (const above of line.slice(1)) {
      const reading = above.thing.noun === 'mould' ? undefined : readingsOf(above.thing).find((each) => sameDimension(each.name, name));
      if (reading) {
        pairs.push({ child: thing, parent: above.thing, name, childMm: mm, parentMm: reading.mm, steps });
        break;
      }
      steps.push(...above.steps);
    }
  }
  return pairs;
}

/**
 * What readings taught about each step, as the logarithm of its factor: jointly normal, since a casting measured against its master tells the
 * sum of two steps and not either.
 */
export class Learned {
  private readonly mean = new Map<string, number>();
  private readonly covariance = new Map<string, Map<string, number>>();
  private readonly counts = new Map<string, number>();
  private readonly taught = new Map<string, Step>();

  private know({ key, prior }: Step): void {
    if (this.mean.has(key)) return;
    const left = 1 - prior.percent / 100;
    this.mean.set(key, Math.log(left));
    this.covariance.set(key, new Map([[key, (prior.spread / 100 / left) ** 2]]));
  }

  /** Takes one reading in: the conjugate normal–normal update for y = Σ log-factors + noise, variance in (relative)². */
  take(steps: readonly Step[], logFactor: number, variance: number): void {
    for (const step of steps) {
      this.know(step);
      this.taught.set(step.key, step);
    }
    const gains = new Map<string, number>();
    for (const key of this.mean.keys()) gains.set(key, this.withSum(key, steps));
    const total = steps.reduce((sum, { key }) => sum + (gains.get(key) ?? 0), 0) + variance;
    const surprise = logFactor - this.sumOf(steps);
    for (const [key, gain] of gains) {
      this.mean.set(key, (this.mean.get(key) ?? 0) + (gain / total) * surprise);
      const row = this.covariance.get(key);
      for (const [other, theirs] of gains) if (gain !== 0 && theirs !== 0) row?.set(other, (row.get(other) ?? 0) - (gain * theirs) / total);
    }
    for (const key of new Set(steps.map((step) => step.key))) this.counts.set(key, (this.counts.get(key) ?? 0) + 1);
  }

  private sumOf(steps: readonly Step[]): number {
    return steps.reduce((sum, { key }) => sum + (this.mean.get(key) ?? 0), 0);
  }

  private withSum(key: string, steps: readonly Step[]): number {
    const row = this.covariance.get(key);
    return steps.reduce((sum, step) => sum + (row?.get(step.key) ?? 0), 0);
  }

  /** What steps one after another leave of a size: the factor, one relative standard deviation of a single piece, and the readings it rests on. */
  over(steps: readonly Step[]): { readonly factor: number; readonly relative: number; readonly readings: number } {
    for (const step of steps) this.know(step);
    const variance = steps.reduce((sum, { key }) => sum + this.withSum(key, steps), 0) + steps.length * PIECE_SPREAD ** 2;
    const readings = Math.max(0, ...steps.map(({ key }) => this.counts.get(key) ?? 0));
    return { factor: Math.exp(this.sumOf(steps)), relative: Math.sqrt(Math.max(0, variance)), readings };
  }

  /** Steps that readings told about. */
  steps(): readonly Step[] {
    return [...this.taught.values()];
  }

  readingsFor(key: string): number {
    return this.counts.get(key) ?? 0;
  }
}

/** Whether a reading can teach anything. */
export function isPlausible({ childMm, parentMm }: Pair): boolean {
  const left = childMm / parentMm;
  return left <= 1 + GROWN_MOST && left >= 1 - LOST_MOST;
}

interface Known {
  readonly basis: object;
  readonly learned: Learned;
}
const known: { last?: Known } = {};

/** Everything the studio's own readings teach; kept as long as nothing it rests on changes. */
export function learnedFrom(shelf: Shelf): Learned {
  const basis = sizeBasis(shelf);
  if (known.last?.basis !== basis) known.last = { basis, learned: learn(shelf) };
  return known.last.learned;
}

/** Makes `learnedFrom` ready, a slice at a time. */
export function* readyLearned(shelf: Shelf): Generator<void, void> {
  const basis = sizeBasis(shelf);
  if (known.last?.basis !== basis) known.last = { basis, learned: yield* learnInSlices(shelf) };
}

/** The same without looking whether it was reckoned before. */
export function learn(shelf: Shelf): Learned {
  return through(learnInSlices(shelf));
}

function* learnInSlices(shelf: Shelf): Generator<void, Learned> {
  const learned = new Learned();
  const { master, injectedWax, casting } = shelf.things;
  for (const thing of [...master.values(), ...injectedWax.values(), ...casting.values()] as readonly Kin[]) {
    for (const pair of pairsOf(shelf, thing)) {
      if (!isPlausible(pair) || pair.steps.length === 0) continue;
      const caliper = (CALIPER_MM / pair.childMm) ** 2 + (CALIPER_MM / pair.parentMm) ** 2;
      learned.take(pair.steps, Math.log(pair.childMm / pair.parentMm), pair.steps.length * PIECE_SPREAD ** 2 + caliper);
      yield;
    }
  }
  return learned;
}
