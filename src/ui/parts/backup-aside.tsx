import { useEffect, useState } from 'preact/hooks';
import { bringBack, letGo, type Replaced, replacedStudio } from '../../actions/restore-backup.ts';
import { sweepPictures, unnamedPictures } from '../../actions/sweep-pictures.ts';
import type { Sha256 } from '../../domain/brand.ts';
import { dayInWords } from '../../domain/day-words.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { sayEntries } from '../backup-words.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { Sheet } from './sheet.tsx';
import { say, sayProblem } from './toast.tsx';

/** What this device keeps besides the shelves: a studio that was replaced, and pictures that nothing names. */
export function KeptAside() {
  const deps = useDeps();
  const shelf = useShelf();
  const [replaced, setReplaced] = useState<Replaced | undefined>();
  const [unnamed, setUnnamed] = useState<readonly Sha256[]>([]);
  const [isBusy, setBusy] = useState(false);
  const [isLettingGo, setLettingGo] = useState(false);
  const [looks, setLooks] = useState(0);
  useEffect(() => {
    let isGone = false;
    void Promise.all([replacedStudio(deps), unnamedPictures(deps)]).then(
      ([found, pictures]) => {
        if (isGone) return;
        setReplaced(found);
        setUnnamed(pictures);
      },
      () => undefined,
    );
    return () => {
      isGone = true;
    };
  }, [deps, shelf, looks]);

  async function run(job: () => Promise<Problem | undefined>, says: string): Promise<void> {
    setBusy(true);
    const outcome = await job();
    setBusy(false);
    setLettingGo(false);
    if (isProblem(outcome)) sayProblem(outcome);
    else say(says);
    setLooks(looks + 1);
  }

  return (
    <>
      {replaced && (
        <section class="card">
          <h2>Kept aside</h2>
          <p>
            The shelves {replaced.studio ? `of ${replaced.studio} ` : ''}that were here until {dayInWords(replaced.on)}:{' '}
            {sayEntries(replaced.entries)}, with their pictures.
          </p>
          <div class="button-row">
            <Button disabled={isBusy} onClick={() => void run(() => bringBack(deps), 'Brought back. What was here is kept aside now.')}>
              Bring them back
            </Button>
            <Button disabled={isBusy} onClick={() => setLettingGo(true)}>
              Let them go…
            </Button>
          </div>
        </section>
      )}
      {unnamed.length > 0 && (
        <section class="card">
          <h2>Pictures that nothing names</h2>
          <p>{sayCount(unnamed.length, 'picture')} from forms that were given up. No entry, and no form kept for later, names them.</p>
          <Button disabled={isBusy} onClick={() => void run(() => sweepPictures(deps, unnamed), 'Cleared away.')}>
            Clear them away
          </Button>
        </section>
      )}
      {isLettingGo && replaced && (
        <Sheet title="Let them go?" onClose={() => setLettingGo(false)}>
          <p>
            {sayEntries(replaced.entries)} kept aside on {dayInWords(replaced.on)} will be gone from this device. This cannot be taken back.
          </p>
          <div class="button-row">
            <Button look="danger" disabled={isBusy} onClick={() => void run(() => letGo(deps), 'Let go.')}>
              Let them go
            </Button>
            <Button disabled={isBusy} onClick={() => setLettingGo(false)}>
              Keep them
            </Button>
          </div>
        </Sheet>
      )}
    </>
  );
}
