import { titleOfId } from '../../domain/title.ts';
import type { Front } from '../../views/front.ts';
import { countsInWords } from '../../views/front-words.ts';
import { useShelf } from '../studio.tsx';
import { useToldHeight } from '../use-size.ts';
import { Button } from './button.tsx';

/** Says what the drawer standing out on the front is, and opens it: the front stays in sight until then. */
export function HereStrip({ front, cabinet, sought, onOpen }: { front: Front; cabinet: string; sought: string; onOpen: () => void }) {
  const shelf = useShelf();
  const strip = useToldHeight<HTMLDivElement>('--actions-height');
  return (
    <div ref={strip} class="here">
      <span class="front-label">{front.label}</span>
      <p>
        <strong>{sought ? titleOfId(shelf, sought) : front.periods.join(', ') || front.name || cabinet}</strong>
        <span>{sought ? `in ${cabinet}` : countsInWords(front)}</span>
      </p>
      <Button look="main" onClick={onOpen}>
        Open
      </Button>
    </div>
  );
}
