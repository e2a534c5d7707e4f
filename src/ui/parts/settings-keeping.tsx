import { useEffect, useState } from 'preact/hooks';
import type { Keeping } from '../../actions/deps.ts';
import { type LastCopy, lastCopy } from '../../actions/save-journal.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { sayCount, sayNumber } from '../../domain/measure-words.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { say } from './toast.tsx';

function megabytes(bytes: number | undefined): string {
  return bytes === undefined ? 'not told by this browser' : `${sayNumber(bytes / 1e6, 1)} MB`;
}

function copyInWords(copy: LastCopy | undefined, entries: number): string {
  if (!copy) return 'None has been saved from this device.';
  const since = Math.max(0, entries - copy.entries);
  return `${dayInWords(copy.on)}; ${since === 0 ? 'nothing new since' : `${sayCount(since, 'entry', 'entries')} since`}.`;
}

/** How safely the shelves are kept here, and how full the storage is. */
export function KeepingCard() {
  const deps = useDeps();
  const shelf = useShelf();
  const [keeping, setKeeping] = useState<Keeping>({});
  const look = () => void deps.keeping().then(setKeeping);
  useEffect(look, [deps]);

  async function ask(): Promise<void> {
    const isGranted = await deps.askToPersist();
    say(
      isGranted
        ? 'The browser has promised to keep the shelves.'
        : 'The browser did not promise it. Installing Mouldkeep on the home screen usually helps.',
    );
    look();
  }

  return (
    <section class="card">
      <h2>How safely it is kept</h2>
      <dl class="facts">
        <dt>Entries</dt>
        <dd>{sayNumber(shelf.entries)}</dd>
        <dt>Stored</dt>
        <dd>
          {megabytes(keeping.usedBytes)} of {megabytes(keeping.quotaBytes)}
        </dd>
        <dt>May the browser clear it?</dt>
        <dd>
          {keeping.isPersistent === undefined
            ? 'This browser does not say.'
            : keeping.isPersistent
              ? 'No: it has promised to keep it.'
              : 'Yes, when the phone runs out of room.'}
        </dd>
        <dt>Last saved copy</dt>
        <dd>{copyInWords(lastCopy(deps), shelf.entries)}</dd>
      </dl>
      {keeping.isPersistent === false && (
        <div class="button-row">
          <Button onClick={() => void ask()}>Ask the browser to keep it</Button>
        </div>
      )}
    </section>
  );
}
