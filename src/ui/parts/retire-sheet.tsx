import { retire } from '../../actions/retire.ts';
import { REASONS } from '../../domain/retirement.ts';
import type { Thing } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button } from './button.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';

/** Takes a thing out of use: one tap on the reason. */
export function RetireSheet({ thing, onClose }: { thing: Thing; onClose: () => void }) {
  const deps = useDeps();
  const save = useSave();
  const title = titleOf(useShelf(), thing);
  const means =
    thing.noun === 'place'
      ? 'Its history stays. Once nothing is left in it, it goes from the shelves.'
      : 'It keeps its history, is offered nowhere any more, and asks for no attention.';
  return (
    <Sheet title="Retire it: why?" onClose={onClose}>
      <p>{means}</p>
      <SaveProblem save={save} anyway="Retire it all the same" />
      <div class="sheet-list">
        {REASONS[thing.noun].map((reason) => (
          <Button
            key={reason}
            disabled={save.isBusy}
            onClick={() =>
              save.run(
                (confirmed) => retire(deps, { of: thing.id, reason, confirmed }),
                () => {
                  onClose();
                  return `${title} is retired: ${reason}.`;
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
