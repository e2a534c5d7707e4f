import type { PlaceId } from '../../domain/brand.ts';
import { attentionOf, attentionTo } from '../../views/attention.ts';
import { isBeginning } from '../../views/first-steps.ts';
import { countsInWords } from '../../views/front-words.ts';
import { placePage } from '../../views/place-page.ts';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { marksSeen } from '../watch-attention.ts';
import { LinkButton } from './button.tsx';
import { FrontList } from './front-list.tsx';
import { Hint } from './hint.tsx';
import { Mark } from './mark.tsx';
import { TakeList } from './take-list.tsx';
import { ThingRows } from './thing-rows.tsx';

/** What is in a drawer, as it slides over or opens beside its cabinet. */
export function DrawerContents({ id, sought }: { id: string; sought: string }) {
  const shelf = useShelf();
  const units = useUnits();
  const attention = attentionOf(shelf, useDeps().today(), units);
  const page = placePage(shelf, id as PlaceId, marksSeen(), (thing) => attentionTo(attention, thing), units);
  if (!page) return <p>This place is no longer recorded.</p>;
  const isEmpty = page.rows.length === 0 && page.inside.length === 0;
  return (
    <div class="contents">
      <p class="contents-where">{[page.path, ...page.periods.map(({ name, span }) => (span ? `${name} (${span})` : name))].join(' · ')}</p>
      <p class="contents-count">
        {countsInWords(page.front)}
        {page.room && ' · '}
        {page.room && (page.isOverFull ? <Mark shape="full" word={page.room} tone="soon" /> : page.room)}
      </p>
      {isEmpty && isBeginning(shelf) && <Hint step="record">record the mould that lies here. Its name is enough.</Hint>}
      <div class="button-row">
        {isEmpty && (
          <LinkButton look="main" href={to(['new', 'mould'], { at: id })}>
            Record a mould here
          </LinkButton>
        )}
        <LinkButton href={to(['move'], { to: id })}>Put things here</LinkButton>
        <LinkButton href={to(['place', id])}>More about it</LinkButton>
      </div>
      {page.inside.length > 0 && <FrontList fronts={page.inside} hrefOf={(inner) => to(['place', inner.id])} />}
      <ThingRows rows={page.rows} sought={sought} />
      {page.rows.length > 0 && <TakeList shown={{ of: 'rows', title: page.path, rows: page.rows }} />}
    </div>
  );
}
