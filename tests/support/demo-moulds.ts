import { insteadOf } from '../../src/domain/instead.ts';
import { runWarnings } from '../../src/domain/plans/run-warnings.ts';
import type { Mould, Shelf } from '../../src/domain/shelf.ts';
import { titleOf } from '../../src/domain/title.ts';
import { SI_UNITS } from '../../src/domain/units.ts';
import { runFormOf } from '../../src/views/run-form.ts';
import { shelf } from '../demo-data/read-demo.ts';

/** The demo studio's shelf, as it is before anything is done to it. */
export const demoShelf: Shelf = shelf;

/** The first mould of the demo studio that fits. */
export function demoMould(what: string, fits: (mould: Mould) => boolean): Mould {
  const found = [...shelf.things.mould.values()].find(fits);
  if (!found) throw new Error(`the demo studio has no mould ${what}`);
  return found;
}

const inCabinet = (mould: Mould) => mould.at !== undefined && shelf.things.place.get(mould.at)?.kind === 'drawer';
const isInUse = (mould: Mould) => !mould.retired && mould.grade === 'sound' && mould.purpose === 'production' && inCabinet(mould);

/** Whether what its form offers for the next run is nothing to be warned of. */
const runsPlainly = (mould: Mould) => runWarnings(shelf, mould, runFormOf(shelf, mould.id, SI_UNITS)?.offered ?? {}).length === 0;

/** In use, in its drawer, from a master that is known, with runs behind it, the next one as usual, and with another mould to use instead. */
export const workingMould = demoMould(
  'in use',
  (mould) =>
    isInUse(mould) &&
    mould.runs !== undefined &&
    mould.master !== undefined &&
    runsPlainly(mould) &&
    insteadOf(shelf, mould.id).moulds.length > 0,
);
export const otherMould = demoMould('besides', (mould) => isInUse(mould) && mould.id !== workingMould.id && mould.at === workingMould.at);
export const failedMould = demoMould('that failed', (mould) => mould.grade === 'failed' && !mould.retired && inCabinet(mould));
/** The only one of its design and size, with a master. */
export const loneMould = demoMould('that is the only one', (mould) => {
  const instead = insteadOf(shelf, mould.id);
  return isInUse(mould) && instead.moulds.length === 0 && instead.masters.length > 0;
});

export const titleOfMould = (mould: Mould) => titleOf(shelf, mould);
