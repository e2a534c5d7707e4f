import type { PeriodAnswer, PlaceAnswer } from '../../views/where-is.ts';
import { onFrontAddress } from '../address-on-front.ts';
import { to } from '../router.ts';

/** A period that was looked for, with the drawers it is kept or found in. */
export function FoundPeriod({ period }: { period: PeriodAnswer }) {
  const hasHome = period.places.some(({ isAssigned }) => isAssigned);
  return (
    <section class="card period">
      <h2>
        {period.name} {period.span && <small>{period.span}</small>}
      </h2>
      {period.places.length === 0 && <p>No drawer keeps it and nothing of it stands anywhere.</p>}
      <ul class="period-places">
        {period.places.map((place, row) => (
          <li key={row}>
            <a class="period-place" href={onFrontAddress(place)}>
              <span class="front-label">{place.path.split(' › ').at(-1)}</span>
              <span>
                {place.path}
                <small>{pieces(place, hasHome)}</small>
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

function pieces({ pieces: count, isAssigned }: PlaceAnswer, hasHome: boolean): string {
  const held = count === 0 ? 'none there now' : count === 1 ? '1 piece' : `${count} pieces`;
  return isAssigned || !hasHome ? held : `${held}, though it is kept elsewhere`;
}
