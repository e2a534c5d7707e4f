import { useState } from 'preact/hooks';
import { thingOf } from '../../domain/shelf.ts';
import { NOUN_WORD } from '../../domain/title.ts';
import { useShelf } from '../studio.tsx';
import { Icon } from './icon.tsx';
import { lazy } from './lazy.tsx';

const MoreSheet = lazy(async () => (await import('./more-sheet.tsx')).MoreSheet);

/** In the header of a thing's screen: what is done with it less often. */
export function ThingMore({ id }: { id: string }) {
  const thing = thingOf(useShelf(), id);
  const [isOpen, setOpen] = useState(false);
  if (!thing) return null;
  const title = `More about this ${NOUN_WORD[thing.noun]}`;
  return (
    <>
      <button type="button" class="icon-button" aria-label={title} onClick={() => setOpen(true)}>
        <Icon name="more" />
      </button>
      {isOpen && <MoreSheet thing={thing} title={title} onClose={() => setOpen(false)} />}
    </>
  );
}
