import { useMemo, useState } from 'preact/hooks';
import { sayCount } from '../../domain/measure-words.ts';
import type { SumName } from '../../views/life-known.ts';
import { askInSlices, type LastMould, lastMouldsInSlices, type RemakeItem, remakeList, type Source } from '../../views/remake-first.ts';
import { remakeOut } from '../../views/remake-out.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Mark } from '../parts/mark.tsx';
import { Empty, ProblemNote } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { TakeList } from '../parts/take-list.tsx';
import { ThingRow } from '../parts/thing-row.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useInTurns } from '../use-in-turns.ts';
import { useLife } from '../use-life.ts';
import '../styles/life.css';

const FEW = 20;
const NO_NAMES: readonly SumName[] = [];

/** Moulds to make again, those first whose loss would be felt most. */
export function RemakeScreen(_: object) {
  const shelf = useShelf();
  const today = useDeps().today();
  const { mould, master, want, design, casting, injectedWax } = shelf.things;
  const ask = useInTurns(() => askInSlices(shelf), [mould, want, design, casting, injectedWax, shelf.studio]);
  const last = useInTurns(() => lastMouldsInSlices(shelf), [mould, master]) ?? [];
  const { forecasts, problem } = useLife(ask?.names ?? NO_NAMES, ask?.moulds);
  const isReady = ask !== undefined && (ask.moulds.length === 0 || forecasts !== undefined);
  const list = useMemo(
    () => (isReady && ask ? remakeList(shelf, ask, forecasts ?? [], today) : undefined),
    [shelf, ask, forecasts, isReady, today],
  );
  const [shown, setShown] = useState(FEW);
  return (
    <Screen title="Make again first" actions={<LinkButton href={to(['life'])}>How long moulds last</LinkButton>}>
      {problem && <ProblemNote problem={problem} />}
      {!list && !problem && <p class="wait">Reckoning…</p>}
      {list?.items.length === 0 && (
        <Empty title="No mould has to be made again yet">
          <p>
            {list.safe > 0
              ? `For all ${sayCount(list.safe, 'design')} that are wanted, the moulds there are will most likely do.`
              : 'Record wants, or how many castings of a design to keep, and what its moulds can still make is held against it here.'}
          </p>
        </Empty>
      )}
      {list && list.items.length > 0 && (
        <>
          <p class="field-hint">
            Ordered by the pieces that would be missed: the chance that the moulds give out, times how many are wanted. What a forecast
            rests on stands on its mould’s page.
          </p>
          <ol class="list remake-list">
            {list.items.slice(0, shown).map((item) => (
              <Item key={item.key} item={item} />
            ))}
          </ol>
          {list.items.length > shown && (
            <Button onClick={() => setShown(shown + FEW)}>Show more of {sayCount(list.items.length - shown, 'other')}</Button>
          )}
          {list.safe > 0 && <p>For {sayCount(list.safe, 'more kind')} that are wanted, the moulds there are will most likely do.</p>}
        </>
      )}
      <LastOnes last={last} />
      {list && <TakeList shown={{ of: 'table', ...remakeOut(list, last) }} />}
    </Screen>
  );
}

function Item({ item }: { item: RemakeItem }) {
  return (
    <li class="card remake-item">
      <h2>{item.title}</h2>
      <p class="row-marks">
        <Mark
          shape={item.isLate ? 'due' : 'worn'}
          word={`about ${Math.max(1, Math.round(item.missed))} would be missed`}
          tone={item.isLate ? 'act' : 'soon'}
        />
        {!item.canBeMade && <Mark shape="failed" word="cannot be made" tone="act" />}
        {item.isLast && <Mark shape="last" word="last of its kind" tone="act" />}
      </p>
      <p>
        {item.wanted} {item.chance}
      </p>
      <p>
        <strong>{item.start}</strong>
      </p>
      <SourceLine source={item.source} />
      {item.moulds.length > 0 && (
        <ul class="list">
          {item.moulds.map((mould) => (
            <ThingRow key={mould.id} href={to(['mould', mould.id])} title={mould.title} detail={mould.says} />
          ))}
        </ul>
      )}
    </li>
  );
}

function SourceLine({ source }: { source: Source }) {
  return (
    <p>
      <Mark shape={source.isSound ? 'sound' : 'worn'} word={source.says} tone={source.isSound ? 'good' : 'soon'} />
      {source.master && (
        <>
          {' '}
          <a class="life-link" href={to(['thing', source.master.id])}>
            {source.master.title}
          </a>
        </>
      )}
      {source.place && (
        <>
          {' in '}
          <a class="life-link" href={to(['place', source.place.id])}>
            {source.place.path}
          </a>
        </>
      )}
    </p>
  );
}

function LastOnes({ last }: { last: readonly LastMould[] }) {
  const [shown, setShown] = useState(FEW);
  if (last.length === 0) return null;
  return (
    <section>
      <h2 class="section">The last of their kind: {last.length}</h2>
      <p>One living mould and no master. When it goes, the design goes: keep a wax or casting of it as a master.</p>
      <ul class="list">
        {last.slice(0, shown).map(({ id, title, detail }) => (
          <ThingRow
            key={id}
            href={to(['mould', id])}
            title={title}
            detail={detail}
            marks={<Mark shape="last" word="last of its kind" tone="act" />}
          />
        ))}
      </ul>
      {last.length > shown && <Button onClick={() => setShown(shown + FEW)}>Show more of {sayCount(last.length - shown, 'other')}</Button>}
    </section>
  );
}
