import { useEffect, useState } from 'preact/hooks';
import { saveList } from '../../actions/take-list.ts';
import { dayInWords } from '../../domain/day-words.ts';
import type { Entry } from '../../domain/entry.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { problem } from '../../domain/problem.ts';
import type { Shelf } from '../../domain/shelf.ts';
import { type ListOut, listOut, type Shown } from '../../views/list-out.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { spelt } from '../words.ts';
import { Button } from './button.tsx';
import { ProblemNote } from './note.tsx';
import { printList } from './paper.tsx';
import { Sheet } from './sheet.tsx';
import { say } from './toast.tsx';

/** A list on its way out: as a table for a spreadsheet, or on paper. */
export function TakeSheet({ shown, onClose }: { shown: Shown; onClose: () => void }) {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const thing = shown.of === 'history' ? shown.thing : undefined;
  const [entries, setEntries] = useState<readonly Entry[] | undefined>(thing === undefined ? [] : undefined);
  const [isBroken, setBroken] = useState(false);
  useEffect(() => {
    if (thing === undefined) return;
    deps.keeper.history(thing, Number.MAX_SAFE_INTEGER).then(
      (history) => setEntries(history.entries),
      () => setBroken(true),
    );
  }, [deps, thing]);
  const today = deps.today();
  const list = entries && listOut(shelf, today, shown, entries, units);
  return (
    <Sheet title="Take this list" onClose={onClose}>
      {isBroken && <ProblemNote problem={problem('The history could not be read.', 'Nothing was changed. Load the page again.')} />}
      {!list && !isBroken && <p class="wait">Reading the whole list…</p>}
      {list && (
        <>
          <p>
            {list.title}: {sayCount(list.rows.length, 'line')}, as of {dayInWords(today)}.
          </p>
          <div class="sheet-list">
            <Button
              look="main"
              onClick={async () => {
                if (!(await saveList(asSpelt(list, shelf), today))) return;
                onClose();
                say('The list was handed over.');
              }}
            >
              As a table (CSV)
            </Button>
            <Button
              onClick={async () => {
                onClose();
                const about = [shelf.studio.name ?? 'Mouldkeep', dayInWords(today), sayCount(list.rows.length, 'line')];
                if (!(await printList(list, about.join(' · ')))) say('This browser cannot print. Take the list as a table instead.');
              }}
            >
              On paper
            </Button>
          </div>
        </>
      )}
    </Sheet>
  );
}

/** As it stands on the screen; what goes on paper passes through the page and is spelt there. */
function asSpelt({ title, headings, rows }: ListOut, shelf: Shelf): ListOut {
  const each = (cell: string) => spelt(cell, shelf);
  return { title: each(title), headings: headings.map(each), rows: rows.map((row) => row.map(each)) };
}
