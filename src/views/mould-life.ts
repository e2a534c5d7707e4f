import type { MouldId } from '../domain/brand.ts';
import { runsToFalseAlarm } from '../domain/drift.ts';
import type { WaxFault } from '../domain/fault.ts';
import { FAULT_CAUSES } from '../domain/fault-causes.ts';
import { isLivingMould, kindsLeftTo } from '../domain/last-of-kind.ts';
import type { LifeFrom } from '../domain/life.ts';
import { kindsInWords } from '../domain/made-kinds.ts';
import { sayCount, sayNumber } from '../domain/measure-words.ts';
import { exactInterval } from '../domain/proportion.ts';
import type { Mould, Shelf } from '../domain/shelf.ts';
import { chanceOfMore, type ShotsLeft, shotsLeft } from '../domain/survival/forecast.ts';
import { type Fate, fateOf } from '../domain/survival/lifetime.ts';
import type { Posterior } from '../domain/survival/posterior.ts';
import { expectedShotsOf, groupOf, livesByRubber, NOT_SAID, type RubberGroup } from '../domain/survival/rubber-lives.ts';
import type { Fact } from './mould-facts.ts';

/** What can be said of one mould's life before any sums are made. */
export interface MouldLife {
  readonly group: RubberGroup;
  /** Whether there is a life ahead to forecast, and a figure to begin from. */
  readonly isForecast: boolean;
  readonly shots: number;
  readonly expected?: number;
  /** What this mould counts for in the reckoning. */
  readonly counts: string;
  /** What every figure rests on. */
  readonly restsOn: string;
  readonly isLast?: string;
  readonly rejects?: Fact;
  /** How far a sign of rising rejects is to be trusted. */
  readonly trust?: string;
  /** Causes to try, when rejects are rising. */
  readonly causes: readonly { readonly fault: WaxFault; readonly causes: (typeof FAULT_CAUSES)[WaxFault] }[];
}

const FROM: Readonly<Record<LifeFrom, string>> = {
  'this mould': 'the figure set for this mould',
  'the studio': 'the studio’s own figure',
  memory: 'a figure from memory',
};

export function mouldLifeOf(shelf: Shelf, id: MouldId, isDrifting: boolean): MouldLife | undefined {
  const mould = shelf.things.mould.get(id) as Mould | undefined;
  if (!mould) return undefined;
  const group = groupOf(mould);
  const expected = expectedShotsOf(mould, shelf.studio);
  const last = kindsLeftTo(shelf, mould);
  const rejects = rejectFact(mould);
  return {
    group,
    isForecast: isLivingMould(mould) && expected !== undefined,
    shots: mould.shots,
    ...(expected ? { expected: expected.value } : {}),
    counts: countsFor(fateOf(mould), mould),
    restsOn: expected
      ? restsOn(shelf, group, expected)
      : 'Say which rubber it is, or how many shots you expect of it, and a forecast can be made.',
    ...(last.length > 0
      ? {
          isLast: `No other mould of ${kindsInWords(shelf, last)} is left, and no master to make one from. Keep a good wax or casting of it as a master while it lasts.`,
        }
      : {}),
    ...(rejects ? { rejects } : {}),
    ...(isDrifting ? { trust: trustIn(mould) } : {}),
    causes: isDrifting ? causesFor(mould) : [],
  };
}

function restsOn(shelf: Shelf, group: RubberGroup, expected: { readonly value: number; readonly from: LifeFrom }): string {
  const lives = livesByRubber(shelf).find((each) => each.group === group);
  const figure = `about ${sayNumber(expected.value)} shots expected (${FROM[expected.from]})`;
  if (!lives) return `From ${figure}; no mould of its rubber has been shot yet.`;
  return `From ${saidOfLives(group, lives.moulds, lives.ends)}, and ${figure}.`;
}

/** “14 moulds of platinum silicone, 9 still whole”. */
export function saidOfLives(group: RubberGroup, moulds: number, ends: number): string {
  const of = group === NOT_SAID ? 'moulds of unknown rubber' : `${moulds === 1 ? 'mould' : 'moulds'} of ${group}`;
  return `${sayNumber(moulds)} ${of}, ${ends === moulds ? 'none' : sayNumber(moulds - ends)} still whole`;
}

function countsFor(fate: Fate, mould: Mould): string {
  const shots = sayCount(mould.shots, 'shot');
  if (fate === 'end') return `In the reckoning of its rubber it counts as an end at ${shots}.`;
  if (fate === 'still whole') return `In the reckoning of its rubber it counts as still whole at ${shots}.`;
  return mould.shots === 0
    ? 'Without a shot it says nothing about its rubber yet.'
    : 'A dud says nothing about its rubber: it is left out of the reckoning.';
}

function rejectFact({ good, rejects }: Mould): Fact | undefined {
  const made = good + rejects;
  if (made === 0) return undefined;
  const { low, high } = exactInterval(rejects, made, 0.9);
  const percent = (share: number) => Math.round(100 * share);
  return {
    name: 'Rejects',
    says: `${percent(rejects / made)} % of ${sayNumber(made)} waxes; by chance alone its true share may be ${percent(low)} to ${percent(high)} % (90 %)`,
  };
}

/** By its record before the rise. */
function trustIn({ good, rejects, drift }: Mould): string {
  const before = good + rejects - (drift?.waxes ?? 0);
  const runs = runsToFalseAlarm(before > 0 ? (rejects - (drift?.rejects ?? 0)) / before : 0);
  return runs === undefined
    ? 'It spoils so many that a rise is hard to tell from chance.'
    : `Of a mould that is as ever, this is said by chance in less than 1 run of ${runs}.`;
}

/** The two faults it is thrown out for most. */
function causesFor(mould: Mould): MouldLife['causes'] {
  const worst = (Object.entries(mould.byFault ?? {}) as [WaxFault, number][]).sort((a, b) => b[1] - a[1]).slice(0, 2);
  return worst.map(([fault]) => ({ fault, causes: FAULT_CAUSES[fault] }));
}

export interface MouldForecast {
  readonly left: ShotsLeft;
  /** Chance of so many more sound shots, from 0 to 1. */
  chanceOf(more: number): number;
}

export function forecastOf(posterior: Posterior, shots: number, expected: number): MouldForecast {
  return { left: shotsLeft(posterior, shots, expected), chanceOf: (more) => chanceOfMore(posterior, shots, expected, more) };
}

/** A chance in words a caster can act on: never certain, never hopeless. */
export function sayChance(chance: number): string {
  const percent = Math.round(chance * 100);
  if (percent >= 99) return 'more than 98 in 100';
  if (percent <= 1) return 'less than 2 in 100';
  return `${percent} in 100`;
}

/** Shots left with their spread: two figures are as many as such a guess can bear. */
export function sayLeft({ low, middle, high }: ShotsLeft): { readonly middle: string; readonly range: string } {
  return { middle: `about ${sayNumber(rough(middle))}`, range: `${sayNumber(rough(low))} to ${sayNumber(rough(high))}` };
}

function rough(shots: number): number {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, shots))) - 1);
  return Math.floor(shots / unit) * unit;
}
