import { useState } from 'preact/hooks';
import { saveLists } from '../../actions/save-lists.ts';
import { isProblem } from '../../domain/problem.ts';
import { useDeps } from '../studio.tsx';
import { spelt } from '../words.ts';
import { Button, LinkButton } from './button.tsx';
import { say, sayProblem } from './toast.tsx';

/** The studio as tables, out and in. */
export function ListsCard() {
  const deps = useDeps();
  const [isBusy, setBusy] = useState(false);

  async function save(): Promise<void> {
    setBusy(true);
    const outcome = await saveLists(deps, (text) => spelt(text, deps.keeper.shelf()));
    setBusy(false);
    if (isProblem(outcome)) sayProblem(outcome);
    else if (outcome) say('The lists were handed over.');
  }

  return (
    <section class="card">
      <h2>Lists</h2>
      <p>
        Every kind of thing as a table for a spreadsheet, in one zip. The tables come in again by “Bring in my list”; what happened to each
        thing, and its photographs, are only in the backup.
      </p>
      <div class="button-row">
        <Button disabled={isBusy} onClick={() => void save()}>
          {isBusy ? 'Writing…' : 'Take the whole studio as lists'}
        </Button>
        <LinkButton href="#/bring-in">Bring in my list</LinkButton>
      </div>
    </section>
  );
}
