import { namesText } from '../../domain/nesting.ts';
import type { PeriodAnswer, PlaceAnswer } from '../../views/where-is.ts';
import { onFrontAddress } from '../address-on-front.ts';
import { to } from '../router.ts';
import { Icon } from './icon.tsx';

/**
 * A period that was looked for, with the drawers it is kept or found in; the arrow opens the period. Of few elements and texts: they are
 * what a letter's answer costs. The spaces are for those who hear it.
 */
export function FoundPeriod({ period }: { period: PeriodAnswer }) {
  const hasHome = period.places.some(({ isAssigned }) => isAssigned);
  return (
    <section class="period">
      <div class="period-head">
        <h2>
          {period.name}
          {period.span && <small>{` ${period.span}`}</small>}
        </h2>
        <a class="found-open" href={to(['thing', period.id])} aria-label={`About ${period.name}`}>
          <Icon name="move" />
        </a>
      </div>
      {period.places.length === 0 && <p>No drawer keeps it and nothing of it stands anywhere.</p>}
      <ul class="period-places">
        {period.places.map((place, row) => (
          <li key={row}>
            <a class="period-place" href={onFrontAddress(place)}>
              <span class="front-label">{place.names.at(-1)}</span>
              {` ${namesText(place.names.slice(0, -1))} `}
              <small>{pieces(place, hasHome)}</small>
            </a>
          </li>
        ))}
      </ul>
      {period.morePlaces > 0 && <p class="period-more">{`and ${period.morePlaces} more places`}</p>}
    </section>
  );
}

function pieces({ pieces: count, isAssigned }: PlaceAnswer, hasHome: boolean): string {
  const held = count === 0 ? 'none there now' : count === 1 ? '1 piece' : `${count} pieces`;
  return isAssigned || !hasHome ? held : `${held}, though it is kept elsewhere`;
}
