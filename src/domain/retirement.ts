import type { Noun } from './noun.ts';

/** Why a thing was taken out of use. The first two are ends of a mould's life; `dud` was never sound; the others say nothing about it. */
export const RETIREMENTS = [
  'worn out',
  'torn',
  'dud',
  'broken',
  'replaced',
  'used up',
  'done',
  'lost',
  'sold',
  'given away',
  'discontinued',
  'removed',
  'not wanted',
] as const;
export type Retirement = (typeof RETIREMENTS)[number];

/** Why a thing of each kind is taken out of use, as the trade says it; the likeliest first. */
export const REASONS: Readonly<Record<Noun, readonly Retirement[]>> = {
  place: ['removed', 'broken', 'replaced', 'given away', 'not wanted'],
  period: ['not wanted', 'replaced'],
  design: ['discontinued', 'replaced', 'not wanted'],
  master: ['lost', 'broken', 'worn out', 'replaced', 'sold', 'given away', 'not wanted'],
  mould: ['worn out', 'torn', 'dud', 'replaced', 'lost', 'given away', 'not wanted'],
  wax: ['discontinued', 'used up', 'replaced', 'given away', 'not wanted'],
  injector: ['sold', 'broken', 'worn out', 'replaced', 'given away'],
  injectedWax: ['used up', 'broken', 'lost', 'given away', 'not wanted'],
  casting: ['used up', 'sold', 'given away', 'lost', 'not wanted'],
  flask: ['worn out', 'lost', 'sold', 'given away', 'not wanted'],
  want: ['done', 'not wanted'],
};

/** Reasons after which a thing is no longer where its record says it stood. */
export const LEFT: readonly Retirement[] = ['lost', 'sold', 'given away', 'used up'];
