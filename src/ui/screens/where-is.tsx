import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { allPeriods, periodsBeginning, readyInSlices, rehearsals } from '../../views/where-is.ts';
import { usePane } from '../pane.tsx';
import { LinkButton } from '../parts/button.tsx';
import { Found } from '../parts/found.tsx';
import { Icon } from '../parts/icon.tsx';
import { Empty } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { keepList, to } from '../router.ts';
import { useShelf } from '../studio.tsx';
import { inTurns } from '../turns.ts';

/** Finds where anything stands, by a few letters, a code or a year. */
export function WhereIsScreen(_: object) {
  const shelf = useShelf();
  const [isReady, setReady] = useState(false);
  // Made before the first letter, so that it too is answered at once; after the screen is drawn.
  useEffect(() => inTurns(readyInSlices(shelf), () => setReady(true), { isPressing: true }), [shelf]);
  return (
    <Screen title="Where is…" hasBack={false}>
      <Asked rehearsed={isReady ? rehearsals(shelf) : NOTHING} />
    </Screen>
  );
}

const NOTHING: readonly string[] = [];

/**
 * What is typed and its answers: all that a letter draws again. What is `rehearsed` is answered unseen while nothing is typed, so that the
 * first letters find code that has run, words that have been laid out, and an answer that they only refill.
 */
function Asked({ rehearsed }: { rehearsed: readonly string[] }) {
  const { here, isBeside, isDesk } = usePane();
  const [query, setQuery, isSettled] = useTyped(() => here.query.get('q') ?? '');
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (!isBeside) box.current?.focus();
  }, []);
  useKeptQuery(query, isSettled, isBeside);
  const isBeginning = query.trim() === '' || (query.trim().length === 1 && !isSettled);
  const [begun, answered] = [useRef(''), useRef('')];
  (isBeginning ? begun : answered).current = query;
  const rehearsal = useOneByOne(rehearsed, query.trim() === '');
  if (rehearsal !== undefined) answered.current = rehearsal;
  // The very same as before, it is not gone through again.
  const periods = useMemo(() => <Periods onPick={setQuery} typed={begun.current} />, [begun.current]);
  return (
    <>
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
          onInput={(event) => setQuery(event.currentTarget.value)}
        />
        {query !== '' && (
          <button
            type="button"
            class="icon-button"
            aria-label="Clear"
            onClick={() => {
              setQuery('');
              box.current?.focus();
            }}
          >
            <Icon name="close" />
          </button>
        )}
      </search>
      {/* Kept and refilled rather than made anew: at the letter where one gives way to the other, that was most of the work. */}
      <div hidden={isBeginning && rehearsal === undefined} class={rehearsal === undefined ? undefined : 'rehearsal'}>
        {answered.current !== '' && <Found query={answered.current} isSettled={isSettled && !isBeginning} opensThing={isDesk} />}
      </div>
      <div hidden={!isBeginning}>{periods}</div>
    </>
  );
}

const REST_MS = 60;

/** Each in turn, with a rest between them, as long as there is time for it; undefined when there is not, and afterwards. */
function useOneByOne(list: readonly string[], hasTime: boolean): string | undefined {
  const [at, setAt] = useState(0);
  const value = hasTime ? list[at] : undefined;
  useEffect(() => {
    if (value === undefined) return undefined;
    const timer = setTimeout(() => setAt(at + 1), REST_MS);
    return () => clearTimeout(timer);
  }, [value, at]);
  return value;
}

function Periods({ onPick, typed }: { onPick: (query: string) => void; typed: string }) {
  const shelf = useShelf();
  const all = useMemo(() => allPeriods(shelf), [shelf]);
  const periods = typed.trim() === '' ? all : periodsBeginning(shelf, typed);
  if (all.length === 0) {
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

const SETTLED_MS = 250;

/**
 * Keeps the query in the address for coming back, without a step of history for every letter: once it stands still, or something is
 * tapped. Done at every letter it took longer than the search.
 */
function useKeptQuery(query: string, isSettled: boolean, isBeside: boolean): void {
  const keep = useRef(() => {});
  keep.current = () => keepList(to(['where'], query === '' ? {} : { q: query }), isBeside);
  useEffect(() => {
    if (isSettled) keep.current();
  }, [isSettled && query, isSettled && isBeside]);
  useEffect(() => {
    const keepOnTap = () => keep.current();
    const keepOnEnter = (event: KeyboardEvent) => {
      if (event.key === 'Enter') keep.current();
    };
    document.addEventListener('pointerdown', keepOnTap, { capture: true });
    document.addEventListener('keydown', keepOnEnter, { capture: true });
    return () => {
      document.removeEventListener('pointerdown', keepOnTap, { capture: true });
      document.removeEventListener('keydown', keepOnEnter, { capture: true });
    };
  }, []);
}

/** What is typed, and whether it has stood still for a moment. Without an effect at every letter: each puts off the frame that the letter waits for. */
function useTyped(begin: () => string): [string, (query: string) => void, boolean] {
  const [typed, setTyped] = useState(() => ({ query: begin(), isSettled: true }));
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const type = useCallback((query: string) => {
    clearTimeout(timer.current);
    setTyped({ query, isSettled: false });
    timer.current = setTimeout(() => setTyped({ query, isSettled: true }), SETTLED_MS);
  }, []);
  return [typed.query, type, typed.isSettled];
}
