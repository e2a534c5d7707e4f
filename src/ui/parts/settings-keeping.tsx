import { useEffect, useState } from 'preact/hooks';
import type { Keeping } from '../../actions/deps.ts';
import { sayNumber } from '../../domain/measure-words.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { say } from './toast.tsx';

function room(bytes: number | undefined): string {
  if (bytes === undefined) return 'not told by this browser';
  return bytes < 1e9 ? `${sayNumber(bytes / 1e6, 1)} MB` : `${sayNumber(bytes / 1e9, 1)} GB`;
}

/** Entries in the journal, takings-back and what they took back included: the shelf counts only what holds. */
function useJournalLength(): number | undefined {
  const { keeper } = useDeps();
  const shelf = useShelf();
  const [length, setLength] = useState<number | undefined>();
  useEffect(() => {
    let isCurrent = true;
    keeper.journalLength().then(
      (entries) => isCurrent && setLength(entries),
      () => isCurrent && setLength(undefined),
    );
    return () => {
      isCurrent = false;
    };
  }, [keeper, shelf]);
  return length;
}

/** How safely the shelves are kept here, and how full the storage is. */
export function KeepingCard() {
  const deps = useDeps();
  const entries = useJournalLength();
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
        <dd>{entries === undefined ? 'counting…' : sayNumber(entries)}</dd>
        <dt>Stored</dt>
        <dd>
          {room(keeping.usedBytes)} of {room(keeping.quotaBytes)}
        </dd>
        <dt>May the browser clear it?</dt>
        <dd>
          {keeping.isPersistent === undefined
            ? 'This browser does not say.'
            : keeping.isPersistent
              ? 'No: it has promised to keep it.'
              : 'Yes, when the phone runs out of room.'}
        </dd>
      </dl>
      {keeping.isPersistent === false && (
        <div class="button-row">
          <Button onClick={() => void ask()}>Ask the browser to keep it</Button>
        </div>
      )}
    </section>
  );
}
