import type { ThingAnswer } from '../../views/where-is.ts';
import { addressOf } from '../address.ts';
import { onFrontAddress } from '../address-on-front.ts';
import { isShown } from '../router.ts';
import { Icon } from './icon.tsx';
import { Picture } from './picture.tsx';
import { StateMarks } from './states.tsx';

/** A thing that was found: a tap shows its drawer on the front, the arrow opens the thing itself; the other way round where it opens beside the list. */
export function FoundThing({ thing, opensThing }: { thing: ThingAnswer; opensThing: boolean }) {
  const own = addressOf(thing);
  const isPlace = thing.noun === 'place';
  const shows = thing.front ? onFrontAddress(thing, isPlace ? undefined : thing.id) : own;
  return (
    <li class={thing.isSpent ? 'row found found-spent' : 'row found'}>
      <a class="row-link" href={opensThing ? own : shows} aria-current={isShown(own)}>
        {thing.picture && (
          <span class="row-picture">
            <Picture key={thing.picture} sha={thing.picture} alt="" />
          </span>
        )}
        <span class="row-words">
          <span class="row-title">{thing.title}</span>
          {thing.place && !isPlace && <span class="found-place">{thing.place}</span>}
          <span class="row-detail">
            {detailOf(thing)}
            {thing.states.length > 0 && <StateMarks states={thing.states} of={thing.id} />}
          </span>
        </span>
      </a>
      {shows !== own && (
        <a
          class="found-open"
          href={opensThing ? shows : own}
          aria-label={opensThing ? `Show ${thing.title} on the front` : `Open ${thing.title}`}
        >
          <Icon name={opensThing ? 'shelves' : 'move'} />
        </a>
      )}
    </li>
  );
}

/** Before the marks, with a space. */
function detailOf(thing: ThingAnswer): string {
  if (thing.noun === 'place') return `${thing.place} · ${thing.detail} `;
  return thing.place || !hasPlace(thing) ? `${thing.detail} ` : `no place yet · ${thing.detail} `;
}

function hasPlace({ noun }: ThingAnswer): boolean {
  return noun !== 'design' && noun !== 'period' && noun !== 'want' && noun !== 'place';
}
