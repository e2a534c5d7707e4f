import { useState } from 'preact/hooks';
import { joinJournal, type OpenedJournal } from '../../actions/join-journal.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { sayCount, sayNumber } from '../../domain/measure-words.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { Caution, ProblemNote } from './note.tsx';
import { Sheet } from './sheet.tsx';
import { say } from './toast.tsx';

const entries = (count: number) => sayCount(count, 'entry', 'entries');

/** What a saved journal would bring, before it is joined: there is no way back from that. */
export function JoinSheet({ journal, onClose }: { journal: OpenedJournal; onClose: () => void }) {
  const deps = useDeps();
  const { studio } = useShelf();
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<Problem | undefined>();
  const { header, fresh, days } = journal;
  const known = journal.entries.length - fresh;
  const isAnother = studio.name !== undefined && studio.name !== header.name;
  // While it is being joined the sheet stays: nothing could be called off any more.
  const close = () => {
    if (!isBusy) onClose();
  };

  async function join(): Promise<void> {
    setBusy(true);
    const outcome = await joinJournal(deps, journal);
    setBusy(false);
    if (isProblem(outcome)) return setProblem(outcome);
    onClose();
    say(`Joined: ${entries(outcome)} ${outcome === 1 ? 'was' : 'were'} new here.`);
  }

  return (
    <Sheet title="Join this journal?" onClose={close}>
      {problem && <ProblemNote problem={problem} />}
      <dl class="facts">
        <dt>Studio</dt>
        <dd>{header.name}</dd>
        <dt>It holds</dt>
        <dd>
          {entries(journal.entries.length)}
          {days && (days.from === days.to ? `, of ${dayInWords(days.from)}` : `, ${dayInWords(days.from)} to ${dayInWords(days.to)}`)}
        </dd>
        <dt>New here</dt>
        <dd>{sayNumber(fresh)}</dd>
        <dt>Known already</dt>
        <dd>{sayNumber(known)}</dd>
      </dl>
      {fresh === 0 ? (
        <p>Everything in it is here already.</p>
      ) : (
        <Caution>
          {isAnother && `The shelves here are those of ${studio.name}: the two would stand side by side from now on. `}
          What is joined stays: it cannot be taken back. Save your own journal first if you are not sure.
        </Caution>
      )}
      <div class="button-row">
        {fresh > 0 && (
          <Button look="main" disabled={isBusy} onClick={() => void join()}>
            {isBusy ? 'Joining…' : `Join ${entries(fresh)}`}
          </Button>
        )}
        <Button disabled={isBusy} onClick={close}>
          {fresh > 0 ? 'Leave it' : 'Close'}
        </Button>
      </div>
    </Sheet>
  );
}
