import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { Noun } from '../../domain/noun.ts';
import { thingOf } from '../../domain/shelf.ts';
import { NOUN_WORD, titleOf } from '../../domain/title.ts';
import { findCode } from '../../views/find-code.ts';
import { type Choice, choiceOf, choicesFor, nearChoices } from '../../views/pick.ts';
import { lastState } from '../../views/state.ts';
import { useLabelTaker } from '../label-taker.ts';
import { recentPlaces } from '../recent-places.ts';
import { requestScan } from '../scan-request.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';
import { StateMarks } from './states.tsx';
import { say } from './toast.tsx';

interface PickerProps {
  label: string;
  nouns: readonly Noun[];
  /** Id of what is chosen, or nothing. */
  value: string;
  /** Called after this screen is left too, when the camera brings a label. */
  onPick: (id: string) => void;
  problem?: string | undefined;
  hint?: string;
  /** The screen has a button of its own for labels. */
  hasScan?: boolean;
}

const SHOWN = 6;

/** Chooses one thing: by its label, by what was used lately, or by typing a few letters. */
export function ThingPicker({ label, nouns, value, onPick, problem, hint, hasScan = true }: PickerProps) {
  const deps = useDeps();
  const shelf = useShelf();
  const id = useId();
  const [typed, setTyped] = useState('');
  const chosen = thingOf(shelf, value);
  const word = NOUN_WORD[nouns[0] ?? 'place'];
  const recent = nouns.includes('place')
    ? recentPlaces(deps)
        .flatMap((each) => thingOf(shelf, each) ?? [])
        .filter(({ retired }) => !retired)
    : [];
  const isTyped = typed.trim() !== '';
  const found = isTyped ? choicesFor(shelf, nouns, typed, SHOWN) : recent.map((thing) => choiceOf(shelf, thing));
  const near = isTyped && found.length === 0 ? nearChoices(shelf, nouns, typed, SHOWN) : [];
  const shown = found.length > 0 ? found : near;
  // Periods are in the studio's head and on its lists; nothing that carries a label is one.
  const hasLabels = hasScan && nouns.some((noun) => noun !== 'period');
  const pick = (picked: string) => {
    setTyped('');
    onPick(picked);
  };
  const input = useRef<HTMLInputElement>(null);
  useLabelTaker((code, field) => {
    if (!field || field !== input.current) return false;
    const found = findCode(shelf, code).find(({ thing }) => nouns.includes(thing.noun));
    if (found) pick(found.thing.id);
    else say(`${code} is on no ${word} here.`);
    return true;
  });
  const scan = () =>
    requestScan({
      purpose: `Scan the ${word}`,
      onThing: (thing) => {
        if (!nouns.includes(thing.noun)) return `${titleOf(shelf, thing)} is a ${NOUN_WORD[thing.noun]}. Scan a ${word}.`;
        onPick(thing.id);
        return undefined;
      },
    });
  const picker = useRef<HTMLDivElement>(null);
  // What is found would else open below the bars.
  useEffect(() => {
    if (typed.trim() !== '') picker.current?.scrollIntoView({ block: 'nearest' });
  }, [typed]);
  return (
    <div class="field picker" ref={picker}>
      <label for={id}>{label}</label>
      {chosen ? (
        <Chosen choice={choiceOf(shelf, chosen, nouns.length > 1)} onChange={() => pick('')} />
      ) : (
        <>
          <div class="field-row">
            <input
              id={id}
              ref={input}
              type="search"
              value={typed}
              placeholder="Type a few letters"
              autoComplete="off"
              aria-invalid={problem ? 'true' : undefined}
              onInput={(event) => setTyped(event.currentTarget.value)}
            />
            {hasLabels && (
              <Button class="picker-scan" onClick={scan} aria-label={`Scan the ${word}`}>
                <Icon name="scan" /> Scan
              </Button>
            )}
          </div>
          {isTyped && found.length === 0 && (
            <p class="field-hint">Nothing is called that{near.length > 0 ? '; this is spelt nearly so' : ''}.</p>
          )}
          {shown.length > 0 && (
            <ul class="picker-list" aria-label={isTyped ? 'Found' : 'Used lately'}>
              {shown.map((choice) => (
                <li key={choice.id}>
                  <button type="button" class="picker-choice" onClick={() => pick(choice.id)}>
                    <span class="row-title">{choice.title}</span>
                    {choice.detail && <span class="row-detail">{choice.detail}</span>}
                    <StateMarks states={lastState(shelf, choice.id)} of={choice.id} />
                  </button>
                </li>
              ))}
            </ul>
          )}
        </>
      )}
      {(problem ?? hint) && <p class={problem ? 'field-problem' : 'field-hint'}>{problem ?? hint}</p>}
    </div>
  );
}

function Chosen({ choice, onChange }: { choice: Choice; onChange: () => void }) {
  return (
    <div class="picker-chosen">
      <span class="row-words">
        <span class="row-title">{choice.title}</span>
        {choice.detail && <span class="row-detail">{choice.detail}</span>}
      </span>
      <Button look="quiet" onClick={onChange}>
        Change
      </Button>
    </div>
  );
}
