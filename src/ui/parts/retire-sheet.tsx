import { useState } from 'preact/hooks';
import { clearPlace } from '../../actions/clear-place.ts';
import { retire } from '../../actions/retire.ts';
import type { PlaceId } from '../../domain/brand.ts';
import { beside } from '../../domain/form-problem.ts';
import { leftIn } from '../../domain/plans/emptied.ts';
import { REASONS } from '../../domain/retirement.ts';
import type { Mould, Thing } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { heldIn } from '../../views/drawing-holds.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button } from './button.tsx';
import { MouldStakes } from './mould-stakes.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';
import { ThingPicker } from './thing-picker.tsx';

/** Takes a thing out of use: one tap on the reason. */
export function RetireSheet({ thing, onClose }: { thing: Thing; onClose: () => void }) {
  const deps = useDeps();
  const shelf = useShelf();
  const title = titleOf(shelf, thing);
  const [goes, setGoes] = useState('');
  const save = useSave({ to: goes });
  const left = thing.noun === 'place' ? leftIn(shelf, thing) : undefined;
  const isFull = left !== undefined && left.things.length + left.places.length > 0;
  const means =
    thing.noun === 'place'
      ? 'Its history stays. Once nothing is left in it, it goes from the shelves.'
      : 'It keeps its history, is offered nowhere any more, and asks for no attention.';
  return (
    <Sheet title="Retire it: why?" onClose={onClose}>
      {left && isFull && thing.noun === 'place' ? (
        <>
          <p>
            <strong>
              {title} holds {heldIn(shelf, [thing.id]).says}.
            </strong>{' '}
            Say where it goes, then why: both are done in one go.
          </p>
          <ThingPicker
            label="Where does it all go?"
            nouns={['place']}
            value={goes}
            problem={beside(save.problem, 'to')}
            onPick={setGoes}
            {...(left.things.length === 0 ? { hint: 'Left empty, it stands in no room.' } : {})}
          />
        </>
      ) : (
        <p>{means}</p>
      )}
      {thing.noun === 'mould' && <MouldStakes mould={thing as Mould} />}
      <SaveProblem save={save} anyway="Retire it all the same" />
      <div class="sheet-list">
        {REASONS[thing.noun].map((reason) => (
          <Button
            key={reason}
            disabled={save.isBusy}
            onClick={() =>
              save.run(
                (confirmed) =>
                  thing.noun === 'place' && (goes !== '' || left?.things.length === 0)
                    ? clearPlace(deps, { of: thing.id, to: (goes || undefined) as PlaceId | undefined, reason })
                    : retire(deps, { of: thing.id, reason, confirmed }),
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
