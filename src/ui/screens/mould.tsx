import type { MouldId } from '../../domain/brand.ts';
import { isBeginning } from '../../views/first-steps.ts';
import { type MouldPage, mouldPageOf, type Named } from '../../views/mould-page.ts';
import { Facts } from '../parts/facts.tsx';
import { FlagList } from '../parts/flag-list.tsx';
import { Hint } from '../parts/hint.tsx';
import { History } from '../parts/history.tsx';
import { Kin } from '../parts/kin.tsx';
import { lazy } from '../parts/lazy.tsx';
import { MouldNext } from '../parts/mould-next.tsx';
import { MouldWhere } from '../parts/mould-where.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { Thumbs } from '../parts/photos.tsx';
import { Picture } from '../parts/picture.tsx';
import { Screen } from '../parts/screen.tsx';
import { StateMarks } from '../parts/states.tsx';
import { ThingMore } from '../parts/thing-more.tsx';
import { ThingRow } from '../parts/thing-row.tsx';
import { Unsaid } from '../parts/unsaid.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';

const MouldLifePart = lazy(async () => (await import('../parts/mould-life.tsx')).MouldLifePart);

/** Everything about one mould, and what is most likely done with it next. */
export function MouldScreen({ id }: { id: string }) {
  const deps = useDeps();
  const units = useUnits();
  const shelf = useShelf();
  const page = mouldPageOf(shelf, id as MouldId, deps.today(), units);
  if (!page) return <NoThing word="mould" />;
  return (
    <Screen title={page.title} tools={<ThingMore id={page.id} />} actions={<MouldNext page={page} />}>
      <div class="mould-page">
        {page.code && isBeginning(shelf) && (
          <Hint step="label">
            write <strong class="code">{page.code}</strong> on the mould’s label, or{' '}
            <a href={to(['labels'], { things: page.id })}>print it</a>. From then on a scan finds it.
          </Hint>
        )}
        <Head page={page} />
        <FlagList flags={page.flags} />
        {page.gradeNote && <p>“{page.gradeNote}”</p>}
        <MouldWhere page={page} />
        <MouldLifePart id={page.id} isDrifting={page.flags.some(({ kind }) => kind === 'rejects')} />
        <section class="card">
          <h2>Shots and rejects</h2>
          <Facts facts={page.counts} />
          {page.nextLook && <p>Next look by {page.nextLook}.</p>}
        </section>
        <section class="card">
          <h2>Wax and settings that work</h2>
          <Facts facts={page.injection} />
          <p class="field-hint">{page.injectionFrom ?? 'Nothing is known yet: log a run, or edit the mould.'}</p>
        </section>
        {page.making.length > 0 && (
          <section class="card">
            <h2>Rubber and age</h2>
            <Facts facts={page.making} />
          </section>
        )}
        <Things
          title={page.masters.length > 1 ? 'Masters it came from' : 'Master it came from'}
          things={page.masters}
          none="Nobody has said which master it came from."
        />
        <Things
          title="What it has made"
          things={page.made}
          none={page.descendants.length > 0 ? undefined : 'No waxes or castings of it are on hand.'}
        />
        <Things title="Masters dressed from its waxes" things={page.descendants} />
        <Kin id={page.id} />
        {page.note && (
          <section class="card">
            <h2>Note</h2>
            <p class="note-text">{page.note}</p>
          </section>
        )}
        <Unsaid id={page.id} />
        <History id={page.id} />
      </div>
    </Screen>
  );
}

function Head({ page }: { page: MouldPage }) {
  const [first] = page.pictures;
  return (
    <div class="mould-head">
      {first && <Thumbs pictures={page.pictures} what={page.title} of={page.id} />}
      <div>
        <p class="row-marks">
          <StateMarks states={page.states} of={page.id} />
        </p>
        <p>
          {page.design ? <a href={to(['thing', page.design.id])}>{page.design.title}</a> : 'No design written down'}
          {page.size && <>, {page.size}</>}
        </p>
        <p>{page.purpose}</p>
        {page.code && <p class="code">{page.code}</p>}
      </div>
    </div>
  );
}

function Things({ title, things, none }: { title: string; things: readonly Named[]; none?: string | undefined }) {
  if (things.length === 0 && !none) return null;
  return (
    <section>
      <h2 class="section">{title}</h2>
      {things.length === 0 && <p>{none}</p>}
      <ul class="list">
        {things.map((thing) => (
          <ThingRow
            key={thing.id}
            href={to(['thing', thing.id])}
            title={thing.title}
            {...(thing.detail ? { detail: thing.detail } : {})}
            {...(thing.picture ? { picture: <Picture sha={thing.picture} alt="" /> } : {})}
          />
        ))}
      </ul>
    </section>
  );
}
