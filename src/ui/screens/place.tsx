import type { PlaceId } from '../../domain/brand.ts';
import { attentionOf, attentionTo } from '../../views/attention.ts';
import { countsInWords, markInWords } from '../../views/front-words.ts';
import { frontsOf } from '../../views/fronts.ts';
import { type PlacePage, placePage, rowsNowhere } from '../../views/place-page.ts';
import { FLAG_SHAPE, LEVEL_TONE } from '../flag-look.ts';
import { usePane } from '../pane.tsx';
import { LinkButton } from '../parts/button.tsx';
import { Facts } from '../parts/facts.tsx';
import { FrontList } from '../parts/front-list.tsx';
import { History } from '../parts/history.tsx';
import { Mark } from '../parts/mark.tsx';
import { MiniFront } from '../parts/mini-front.tsx';
import { Empty } from '../parts/note.tsx';
import { Thumbs } from '../parts/photos.tsx';
import { Screen } from '../parts/screen.tsx';
import { StateMarks } from '../parts/states.tsx';
import { TakeList } from '../parts/take-list.tsx';
import { ThingMore } from '../parts/thing-more.tsx';
import { ThingRows } from '../parts/thing-rows.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { marksSeen } from '../watch-attention.ts';

/** In the address, the place of what has none. */
const NOWHERE = 'nowhere';

/** A drawer, cabinet, room or box, or who has what away. */
export function PlaceScreen({ id }: { id: string }) {
  const shelf = useShelf();
  const units = useUnits();
  const { isBeside } = usePane();
  const attention = attentionOf(shelf, useDeps().today(), units);
  const flagsTo = (thing: string) => attentionTo(attention, thing);
  if (id === NOWHERE) {
    const rows = rowsNowhere(shelf, flagsTo, units);
    return (
      <Screen title="Standing nowhere">
        <p>Recorded, but nobody has said where. Scan them into a drawer, or open one and move it.</p>
        {rows.length === 0 && <Empty title="Everything has a place" />}
        <ThingRows rows={rows} />
        {rows.length > 0 && <TakeList shown={{ of: 'rows', title: 'Standing nowhere', rows }} />}
      </Screen>
    );
  }
  const page = placePage(shelf, id as PlaceId, marksSeen(), flagsTo, units);
  if (!page) {
    return (
      <Screen title="Not recorded">
        <Empty title="This place is no longer recorded" actions={<LinkButton href="#/">To the shelves</LinkButton>} />
      </Screen>
    );
  }
  const isAway = page.kind === 'away';
  return (
    <Screen
      title={page.title}
      tools={<ThingMore id={page.id} />}
      actions={
        <>
          <LinkButton look="main" href={to(['move'], isAway ? { lend: 'yes', holder: page.holder } : { to: id })}>
            {isAway ? 'Lend things here' : 'Move things here'}
          </LinkButton>
          <LinkButton href={to(['edit', id])}>Edit</LinkButton>
          {!isAway && <LinkButton href={to(['new', 'mould'], { at: id })}>Record a mould here</LinkButton>}
        </>
      }
    >
      <Where page={page} />
      <Thumbs pictures={page.pictures} what={page.title} of={page.id} />
      {page.states.length > 0 && (
        <p class="row-marks">
          <StateMarks states={page.states} />
        </p>
      )}
      <div class="card">
        <p class="contents-count">
          <strong>{countsInWords(page.front)}</strong>
          {page.room && (page.isOverFull ? <Mark shape="full" word={page.room} tone="soon" /> : <span>· {page.room}</span>)}
        </p>
        {page.front.marks.length > 0 && (
          <p class="row-marks">
            {page.front.marks.map((mark) => (
              <Mark
                key={`${mark.level}${mark.kind}`}
                shape={FLAG_SHAPE[mark.kind]}
                word={markInWords(mark)}
                tone={LEVEL_TONE[mark.level]}
              />
            ))}
          </p>
        )}
        {page.periods.length > 0 && (
          <ul class="chips">
            {page.periods.map((period) => (
              <li key={period.id}>
                <a class="chip" href={to(['thing', period.id])}>
                  <span>{period.name}</span>
                  {period.span && <small>{period.span}</small>}
                </a>
              </li>
            ))}
          </ul>
        )}
        <Facts facts={page.facts} />
      </div>
      {page.inside.length > 0 && (
        <section>
          <h2 class="section">Places inside</h2>
          <FrontList fronts={page.inside} hrefOf={(inner) => to(['place', inner.id])} />
        </section>
      )}
      {page.kind !== 'room' && page.kind !== 'cabinet' && page.rows.length > 0 && (
        <section>
          <h2 class="section">{isAway ? 'What is there, until when' : 'What stands here'}</h2>
          <ThingRows rows={page.rows} />
          <TakeList shown={{ of: 'rows', title: page.path || page.title, rows: page.rows }} />
        </section>
      )}
      {!isBeside && <History id={page.id} />}
    </Screen>
  );
}

function Where({ page }: { page: PlacePage }) {
  const shelf = useShelf();
  const front = page.onFront;
  const cabinet = front && frontsOf(shelf, marksSeen()).cabinets.find(({ id }) => id === front.cabinet);
  return (
    <div class="where">
      {cabinet && front && (
        <a
          class="where-front"
          href={to(['shelves', front.cabinet], front.drawer === front.cabinet ? {} : { drawer: front.drawer })}
          aria-label={`Show on the front of ${cabinet.name}`}
        >
          <MiniFront cabinet={cabinet} picked={front.drawer} />
        </a>
      )}
      <p class="where-path">
        <span class="thing-what">{page.kind}</span>
        {page.around.map(({ id, name }) => (
          <span key={id}>
            <a class="where-step" href={to(['place', id])}>
              {name}
            </a>{' '}
            ›{' '}
          </span>
        ))}
        <strong>{page.front.label}</strong>
      </p>
    </div>
  );
}
