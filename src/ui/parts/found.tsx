import { useMemo, useState } from 'preact/hooks';
import { sayCount } from '../../domain/measure-words.ts';
import type { Correction } from '../../domain/search.ts';
import { whereIs } from '../../views/where-is.ts';
import { useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { LinkButton } from './button.tsx';
import { FoundPeriod } from './found-period.tsx';
import { FoundThing } from './found-thing.tsx';
import { lazy } from './lazy.tsx';
import { Empty } from './note.tsx';
import { PickStart } from './pick-start.tsx';
import { TakeList } from './take-list.tsx';

const PickRows = lazy(async () => (await import('./pick-rows.tsx')).PickRows);

/** Things and periods, as many as stand above a phone's keyboard: drawing the rest would hold up the next letter. */
const AT_ONCE = [3, 1] as const;
/** Of the things, so many below a period. */
const AT_ONCE_BELOW = 1;

/** What was found: at once what stands above a phone's keyboard, and all of it when the typing pauses. */
export function Found({ query, isSettled, opensThing }: { query: string; isSettled: boolean; opensThing: boolean }) {
  const shelf = useShelf();
  const units = useUnits();
  const { periods, things, more, corrections, years } = useMemo(
    () => (isSettled ? whereIs(shelf, query, units) : whereIs(shelf, query, units, ...AT_ONCE)),
    [shelf, query, units, isSettled],
  );
  const [pickFrom, setPickFrom] = useState<number | undefined>();
  const shown = isSettled || periods.length === 0 ? things : things.slice(0, AT_ONCE_BELOW);
  const isNothing = periods.length === 0 && things.length === 0;
  const counted = [
    ...(periods.length > 0 ? [sayCount(periods.length, 'period')] : []),
    ...(things.length > 0 ? [sayCount(things.length + more, 'thing')] : []),
  ];
  return (
    <div>
      <div role="status">
        {corrections.map((correction) => (
          <p key={correction.typed} class="search-says">
            {correctionInWords(correction)}
          </p>
        ))}
        {years && <p class="search-says">{years}</p>}
        <p class="unseen">{isNothing ? 'Nothing' : counted.join(' and ')} found</p>
      </div>
      {isNothing && corrections.every(({ instead }) => instead.length > 0) && !years && (
        <Empty title="Nothing has all of that" actions={<LinkButton href="#/new/mould">Record a mould</LinkButton>}>
          <p>Try fewer letters, or another word: a design, a period, a drawer, a wax, a word of a note.</p>
        </Empty>
      )}
      {periods.map((period, row) => (
        <FoundPeriod key={row} period={period} />
      ))}
      {pickFrom !== undefined ? (
        <PickRows
          rows={things.map((thing) => ({ ...thing, detail: `${thing.place} · ${thing.detail}` }))}
          begin={pickFrom}
          onDone={() => setPickFrom(undefined)}
        />
      ) : (
        things.length > 0 && (
          <>
            {things.length > 1 && <PickStart onStart={setPickFrom} />}
            <ul class="list">
              {shown.map((thing, row) => (
                <FoundThing key={row} thing={thing} opensThing={opensThing} />
              ))}
            </ul>
          </>
        )
      )}
      {isSettled && more > 0 && <p class="search-more">and {more} more. Another word or letter narrows it.</p>}
      {isSettled && !isNothing && <TakeList shown={{ of: 'answers', query }} />}
    </div>
  );
}

function correctionInWords({ typed, instead }: Correction): string {
  if (instead.length === 0) return `Nothing has “${typed}”, nor anything spelt like it.`;
  return `No “${typed}”; showing ${instead.map((word) => `“${word}”`).join(' or ')}.`;
}
