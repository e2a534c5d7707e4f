import type { Day, Grams, Millimetres, ThingId } from '../brand.ts';
import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { formProblem } from '../form-problem.ts';
import { descendantsOf } from '../lineage/descent.ts';
import { isKin, kinOf } from '../lineage/kin.ts';
import { sayLength } from '../measure-words.ts';
import { isProblem, type Problem, problem } from '../problem.ts';
import { type Shelf, type Thing, thingOf } from '../shelf.ts';
import { pairsOf } from '../size/learn.ts';
import { READINGS_KEPT, type Reading, sameDimension } from '../size/reading.ts';
import { titleOf } from '../title.ts';
import type { Units } from '../units.ts';
import { unconfirmed } from '../warning.ts';
import { allWritten, notAhead } from './written.ts';

export interface Measure {
  readonly of: ThingId;
  readonly sizes: readonly { readonly name: string; readonly mm: Millimetres }[];
  readonly grams?: Grams | undefined;
  readonly note?: string | undefined;
  readonly on?: Day | undefined;
  readonly units?: Units | undefined;
  readonly confirmed?: boolean | undefined;
}

/** Caliper readings of named dimensions, and a weight. A piece larger than what it came from is asked about: the caliper may be right. */
export function planMeasure(shelf: Shelf, desk: Desk, command: Measure): readonly Entry[] | Problem {
  const { of, sizes, grams, note, on, units, confirmed } = command;
  const thing = thingOf(shelf, of);
  if (!thing) return problem('This is no longer recorded.', 'Nothing has been written down; what you typed is still in the form.');
  const ahead = notAhead(on, desk.today);
  if (ahead) return ahead;
  if (sizes.length === 0 && grams === undefined) return formProblem({ sizes: 'Type at least one reading, or a weight.' });
  if (sizes.length > READINGS_KEPT) return formProblem({ sizes: `A thing keeps ${READINGS_KEPT} dimensions; these are ${sizes.length}.` });
  const twice = sizes.find(({ name }, at) => sizes.slice(at + 1).some((other) => sameDimension(other.name, name)));
  if (twice) return formProblem({ sizes: `“${twice.name}” is there twice. Give each dimension a name of its own.` });
  const entries = allWritten(
    [
      {
        ...desk.entry(),
        ...(on ? { on } : {}),
        kind: 'measured',
        of,
        sizes: sizes.length > 0 ? sizes : undefined,
        grams,
        note: note?.trim() || undefined,
      },
    ],
    units,
  );
  // What cannot be kept at all is not asked about first.
  return isProblem(entries) ? entries : (unconfirmed(impossible(shelf, thing, sizes, units), confirmed) ?? entries);
}

/** Wax and metal shrink: nothing comes out of a mould larger than what the mould was made from. */
function impossible(shelf: Shelf, thing: Thing, sizes: readonly Reading[], units: Units | undefined): readonly string[] {
  if (!isKin(thing)) return [];
  const above = pairsOf(shelf, thing, sizes)
    .filter((pair) => pair.childMm > pair.parentMm)
    .map(
      ({ name, childMm, parentMm, parent }) =>
        `${name}: ${sayLength(childMm, units)} is more than the ${sayLength(parentMm, units)} of ${titleOf(shelf, parent)}, which it came from.`,
    );
  const below = [...descendantsOf(shelf, thing.id)].flatMap((id) => {
    const child = kinOf(shelf, id);
    return child ? pairsOf(shelf, child).filter((pair) => pair.parent.id === thing.id) : [];
  });
  const smaller = below.flatMap(({ child, name, childMm }) => {
    const now = sizes.find((each) => sameDimension(each.name, name));
    return now && childMm > now.mm
      ? [
          `${name}: ${sayLength(now.mm, units)} is less than the ${sayLength(childMm, units)} of ${titleOf(shelf, child)}, which came from it.`,
        ]
      : [];
  });
  return [...above, ...smaller.slice(0, 3)];
}
