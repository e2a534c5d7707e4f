import { useEffect, useState } from 'preact/hooks';
import { takeBack } from '../../actions/take-back.ts';
import type { ThingId } from '../../domain/brand.ts';
import type { Entry } from '../../domain/entry.ts';
import { problem } from '../../domain/problem.ts';
import { type HistoryLine, historyOf } from '../../views/history.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { useUnits } from '../use-units.ts';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';
import { Thumbs } from './photos.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';
import { TakeList } from './take-list.tsx';

const FIRST = 12;

/** What happened to a thing, newest first; each line can be taken back. */
export function History({ id }: { id: ThingId }) {
  const { keeper } = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const [wanted, setWanted] = useState(FIRST);
  const [read, setRead] = useState<{ readonly entries: readonly Entry[]; readonly isMore: boolean } | undefined>();
  const [asked, setAsked] = useState<HistoryLine | undefined>();
  const [isBroken, setBroken] = useState(false);
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    const left = new AbortController();
    const unlessLeft = (job: () => void) => !left.signal.aborted && job();
    keeper.history(id, wanted, left.signal).then(
      (history) =>
        unlessLeft(() => {
          setRead(history);
          setBroken(false);
        }),
      () => unlessLeft(() => setBroken(true)),
    );
    return () => left.abort();
  }, [keeper, id, wanted, shelf, attempt]);
  if (isBroken) return <Unread onAgain={() => setAttempt(attempt + 1)} />;
  if (!read) return <p class="wait">Reading the history…</p>;
  const lines = historyOf(shelf, read.entries.slice(0, wanted), units, id);
  return (
    <section aria-label="History">
      <h2 class="section">History</h2>
      {lines.length === 0 && <p>Nothing has been written down about it yet.</p>}
      <ol class="history">
        {lines.map((line) => (
          <Line key={line.id} line={line} onAsk={() => setAsked(line)} />
        ))}
      </ol>
      {(read.isMore || read.entries.length > wanted) && <Button onClick={() => setWanted(wanted * 3)}>Show older lines</Button>}
      {lines.length > 0 && <TakeList shown={{ of: 'history', thing: id }} what="the history" />}
      {asked && <TakeBack line={asked} onClose={() => setAsked(undefined)} />}
    </section>
  );
}

function Unread({ onAgain }: { onAgain: () => void }) {
  return (
    <section aria-label="History">
      <h2 class="section">History</h2>
      <ProblemNote problem={problem('The history could not be read.', 'The counts and the place above are as they were last written.')} />
      <Button onClick={onAgain}>Try again</Button>
    </section>
  );
}

function Line({ line, onAsk }: { line: HistoryLine; onAsk: () => void }) {
  return (
    <li class="history-line">
      <p class="history-day">
        <time dateTime={line.entry.on}>{line.day}</time>
        {line.by && <span> · {line.by}</span>}
      </p>
      <p>{line.says}</p>
      {line.note && (
        <p class="history-note" translate={false}>
          “{line.note}”
        </p>
      )}
      <Thumbs pictures={line.pictures} what={line.says} />
      <Button look="quiet" class="history-undo" aria-label={`Take back: ${line.day}, ${line.says}`} onClick={onAsk}>
        Take back
      </Button>
    </li>
  );
}

function TakeBack({ line, onClose }: { line: HistoryLine; onClose: () => void }) {
  const deps = useDeps();
  const save = useSave();
  return (
    <Sheet title="Take this back?" onClose={onClose}>
      <p>
        {line.day}: {line.says}
      </p>
      <p>The counts and the place go back to what they would be without it. What was written down in the same go is taken back with it.</p>
      <SaveProblem save={save} anyway="Take it back all the same" />
      <div class="button-row">
        <Button
          look="main"
          disabled={save.isBusy}
          onClick={() =>
            save.run(
              (confirmed) => takeBack(deps, { entry: line.entry, confirmed }),
              () => {
                onClose();
                return 'Taken back.';
              },
            )
          }
        >
          Take it back
        </Button>
        <Button onClick={onClose}>Leave it</Button>
      </div>
    </Sheet>
  );
}
