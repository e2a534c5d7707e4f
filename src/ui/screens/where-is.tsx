import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Correction } from '../../domain/search.ts';
import { searchIndexOf } from '../../domain/search-index.ts';
import { allPeriods, type PeriodAnswer, type PlaceAnswer, type ThingAnswer, whereIs } from '../../views/where-is.ts';
import { addressOf } from '../address.ts';
import { LinkButton } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { Empty } from '../parts/note.tsx';
import { Picture } from '../parts/picture.tsx';
import { Screen } from '../parts/screen.tsx';
import { StateMarks } from '../parts/states.tsx';
import { route, to } from '../router.ts';
import { useShelf } from '../studio.tsx';

/** Finds where anything stands, by a few letters, a code or a year. */
export function WhereIsScreen(_: object) {
  const shelf = useShelf();
  const [query, setQuery] = useState(() => route.value.query.get('q') ?? '');
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => box.current?.focus(), []);
  // Made before the first letter, so that it too is answered at once.
  useEffect(() => void searchIndexOf(shelf), [shelf]);
  function type(next: string): void {
    setQuery(next);
    // Kept in the address for coming back, without a step of history for every letter.
    window.history.replaceState(null, '', to(['where'], next === '' ? {} : { q: next }));
  }
  return (
    <Screen title="Where is…" hasBack={false}>
      <search class="search">
        <label class="unseen" for="where-query">
          Design, period, place, code, wax, note or year
        </label>
        <Icon name="find" />
        <input
          ref={box}
          id="where-query"
          type="text"
          inputMode="search"
          enterkeyhint="search"
          autoComplete="off"
          autoCapitalize="off"
          spellcheck={false}
          placeholder="Design, period, code, year…"
          maxLength={120}
          value={query}
          onInput={(event) => type(event.currentTarget.value)}
        />
        {query !== '' && (
          <button
            type="button"
            class="icon-button"
            aria-label="Clear"
            onClick={() => {
              type('');
              box.current?.focus();
            }}
          >
            <Icon name="close" />
          </button>
        )}
      </search>
      {query.trim() === '' ? <Periods onPick={type} /> : <Answers query={query} />}
    </Screen>
  );
}

function Periods({ onPick }: { onPick: (query: string) => void }) {
  const shelf = useShelf();
  const periods = useMemo(() => allPeriods(shelf), [shelf]);
  if (periods.length === 0) {
    return (
      <Empty title="Type a few letters" actions={<LinkButton href="#/new/period">Add a period</LinkButton>}>
        <p>
          A design, a place, a code, a wax or a word of a note; misspelt is fine. Once you have periods, they are listed here, each with its
          drawers.
        </p>
      </Empty>
    );
  }
  return (
    <section aria-label="Periods">
      <h2 class="section">Periods</h2>
      <ul class="chips">
        {periods.map(({ id, name, span }) => (
          <li key={id}>
            <button type="button" class="chip" onClick={() => onPick(name)}>
              <span>{name}</span>
              {span && <small>{span}</small>}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Answers({ query }: { query: string }) {
  const shelf = useShelf();
  const { periods, things, more, corrections, year } = useMemo(() => whereIs(shelf, query), [shelf, query]);
  const isNothing = periods.length === 0 && things.length === 0;
  return (
    <div>
      <div role="status">
        {corrections.map((correction) => (
          <p key={correction.typed} class="search-says">
            {correctionInWords(correction)}
          </p>
        ))}
        {year && <p class="search-says">{periods.length > 0 ? `In ${year}:` : `No period of yours holds ${year}.`}</p>}
        <p class="unseen">{isNothing ? 'Nothing found' : `${periods.length} periods and ${things.length + more} things found`}</p>
      </div>
      {isNothing && corrections.every(({ instead }) => instead.length > 0) && !year && (
        <Empty title="Nothing has all of that" actions={<LinkButton href="#/new/mould">Record a mould</LinkButton>}>
          <p>Try fewer letters, or another word: a design, a period, a drawer, a wax, a word of a note.</p>
        </Empty>
      )}
      {periods.map((period) => (
        <PeriodPart key={period.id} period={period} />
      ))}
      {things.length > 0 && (
        <ul class="list">
          {things.map((thing) => (
            <ThingPart key={thing.id} thing={thing} />
          ))}
        </ul>
      )}
      {more > 0 && <p class="search-more">and {more} more. Another word or letter narrows it.</p>}
    </div>
  );
}

function correctionInWords({ typed, instead }: Correction): string {
  if (instead.length === 0) return `Nothing has “${typed}”, nor anything spelt like it.`;
  return `No “${typed}”; showing ${instead.map((word) => `“${word}”`).join(' or ')}.`;
}

function PeriodPart({ period }: { period: PeriodAnswer }) {
  return (
    <section class="card period">
      <h2>
        {period.name} {period.span && <small>{period.span}</small>}
      </h2>
      {period.places.length === 0 && <p>No drawer keeps it and nothing of it stands anywhere.</p>}
      <ul class="period-places">
        {period.places.map((place) => (
          <li key={place.id}>
            <a class="period-place" href={onFrontAddress(place)}>
              <span class="front-label">{place.path.split(' › ').at(-1)}</span>
              <span>
                {place.path}
                <small>{pieces(place)}</small>
              </span>
            </a>
          </li>
        ))}
      </ul>
      <p class="period-foot">
        {period.morePlaces > 0 && `and ${period.morePlaces} more places. `}
        <a class="button button-quiet" href={to(['thing', period.id])}>
          About {period.name}
        </a>
      </p>
    </section>
  );
}

function pieces({ pieces: count, isAssigned }: PlaceAnswer): string {
  const held = count === 0 ? 'none there now' : count === 1 ? '1 piece' : `${count} pieces`;
  return isAssigned ? held : `${held}, though it is kept elsewhere`;
}

function onFrontAddress({ front, id }: Pick<PlaceAnswer, 'front' | 'id'>, thing?: string): string {
  if (!front) return to(['place', id]);
  return to(['shelves', front.cabinet], { drawer: front.drawer, ...(thing ? { thing } : {}) });
}

function ThingPart({ thing }: { thing: ThingAnswer }) {
  const own = addressOf(thing);
  const isPlace = thing.noun === 'place';
  const shows = thing.front ? onFrontAddress({ front: thing.front, id: '' as PlaceAnswer['id'] }, isPlace ? undefined : thing.id) : own;
  return (
    <li class={thing.isSpent ? 'row found found-spent' : 'row found'}>
      <a class="row-link" href={shows}>
        {thing.picture && (
          <span class="row-picture">
            <Picture sha={thing.picture} alt="" />
          </span>
        )}
        <span class="row-words">
          <span class="row-title">{thing.title}</span>
          {thing.place && !isPlace && <span class="found-place">{thing.place}</span>}
          {!thing.place && hasPlace(thing) && <span class="row-detail">no place yet</span>}
          <span class="row-detail">{isPlace ? `${thing.place} · ${thing.detail}` : thing.detail}</span>
          {thing.states.length > 0 && (
            <span class="row-marks">
              <StateMarks states={thing.states} />
            </span>
          )}
        </span>
      </a>
      {shows !== own && (
        <a class="found-open" href={own} aria-label={`Open ${thing.title}`}>
          <Icon name="move" />
        </a>
      )}
    </li>
  );
}

function hasPlace({ noun }: ThingAnswer): boolean {
  return noun !== 'design' && noun !== 'period' && noun !== 'want' && noun !== 'place';
}
