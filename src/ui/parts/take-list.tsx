import { useState } from 'preact/hooks';
import type { Shown } from '../../views/list-out.ts';
import { Button } from './button.tsx';
import { lazy } from './lazy.tsx';

const TakeSheet = lazy(async () => (await import('./take-sheet.tsx')).TakeSheet);

/** Below a list: takes it away as a table or on paper. */
export function TakeList({ shown, what = 'this list' }: { shown: Shown; what?: string }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button look="quiet" onClick={() => setOpen(true)}>
        Take {what}…
      </Button>
      {isOpen && <TakeSheet shown={shown} onClose={() => setOpen(false)} />}
    </>
  );
}
