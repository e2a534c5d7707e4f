import { lookedAt } from '../../actions/mark-doubtful.ts';
import { thingOf } from '../../domain/shelf.ts';
import { titleOfId } from '../../domain/title.ts';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { Button, LinkButton } from './button.tsx';
import { SaveProblem } from './save-problem.tsx';

/** On the page of what was marked for a look: which mould made it, and that somebody looked. */
export function DoubtNote({ id }: { id: string }) {
  const deps = useDeps();
  const shelf = useShelf();
  const save = useSave();
  const thing = thingOf(shelf, id);
  if (!thing || !('doubt' in thing) || !thing.doubt) return null;
  const { mould } = thing.doubt;
  return (
    <section class="card">
      <h2>Marked for a look</h2>
      <SaveProblem save={save} />
      <p>
        Some of it came from <a href={to(['mould', mould])}>{titleOfId(shelf, mould)}</a> when that mould may have been failing.
      </p>
      <div class="button-row">
        <Button
          look="main"
          onClick={() =>
            save.run(
              () => lookedAt(deps, thing.id),
              () => 'Looked at: it is no longer in doubt.',
            )
          }
        >
          They were looked at
        </Button>
        <LinkButton href={to(['trace', mould])}>What else came from it</LinkButton>
      </div>
    </section>
  );
}
