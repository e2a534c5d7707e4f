import { useState } from 'preact/hooks';
import { setUsual } from '../../actions/set-usual.ts';
import { isStanding } from '../../domain/filling.ts';
import { thingOf } from '../../domain/shelf.ts';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useToldHeight } from '../use-size.ts';
import { Button, LinkButton } from './button.tsx';
import { RetireSeveralSheet } from './retire-several-sheet.tsx';
import { sayOutcome } from './toast.tsx';

/** What can be done with several things. What stands nowhere is left out of a move. */
export function PickBar({ ids, onAll, onDone }: { ids: readonly string[]; onAll: () => void; onDone: () => void }) {
  const deps = useDeps();
  const shelf = useShelf();
  const [isRetiring, setRetiring] = useState(false);
  const bar = useToldHeight<HTMLFieldSetElement>('--picks-height');
  const things = ids.flatMap((id) => thingOf(shelf, id) ?? []).filter(({ noun }) => noun === 'place' || isStanding(noun));
  const movable = things.map(({ id }) => id);
  const settle = async () => {
    const outcome = await setUsual(deps, movable);
    if (sayOutcome(outcome, 'Where they stand now is their usual place.')) onDone();
  };
  return (
    <fieldset ref={bar} class="pick-bar" aria-label="With what is chosen">
      <strong role="status">{ids.length} chosen</strong>
      {movable.length > 0 && (
        <LinkButton look="main" href={to(['move'], { things: movable.join(',') })}>
          Move
        </LinkButton>
      )}
      {ids.length > 0 && <LinkButton href={to(['labels'], { things: ids.join(',') })}>Labels</LinkButton>}
      {things.some(({ at, usual }) => usual !== undefined && usual !== at) && (
        <Button onClick={() => void settle()}>This is their usual place</Button>
      )}
      {ids.length > 0 && <Button onClick={() => setRetiring(true)}>Retire…</Button>}
      <Button onClick={onAll}>All</Button>
      <Button onClick={onDone}>Done</Button>
      {isRetiring && <RetireSeveralSheet ids={ids} onDone={onDone} onClose={() => setRetiring(false)} />}
    </fieldset>
  );
}
