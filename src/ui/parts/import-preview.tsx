import { useMemo, useState } from 'preact/hooks';
import { bringIn, PREVIEW_OLD } from '../../actions/bring-in.ts';
import { saveUnreadable } from '../../actions/list-files.ts';
import { withdraw } from '../../actions/withdraw.ts';
import { type ImportPlan, isTaken, ROW_STATES, type RowState } from '../../domain/csv/plan.ts';
import type { Entry } from '../../domain/entry.ts';
import { sayNumber } from '../../domain/measure-words.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { importCounts } from '../../views/import-preview.ts';
import { useDeps } from '../studio.tsx';
import { Button, LinkButton } from './button.tsx';
import { ImportRow, STATE_WORDS, thingWords } from './import-row.tsx';
import { Mark } from './mark.tsx';
import { Empty, ProblemNote } from './note.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Screen } from './screen.tsx';

/** Rows drawn at once; drawing thousands would freeze a phone. */
const ROWS_SHOWN = 60;

/** Doubtful rows decided otherwise than proposed, by line; only for the shelf they were decided on. */
export interface Choices {
  readonly last: ImportPlan['last'];
  readonly flipped: readonly number[];
}

interface PreviewProps {
  readonly plan: ImportPlan;
  readonly problem: Problem | undefined;
  readonly choices: Choices | undefined;
  readonly onChoices: (choices: Choices) => void;
  readonly onColumns: () => void;
  readonly onKept: () => void;
  /** The shelf has changed meanwhile. */
  readonly onOld: (why: Problem) => void;
  readonly onAgain: () => void;
}

/** What each row becomes; the button at the end brings it in. */
export function ImportPreview({ plan, problem, choices, onChoices, onColumns, onKept, onOld, onAgain }: PreviewProps) {
  const deps = useDeps();
  const [flipped, setFlipped] = useState<ReadonlySet<number>>(() => new Set(choices?.last === plan.last ? choices.flipped : []));
  const [shown, setShown] = useState<RowState | undefined>();
  const [limit, setLimit] = useState(ROWS_SHOWN);
  const [isBusy, setBusy] = useState(false);
  const [failed, setFailed] = useState<Problem>();
  const [kept, setKept] = useState<readonly Entry[]>();
  const counts = useMemo(() => importCounts(plan, flipped), [plan, flipped]);
  if (kept) return <Kept counts={counts} entries={kept} onAgain={onAgain} />;

  const rows = shown ? plan.rows.filter((row) => row.state === shown) : plan.rows;
  const doubtful = plan.rows.filter((row) => row.state === 'doubtful');
  const allDoubtful = doubtful.every((row) => isTaken(row, flipped));
  const flip = (lines: readonly number[]) => {
    const next = new Set(flipped);
    for (const line of lines) if (!next.delete(line)) next.add(line);
    setFlipped(next);
    onChoices({ last: plan.last, flipped: [...next] });
  };
  const keep = async () => {
    setBusy(true);
    setFailed(undefined);
    // Lets the button say so before thousands of entries are made.
    await new Promise((resolve) => setTimeout(resolve, 30));
    const outcome = await bringIn(deps, plan, flipped);
    setBusy(false);
    if (outcome === PREVIEW_OLD) onOld(PREVIEW_OLD);
    else if (isProblem(outcome)) setFailed(outcome);
    else {
      onKept();
      setKept(outcome);
    }
  };
  return (
    <Screen
      title="What each row becomes"
      actions={
        <>
          <Button disabled={isBusy} onClick={onColumns}>
            Change the columns
          </Button>
          <Button look="main" disabled={isBusy || counts.taken === 0} onClick={() => void keep()}>
            {isBusy ? 'Bringing it in…' : `Bring in ${sayNumber(counts.taken)}`}
          </Button>
        </>
      }
    >
      <SaveProblem save={{ problem, refused: problem, confirm: keep }} />
      {isBusy && <progress class="import-busy" aria-label="Bringing it in" />}
      <p>
        {counts.things.length > 0 ? `It brings ${counts.things.map(thingWords).join(', ')}. ` : 'Nothing in it is new. '}
        Nothing is kept until you say so, and one Undo takes all of it back.
      </p>
      <div class="import-filters">
        {ROW_STATES.map((state) => (
          <button
            key={state}
            type="button"
            class="import-filter"
            aria-pressed={shown === state}
            disabled={counts.rows[state] === 0}
            onClick={() => {
              setShown(shown === state ? undefined : state);
              setLimit(ROWS_SHOWN);
            }}
          >
            <Mark {...STATE_WORDS[state]} word={`${sayNumber(counts.rows[state])} ${STATE_WORDS[state].word}`} />
          </button>
        ))}
      </div>
      <div class="button-row">
        {counts.rows.unreadable > 0 && <Button onClick={() => void saveUnreadable(plan)}>Download these rows as CSV</Button>}
        {doubtful.length > 1 && (
          <Button onClick={() => flip(doubtful.filter((row) => isTaken(row, flipped) === allDoubtful).map((row) => row.line))}>
            {allDoubtful ? 'Leave out all doubtful rows' : 'Take all doubtful rows'}
          </Button>
        )}
      </div>
      <ul class="list">
        {rows.slice(0, limit).map((row) => (
          <ImportRow key={row.line} row={row} isTaken={isTaken(row, flipped)} onFlip={() => flip([row.line])} />
        ))}
      </ul>
      {rows.length > limit && (
        <Button class="import-more" onClick={() => setLimit(limit + ROWS_SHOWN * 4)}>
          Show more of {sayNumber(rows.length)}
        </Button>
      )}
      {/* Beside the button: the top of a long list is out of sight. */}
      <SaveProblem save={{ problem: failed, refused: failed, confirm: keep }} />
    </Screen>
  );
}

function Kept({ counts, entries, onAgain }: { counts: ReturnType<typeof importCounts>; entries: readonly Entry[]; onAgain: () => void }) {
  const deps = useDeps();
  const [isBack, setBack] = useState(false);
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const first = entries[0];
  const undo = async () => {
    if (!first || isBusy) return;
    setBusy(true);
    const outcome = await withdraw(deps, first.id);
    setBusy(false);
    if (isProblem(outcome)) setProblem(outcome);
    else setBack(true);
  };
  return (
    <Screen title="Bring in my list">
      {problem && <ProblemNote problem={problem} />}
      <Empty
        title={isBack ? 'All of it is taken back' : `${sayNumber(counts.taken)} rows are on the shelf`}
        actions={
          <>
            {!isBack && (
              <Button disabled={isBusy} onClick={() => void undo()}>
                Undo
              </Button>
            )}
            <Button onClick={onAgain}>Another list</Button>
            <LinkButton look="main" href="#/">
              To the shelves
            </LinkButton>
          </>
        }
      >
        <p>
          {isBack
            ? 'The shelves are as they were before.'
            : `${counts.things.map(thingWords).join(', ')}. Every one has a label code of its own.`}
        </p>
      </Empty>
    </Screen>
  );
}
