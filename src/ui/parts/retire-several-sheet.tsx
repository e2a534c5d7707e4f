import { retireMany } from '../../actions/retire-many.ts';
import type { ThingId } from '../../domain/brand.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { reasonsFor } from '../../domain/plans/retire-many.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button } from './button.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';

/** Takes several things out of use: one tap on the reason that fits them all. */
export function RetireSeveralSheet({ ids, onDone, onClose }: { ids: readonly string[]; onDone: () => void; onClose: () => void }) {
  const deps = useDeps();
  const shelf = useShelf();
  const save = useSave();
  const what = sayCount(ids.length, 'thing');
  const reasons = reasonsFor(shelf, ids);
  return (
    <Sheet title={`Retire ${what}: why?`} onClose={onClose}>
      <p>They keep their history, are offered nowhere any more, and ask for no attention.</p>
      <SaveProblem save={save} anyway="Retire them all the same" />
      {reasons.length === 0 && <p>No one reason fits them all. Choose things of one kind.</p>}
      <div class="sheet-list">
        {reasons.map((reason) => (
          <Button
            key={reason}
            disabled={save.isBusy}
            onClick={() =>
              save.run(
                (confirmed) => retireMany(deps, { things: ids as readonly ThingId[], reason, confirmed }),
                () => {
                  onDone();
                  return `${what} retired: ${reason}.`;
                },
              )
            }
          >
            {reason}
          </Button>
        ))}
      </div>
    </Sheet>
  );
}
