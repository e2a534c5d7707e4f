import { useState } from 'preact/hooks';
import type { PlaceId, ThingId } from '../../domain/brand.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { NOUNS, type Noun } from '../../domain/noun.ts';
import { UNLABELLED } from '../../domain/plans/label-things.ts';
import { NOUN_WORD, NOUNS_WORD, titleOf } from '../../domain/title.ts';
import { labelledIn, neverLabelled } from '../../views/label-sheet.ts';
import { moveListOf } from '../../views/move-list.ts';
import { requestScan } from '../scan-request.ts';
import { useShelf } from '../studio.tsx';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';
import { MoveThings } from './move-things.tsx';
import { ThingPicker } from './thing-picker.tsx';

const SHOWN = 6;
const LABELLED: readonly Noun[] = NOUNS.filter((noun) => !UNLABELLED.includes(noun));

/** Which things get a label: one by one, a whole place, or all that never had one. */
export function LabelChoice({ things, onChange }: { things: readonly string[]; onChange: (things: readonly string[]) => void }) {
  const shelf = useShelf();
  const [isAll, setAll] = useState(false);
  const [said, setSaid] = useState('');
  const add = (more: readonly string[], from: string) => {
    const next = [...new Set([...things, ...more])];
    const count = next.length - things.length;
    setSaid(count > 0 ? `${sayCount(count, 'thing')} added${from}.` : `Nothing new${from}.`);
    onChange(next);
  };
  const addPlace = (id: string) => {
    const place = shelf.things.place.get(id as PlaceId);
    if (place) add(labelledIn(shelf, place.id), ` from ${titleOf(shelf, place)}`);
  };
  /** The camera outlives this drawing of the screen: what it brings adds up here. */
  const scanned: ThingId[] = [];
  const scan = () =>
    requestScan({
      purpose: 'Scan what needs a new label',
      onThing: (thing) => {
        scanned.push(thing.id);
        onChange([...new Set([...things, ...scanned])]);
        return `${titleOf(shelf, thing)} is on the list. Scan the next one, or go back.`;
      },
    });
  const list = moveListOf(shelf, isAll ? things : things.slice(0, SHOWN)).things;
  return (
    <section class="card">
      <h2>Labels for {things.length === 0 ? 'what?' : sayCount(things.length, 'thing')}</h2>
      <MoveThings
        things={list}
        legend="What gets a label"
        none="Nothing is on the list yet. Choose things by typing, take a whole drawer, or all that never had a label."
        onRemove={(id) => onChange(things.filter((each) => each !== id))}
      />
      {things.length > SHOWN && (
        <div class="button-row">
          <Button aria-expanded={isAll} onClick={() => setAll(!isAll)}>
            {isAll ? 'Show fewer' : `Show all ${things.length}`}
          </Button>
          <Button look="quiet" onClick={() => onChange([])}>
            Empty the list
          </Button>
        </div>
      )}
      <ThingPicker label="One thing" nouns={LABELLED} value="" hasScan={false} onPick={(id) => add([id], '')} />
      <ThingPicker label="Everything in a place" nouns={['place']} value="" hasScan={false} onPick={addPlace} />
      <fieldset class="choices">
        <legend>Never labelled</legend>
        <NeverButtons onAdd={add} />
      </fieldset>
      <div class="button-row">
        <Button onClick={scan}>
          <Icon name="scan" /> Scan worn labels
        </Button>
      </div>
      <p role="status">{said}</p>
    </section>
  );
}

function NeverButtons({ onAdd }: { onAdd: (ids: readonly string[], from: string) => void }) {
  const kinds = neverLabelled(useShelf());
  if (kinds.length === 0) return <p class="field-hint">Everything has been labelled.</p>;
  return (
    <div class="button-row">
      {kinds.map(({ noun, ids }) => (
        <Button key={noun} onClick={() => onAdd(ids, '')}>
          {sayCount(ids.length, NOUN_WORD[noun], NOUNS_WORD[noun])}
        </Button>
      ))}
    </div>
  );
}
