import { useState } from 'preact/hooks';
import { thingOf } from '../../domain/shelf.ts';
import { attentionOf, attentionTo } from '../../views/attention.ts';
import { thingPage } from '../../views/thing-page.ts';
import { makeFrom } from '../make-from.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { CountSheet } from '../parts/count-sheet.tsx';
import { Facts } from '../parts/facts.tsx';
import { FlagList } from '../parts/flag-list.tsx';
import { History } from '../parts/history.tsx';
import { Kin } from '../parts/kin.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { Thumbs } from '../parts/photos.tsx';
import { Screen } from '../parts/screen.tsx';
import { StandsPart } from '../parts/stands.tsx';
import { StateMarks } from '../parts/states.tsx';
import { TakeList } from '../parts/take-list.tsx';
import { ThingMore } from '../parts/thing-more.tsx';
import { ThingRows } from '../parts/thing-rows.tsx';
import { Unsaid } from '../parts/unsaid.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';

/** A design, master, injected wax, casting, wax, injector, flask, period or want: what is known of it, and what belongs with it. */
export function ThingScreen({ id }: { id: string }) {
  const shelf = useShelf();
  const units = useUnits();
  const [isCounting, setCounting] = useState(false);
  const attention = attentionOf(shelf, useDeps().today(), units);
  const page = thingPage(shelf, id, units, (thing) => attentionTo(attention, thing));
  if (!page) return <NoThing word="thing" />;
  const thing = thingOf(shelf, id);
  const counted = thing?.noun === 'injectedWax' || thing?.noun === 'casting' ? thing : undefined;
  return (
    <Screen
      title={page.title}
      tools={<ThingMore id={page.id} />}
      actions={
        <>
          {page.stands && (
            <LinkButton look="main" href={to(['move'], { things: id })}>
              Move it
            </LinkButton>
          )}
          {page.noun === 'master' && <LinkButton href={to(['thing', id, 'inspect'])}>Inspect</LinkButton>}
          {thing &&
            makeFrom(thing)
              .slice(0, 1)
              .map(({ word, href }) => (
                <LinkButton key={word} href={href}>
                  {word}
                </LinkButton>
              ))}
          {counted && <Button onClick={() => setCounting(true)}>Count</Button>}
          <LinkButton href={to(['edit', id])}>Edit</LinkButton>
          {page.noun === 'design' && <LinkButton href={to(['new', 'mould'], { design: id })}>Record a mould of it</LinkButton>}
        </>
      }
    >
      <p class="thing-what">
        <span>{page.what}</span> <StateMarks states={page.states} />
      </p>
      <Thumbs pictures={page.pictures} what={page.title} of={page.id} />
      <FlagList flags={page.flags} />
      {page.stands && <StandsPart path={page.stands.path} front={page.stands.front} thing={id} />}
      <div class="card">
        <Facts facts={page.facts} />
        {page.note && <p class="thing-note">{page.note}</p>}
        {page.facts.length === 0 && !page.note && <p>Nothing more is known of it yet. Edit it to say more.</p>}
      </div>
      <Kin id={page.id} />
      {page.related.map(({ heading, rows }) => (
        <section key={heading}>
          <h2 class="section">
            {heading} <small>{rows.length}</small>
          </h2>
          <ThingRows rows={rows} showsPlace />
          <TakeList what={`this list: ${heading}`} shown={{ of: 'rows', title: `${heading}: ${page.title}`, rows }} />
        </section>
      ))}
      <Unsaid id={page.id} />
      <History id={page.id} />
      {counted && isCounting && <CountSheet thing={counted} onClose={() => setCounting(false)} />}
    </Screen>
  );
}
