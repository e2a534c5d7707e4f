import { useState } from 'preact/hooks';
import type { Row } from '../../views/place-page.ts';
import { addressOf } from '../address.ts';
import { FLAG_SHAPE, LEVEL_TONE } from '../flag-look.ts';
import { Button } from './button.tsx';
import { lazy } from './lazy.tsx';
import { Mark } from './mark.tsx';
import { PickStart } from './pick-start.tsx';
import { Picture } from './picture.tsx';
import { Shape } from './shape.tsx';
import { StateMarks } from './states.tsx';
import { ThingRow } from './thing-row.tsx';

const PickRows = lazy(async () => (await import('./pick-rows.tsx')).PickRows);

const FIRST = 60;
/** Flags that say no more than the state beside them. */
const SAID_BY_STATE = new Set<string>(['failed', 'worn']);

/** Things in a place, each with its picture, state and what calls for attention. `sought` stands out. */
export function ThingRows({ rows, sought, showsPlace = false }: { rows: readonly Row[]; sought?: string; showsPlace?: boolean }) {
  const [shown, setShown] = useState(FIRST);
  const first = sought ? [...rows].sort((a, b) => Number(b.id === sought) - Number(a.id === sought)) : rows;
  const [pickFrom, setPickFrom] = useState<number | undefined>();
  const hasPictures = rows.some(({ picture }) => picture !== undefined);
  if (pickFrom !== undefined) {
    const lines = first.map((row) => ({ ...row, marks: <Marks row={row} isSought={row.id === sought} /> }));
    return <PickRows rows={lines} begin={pickFrom} onDone={() => setPickFrom(undefined)} />;
  }
  return (
    <>
      {rows.length > 1 && <PickStart onStart={setPickFrom} />}
      <ul class="list">
        {first.slice(0, shown).map((row) => (
          <ThingRow
            key={row.id}
            href={addressOf(row)}
            title={row.title}
            detail={showsPlace && row.place ? `${row.place} · ${row.detail}` : row.detail}
            picture={
              hasPictures && (row.picture ? <Picture sha={row.picture} alt="" /> : <span class="picture picture-thumb picture-none" />)
            }
            marks={<Marks row={row} isSought={row.id === sought} />}
          />
        ))}
      </ul>
      {rows.length > shown && <Button onClick={() => setShown(shown * 4)}>Show {Math.min(rows.length - shown, shown * 3)} more</Button>}
    </>
  );
}

function Marks({ row, isSought }: { row: Row; isSought: boolean }) {
  return (
    <>
      {isSought && (
        <span class="mark mark-sought">
          <Shape name="yes" size={18} />
          <span>this one</span>
        </span>
      )}
      <StateMarks states={row.states} of={row.id} />
      {row.flags
        .filter(({ kind }) => !SAID_BY_STATE.has(kind))
        .map(({ kind, level, word }) => (
          <Mark key={kind} shape={FLAG_SHAPE[kind]} word={word} tone={LEVEL_TONE[level]} />
        ))}
    </>
  );
}
