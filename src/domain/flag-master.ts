import { mastersByDesign } from './by-design.ts';
import { type Flag, flagOn, type Rules } from './flag.ts';
import { isSameSize } from './last-of-kind.ts';
import { isSpentMould } from './life.ts';
import { kindsMade, mouldsMaking } from './made-kinds.ts';
import type { Master, Mould, Shelf } from './shelf.ts';

/** Its recorded state, or a later look, says that no good mould can be made from it. */
function isUnsound(master: Master): boolean {
  return (master.state !== undefined && master.state !== 'sound') || master.grade === 'worn' || master.grade === 'failed';
}

interface Judged {
  readonly basis: readonly unknown[];
  readonly flags: readonly Flag[];
}
const judged = new WeakMap<Master, Judged>();

/** A master that is no longer sound, with no other for its design and size, while the moulds made for them wear out. */
export function masterFlags(shelf: Shelf, master: Master, rules: Rules): readonly Flag[] {
  if (master.retired || !master.design || !isUnsound(master)) return [];
  const others = mastersByDesign(shelf).get(master.design) ?? [];
  const made = mouldsMaking(shelf, master.design);
  const before = judged.get(master);
  if (before && before.basis[0] === others && before.basis[1] === made && before.basis[2] === rules) return before.flags;
  const flags = judge(shelf, master, others, made, rules);
  judged.set(master, { basis: [others, made, rules], flags });
  return flags;
}

function judge(shelf: Shelf, master: Master, others: readonly Master[], made: readonly Mould[], rules: Rules): readonly Flag[] {
  if (others.some((other) => other.id !== master.id && !other.retired && isSameSize(other.size, master.size) && !isUnsound(other)))
    return [];
  const moulds = made.filter(
    (mould) =>
      !mould.retired &&
      mould.purpose !== 'intermediate' &&
      kindsMade(shelf, mould).some((each) => each.design === master.design && isSameSize(each.size, master.size)),
  );
  const spent = moulds.filter((mould) => isSpentMould(mould, rules.studio)).length;
  if (moulds.length === 0 || spent === 0) return [];
  const left = moulds.length - spent;
  const state = master.state !== undefined && master.state !== 'sound' ? master.state : master.grade;
  const rest =
    left === 0
      ? spent === 1
        ? 'its only mould is spent'
        : `all its ${spent} moulds are spent`
      : `${spent} of its ${moulds.length} moulds ${spent === 1 ? 'is' : 'are'} spent`;
  const todo =
    left === 0
      ? 'Find or make a new master: a good casting or a dressed wax can serve.'
      : 'Make a new master while a good mould is left: dress a wax from it.';
  return [
    flagOn(
      master,
      rules,
      'master unsound',
      left === 0 ? 'act' : 'soon',
      `The master is ${state}, there is no other for this size, and ${rest}.`,
      todo,
    ),
  ];
}
