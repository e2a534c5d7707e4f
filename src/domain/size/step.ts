import type { MouldId } from '../brand.ts';
import type { Metal } from '../design.ts';
import { parentsOf } from '../lineage/descent.ts';
import { type Kin, kinOf } from '../lineage/kin.ts';
import type { Mould, Shelf } from '../shelf.ts';
import type { StudioFields } from '../studio.ts';
import { titleOf } from '../title.ts';
import { type Allowance, allowanceFor, UNKNOWN_METAL, UNKNOWN_RUBBER } from './allowance.ts';
import { compound } from './compound.ts';

/** One step in which a piece loses size. Steps with the same key have one allowance, which readings teach. */
export interface Step {
  readonly key: string;
  readonly says: string;
  /** What is expected before anybody measured. */
  readonly prior: Allowance;
}

/** A mould's usual wax: the one it wants, else that of its last run. */
export function usualWax(mould: Mould): string | undefined {
  return mould.wax ?? mould.runs?.at(-1)?.wax;
}

function rubberAllowance(studio: StudioFields, mould: Mould | undefined): Allowance {
  return mould?.rubber ? allowanceFor(studio, mould.rubber) : UNKNOWN_RUBBER;
}

/** Rubber and wax together: a caliper on the wax cannot tell them apart. */
export function waxStep(shelf: Shelf, mould: Mould | undefined, wax: string | undefined): Step {
  const name = wax ? titleOf(shelf, shelf.things.wax.get(wax as never)) : 'wax';
  const { percent, factor, relative } = compound([rubberAllowance(shelf.studio, mould), allowanceFor(shelf.studio, 'wax')]);
  return {
    key: `${mould?.rubber ?? '?'}+${wax ?? '?'}`,
    says: `${mould?.rubber ?? 'rubber not known'} and ${name}`,
    prior: { percent, spread: relative * factor * 100 },
  };
}

function rubberStep(shelf: Shelf, mould: Mould | undefined): Step {
  const rubber = mould?.rubber ?? '?';
  return { key: `${rubber} alone`, says: mould?.rubber ?? 'rubber not known', prior: rubberAllowance(shelf.studio, mould) };
}

export function metalStep({ studio }: Shelf, metal: Metal | undefined): Step {
  return { key: `metal ${metal ?? '?'}`, says: metal ?? 'metal not known', prior: metal ? allowanceFor(studio, metal) : UNKNOWN_METAL };
}

function dressingStep({ studio }: Shelf): Step {
  return { key: 'dressing', says: 'dressing', prior: allowanceFor(studio, 'dressing') };
}

/** Whether a mould's pieces are metal poured straight into it, so that there is no wax on the way. */
export function isPoured(shelf: Shelf, mould: Mould | undefined): boolean {
  return mould?.design !== undefined && shelf.things.design.get(mould.design)?.route === 'poured in the mould';
}

/** From a mould's master to a casting out of it. */
export function castingSteps(shelf: Shelf, mould: Mould | undefined, metal: Metal | undefined): readonly Step[] {
  const first = isPoured(shelf, mould) ? rubberStep(shelf, mould) : waxStep(shelf, mould, mould && usualWax(mould));
  return [first, metalStep(shelf, metal)];
}

/**
 * A thing's own steps below what it came from. A master made from a mould is that mould's wax, dressed (or its casting); one made from a
 * casting is the casting. What was built from several pieces is told from the first.
 */
export function ownSteps(shelf: Shelf, thing: Kin): readonly Step[] {
  const mouldOf = (id: string | undefined) => (id ? shelf.things.mould.get(id as MouldId) : undefined);
  switch (thing.noun) {
    case 'mould':
      return [];
    case 'injectedWax': {
      const mould = mouldOf(thing.mould);
      const wax = thing.wax ?? (mould && usualWax(mould));
      return [waxStep(shelf, mould, wax), ...(thing.state === 'dressed' ? [dressingStep(shelf)] : [])];
    }
    case 'casting':
      return castingSteps(shelf, mouldOf(thing.mould), thing.metal);
    case 'master': {
      const [first] = parentsOf(shelf, thing);
      const parent = first ? kinOf(shelf, first) : undefined;
      if (parent?.noun === 'mould') {
        if (thing.kind === 'casting') return castingSteps(shelf, parent, undefined);
        return [waxStep(shelf, parent, usualWax(parent)), dressingStep(shelf)];
      }
      if (parent?.noun === 'casting' || parent === undefined) return [];
      return parent.noun === 'injectedWax' && parent.state === 'dressed' ? [] : [dressingStep(shelf)];
    }
  }
}

/** A thing and what it came from, nearest first, each with its own steps; the last is where its records begin. */
export function lineUp(shelf: Shelf, thing: Kin): readonly { readonly thing: Kin; readonly steps: readonly Step[] }[] {
  const line: { thing: Kin; steps: readonly Step[] }[] = [];
  for (let at: Kin | undefined = thing; at !== undefined; ) {
    line.push({ thing: at, steps: ownSteps(shelf, at) });
    const [first] = parentsOf(shelf, at) as readonly [string?];
    at = first === undefined ? undefined : kinOf(shelf, first);
  }
  return line;
}

/** Above a thing, what was built from several pieces, and the first of them, whose size it is taken to have. */
export function sizeTakenFrom(
  shelf: Shelf,
  thing: Kin,
): readonly { readonly built: Kin; readonly from: string; readonly pieces: number }[] {
  return lineUp(shelf, thing).flatMap(({ thing: built }) => {
    const parents = parentsOf(shelf, built);
    const [from] = parents;
    return built.noun === 'master' && from !== undefined && parents.length > 1 ? [{ built, from, pieces: parents.length }] : [];
  });
}
