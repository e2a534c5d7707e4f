import type { DesignId } from './brand.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import { expectedLife } from './life.ts';
import type { Master, Mould, Shelf } from './shelf.ts';

interface OfDesign {
  readonly masters: readonly Master[];
  readonly moulds: readonly Mould[];
}

/** Living masters and production moulds of the designs that have an unsound master. */
export function byDesign(things: Shelf['things']): ReadonlyMap<DesignId, OfDesign> {
  const index = new Map<DesignId, { masters: Master[]; moulds: Mould[] }>();
  for (const master of things.master.values()) {
    if (master.design && !master.retired && isUnsound(master as Master)) index.set(master.design, { masters: [], moulds: [] });
  }
  if (index.size === 0) return index;
  for (const master of things.master.values()) if (master.design && !master.retired) index.get(master.design)?.masters.push(master as Master);
  for (const mould of things.mould.values()) {
    if (mould.design && !mould.retired && mould.purpose !== 'intermediate') index.get(mould.design)?.moulds.push(mould as Mould);
  }
  return index;
}

/** Its recorded state, or a later look, says that no good mould can be made from it. */
export function isUnsound(master: Master): boolean {
  return (master.state !== undefined && master.state !== 'sound') || master.grade === 'worn' || master.grade === 'failed';
}

function isSpent(mould: Mould, rules: Rules): boolean {
  if (mould.grade === 'worn' || mould.grade === 'failed') return true;
  const shots = expectedLife(mould, rules.studio).shots;
  return shots !== undefined && mould.shots >= shots.value;
}

const sameSize = (a: string | undefined, b: string | undefined) => a === undefined || b === undefined || a === b;

/** A master that is no longer sound, with no other for its design and size, while the moulds made for them wear out. */
export function masterFlags(master: Master, index: () => ReadonlyMap<DesignId, OfDesign>, rules: Rules): readonly Flag[] {
  if (master.retired || !master.design || !isUnsound(master)) return [];
  const of = index().get(master.design);
  if (!of || of.masters.some((other) => other.id !== master.id && sameSize(other.size, master.size) && !isUnsound(other))) return [];
  const moulds = of.moulds.filter((mould) => sameSize(mould.size, master.size));
  const spent = moulds.filter((mould) => isSpent(mould, rules)).length;
  if (moulds.length === 0 || spent === 0) return [];
  const left = moulds.length - spent;
  const state = master.state !== undefined && master.state !== 'sound' ? master.state : master.grade;
  const rest = left === 0 ? (spent === 1 ? 'its only mould is spent' : `all its ${spent} moulds are spent`) : `${spent} of its ${moulds.length} moulds ${spent === 1 ? 'is' : 'are'} spent`;
  const todo = left === 0 ? 'Find or make a new master: a good casting or a dressed wax can serve.' : 'Make a new master while a good mould is left: dress a wax from it.';
  return [flagOn(master, rules, 'master unsound', left === 0 ? 'act' : 'soon', `The master is ${state}, there is no other for this size, and ${rest}.`, todo)];
}
