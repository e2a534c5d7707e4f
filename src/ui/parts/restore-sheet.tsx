import { useState } from 'preact/hooks';
import type { OpenedBackup, Progress } from '../../actions/open-backup.ts';
import { restoreBackup, type Way } from '../../actions/restore-backup.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { sayCount, sayNumber } from '../../domain/measure-words.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { NOUN_WORD, NOUNS_WORD } from '../../domain/title.ts';
import { sayEntries } from '../backup-words.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { Caution, ProblemNote } from './note.tsx';
import { Sheet } from './sheet.tsx';
import { say } from './toast.tsx';
import { Working } from './working.tsx';

interface RestoreProps {
  opened: OpenedBackup;
  onClose: () => void;
  onDone: () => void;
}

/** What a backup would bring, and what is only here; then join it, or put it in the place of what is here. */
export function RestoreSheet({ opened, onClose, onDone }: RestoreProps) {
  const deps = useDeps();
  const [progress, setProgress] = useState<Progress | undefined>();
  const [isReplacing, setReplacing] = useState(false);
  const [problem, setProblem] = useState<Problem | undefined>();
  const { entries } = opened.difference;
  const hasNew = entries.fresh > 0 || opened.freshPictures.size > 0;
  // While it is taken in the sheet stays: nothing could be called off any more.
  const close = () => {
    if (!progress) onClose();
  };

  async function restore(way: Way): Promise<void> {
    setProgress({ done: 0, total: opened.freshPictures.size });
    const outcome = await restoreBackup(deps, opened, way, setProgress);
    setProgress(undefined);
    if (isProblem(outcome)) return setProblem(outcome);
    onDone();
    say(
      way === 'join'
        ? `Joined: ${sayEntries(outcome)} ${outcome === 1 ? 'was' : 'were'} new here.`
        : 'The backup is on the shelves now. What was here before is kept aside, and can be brought back.',
    );
  }

  return (
    <Sheet title={isReplacing ? 'Replace these shelves?' : 'What this backup would bring'} onClose={close}>
      {problem && <ProblemNote problem={problem} />}
      <Contents opened={opened} />
      {!hasNew && entries.onlyHere === 0 && <p>Everything in it is here already.</p>}
      <Consequences opened={opened} isReplacing={isReplacing} />
      {progress && <Working says="Taking it in…" done={progress.done} total={Math.max(progress.total, 1)} />}
      <div class="button-row">
        {isReplacing ? (
          <Button look="danger" disabled={progress !== undefined} onClick={() => void restore('replace')}>
            Replace these shelves
          </Button>
        ) : (
          <>
            {hasNew && (
              <Button look="main" disabled={progress !== undefined} onClick={() => void restore('join')}>
                Join {entries.fresh > 0 ? sayEntries(entries.fresh) : sayCount(opened.freshPictures.size, 'picture')}
              </Button>
            )}
            {entries.onlyHere > 0 && (
              <Button disabled={progress !== undefined} onClick={() => setReplacing(true)}>
                Replace these shelves…
              </Button>
            )}
          </>
        )}
        <Button disabled={progress !== undefined} onClick={isReplacing ? () => setReplacing(false) : close}>
          {isReplacing ? 'Back' : hasNew || entries.onlyHere > 0 ? 'Leave it' : 'Close'}
        </Button>
      </div>
    </Sheet>
  );
}

function Consequences({ opened, isReplacing }: { opened: OpenedBackup; isReplacing: boolean }) {
  const { studio } = useShelf();
  const { entries, bothChanged } = opened.difference;
  if (isReplacing) {
    return (
      <Caution>
        {sayEntries(entries.onlyHere)} that {entries.onlyHere === 1 ? 'is' : 'are'} only here will be off the shelves. What is here now is
        kept aside on this device, and can be brought back until you let it go or replace again.
      </Caution>
    );
  }
  const isAnother = studio.name !== undefined && opened.name !== undefined && studio.name !== opened.name;
  return (
    <>
      {isAnother && <Caution>The shelves here are those of {studio.name}: joined, the two would stand side by side from now on.</Caution>}
      {entries.fresh > 0 && (
        <p class="field-hint">
          Joining adds what is new and takes nothing away; it cannot be taken back.
          {bothChanged > 0 && ' Where both say something about the same thing, the later word holds, field by field.'}
          {entries.onlyHere > 0 && ' Replacing puts the backup in the place of what is here.'}
        </p>
      )}
    </>
  );
}

function Contents({ opened }: { opened: OpenedBackup }) {
  const { manifest, name, difference, pictures, freshPictures } = opened;
  const { entries, things, bothChanged, days } = difference;
  const listed = (side: 'fresh' | 'onlyHere') =>
    things
      .filter((each) => each[side] > 0)
      .map((each) => sayCount(each[side], NOUN_WORD[each.noun], NOUNS_WORD[each.noun]))
      .join(', ');
  const [freshThings, ownThings] = [listed('fresh'), listed('onlyHere')];
  return (
    <dl class="facts restore-facts">
      <dt>Studio</dt>
      <dd>{name ?? 'without a name'}</dd>
      {manifest && (
        <>
          <dt>Made on</dt>
          <dd>{dayInWords(manifest.madeOn)}</dd>
        </>
      )}
      <dt>It holds</dt>
      <dd>
        {sayEntries(opened.entries.length)}
        {days && (days.from === days.to ? `, of ${dayInWords(days.from)}` : `, ${dayInWords(days.from)} to ${dayInWords(days.to)}`)};{' '}
        {sayCount(pictures.length, 'picture')}
      </dd>
      <dt>New here</dt>
      <dd>
        {sayEntries(entries.fresh)}
        {freshThings && `: ${freshThings}`}
        {freshPictures.size > 0 && `; ${sayCount(freshPictures.size, 'picture')}`}
      </dd>
      <dt>Only here</dt>
      <dd>
        {sayEntries(entries.onlyHere)}
        {ownThings && `: ${ownThings}`}
      </dd>
      <dt>In both</dt>
      <dd>{sayEntries(entries.same)}</dd>
      {bothChanged > 0 && (
        <>
          <dt>Changed here and there</dt>
          <dd>{sayCount(bothChanged, 'thing')}</dd>
        </>
      )}
      {entries.otherwise > 0 && (
        <>
          <dt>Reads otherwise there</dt>
          <dd>{sayNumber(entries.otherwise)} of the same entries; joined, those here stay</dd>
        </>
      )}
    </dl>
  );
}
