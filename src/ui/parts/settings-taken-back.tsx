import { useState } from 'preact/hooks';
import { type TakenBack, takenBackLately } from '../../actions/taken-back.ts';
import { withdraw } from '../../actions/withdraw.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { problem } from '../../domain/problem.ts';
import { sayTakenBack } from '../../views/taken-back.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { Button } from './button.tsx';
import { sayOutcome, sayProblem } from './toast.tsx';

/** What was taken back lately, each to be done again: the message that offers that is gone after some seconds. */
export function TakenBackCard() {
  const deps = useDeps();
  const [found, setFound] = useState<readonly TakenBack[] | 'looking' | undefined>();
  const look = () =>
    takenBackLately(deps).then(setFound, () => {
      setFound(undefined);
      sayProblem(problem('What was taken back could not be read.', 'Nothing was changed. Load the page again and try once more.'));
    });
  const doAgain = async ({ by }: TakenBack) => {
    if (sayOutcome(await withdraw(deps, by.step ?? by.id), 'Done again.')) await look();
  };
  const shown = found === 'looking' ? undefined : found;
  return (
    <section class="card">
      <h2>Taken back</h2>
      <p>Whatever was taken back, by Undo or in a history, stays in the journal and can be done again.</p>
      {shown?.length === 0 && <p>Of the last few thousand entries nothing is taken back.</p>}
      {shown && shown.length > 0 && (
        <ol class="history">
          {shown.map((each) => (
            <TakenBackLine key={each.by.id} taken={each} onAgain={() => void doAgain(each)} />
          ))}
        </ol>
      )}
      <Button
        disabled={found === 'looking'}
        onClick={() => {
          setFound('looking');
          void look();
        }}
      >
        {found === 'looking' ? 'Looking…' : 'Show what was taken back lately'}
      </Button>
    </section>
  );
}

function TakenBackLine({ taken: { by, action }, onAgain }: { taken: TakenBack; onAgain: () => void }) {
  const says = sayTakenBack(useShelf(), action, useUnits());
  return (
    <li class="history-line">
      <p class="history-day">
        Taken back on <time dateTime={by.on}>{dayInWords(by.on)}</time>
      </p>
      <p translate={false}>{says}</p>
      <Button look="quiet" class="history-undo" aria-label={`Do it again: ${says}`} onClick={onAgain}>
        Do it again
      </Button>
    </li>
  );
}
