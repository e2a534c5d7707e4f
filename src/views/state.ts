import type { MouldId } from '../domain/brand.ts';
import { isLastOfItsKind } from '../domain/last-of-kind.ts';
import type { Mould, Shelf, Thing } from '../domain/shelf.ts';
import { isUsedUp } from '../domain/spent.ts';

/** States a thing can be in, each with a shape and a colour of its own on screen. */
export type StateName = 'sound' | 'watch' | 'worn' | 'failed' | 'unknown' | 'intermediate' | 'retired' | 'away' | 'low' | 'last';

export interface State {
  readonly name: StateName;
  readonly word: string;
}

const LAST: State = { name: 'last', word: 'last of its kind' };

/** What to say of a thing at a glance, most telling first; empty for things that have no condition. */
export function statesOf(shelf: Shelf, thing: Thing): readonly State[] {
  const states: State[] = [];
  if (thing.retired) states.push({ name: 'retired', word: thing.retired.reason });
  if (isUsedUp(thing)) states.push({ name: 'retired', word: 'used up' });
  if (thing.noun === 'mould') states.push(...mouldStates(thing));
  if (thing.noun === 'mould' && isLastOfItsKind(shelf, thing as Mould)) states.push(LAST);
  if (thing.noun === 'master') states.push(...masterStates(thing));
  if (thing.at !== undefined && shelf.things.place.get(thing.at)?.kind === 'away') states.push({ name: 'away', word: 'away' });
  return states;
}

/** Only that a mould is the last of its kind, for rows that show no other state. */
export function lastState(shelf: Shelf, id: string): readonly State[] {
  const mould = shelf.things.mould.get(id as MouldId);
  return mould && isLastOfItsKind(shelf, mould) ? [LAST] : [];
}

function mouldStates(mould: Mould): readonly State[] {
  const grade: State = mould.grade ? { name: mould.grade, word: mould.grade } : { name: 'unknown', word: 'not looked at yet' };
  const states = mould.retired && !mould.grade ? [] : [grade];
  return mould.purpose === 'intermediate' ? [...states, { name: 'intermediate', word: 'intermediate' }] : states;
}

function masterStates(master: Thing<'master'>): readonly State[] {
  if (master.grade) return [{ name: master.grade, word: master.grade }];
  if (master.state === 'broken' || master.state === 'lost') return [{ name: 'failed', word: master.state }];
  return master.state ? [{ name: master.state, word: master.state }] : [];
}
