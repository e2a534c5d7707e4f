import { useState } from 'preact/hooks';
import { resizeCabinet } from '../../domain/drawing/drawing.ts';
import { beside } from '../../domain/form-problem.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';
import { titleOf } from '../../domain/title.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { mmFrom } from '../../domain/units.ts';
import { type DrawDraft, shownLength } from '../drawing/draft.ts';
import type { Easel } from '../drawing/use-drawing.ts';
import { useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { Choices, Field } from './field.tsx';
import { PickOne } from './pick-one.tsx';

interface CabinetProps {
  easel: Easel;
  draft: DrawDraft;
  set: (changes: Partial<DrawDraft>) => void;
  problem: Problem | undefined;
}

/** What the cabinet is called and how large its front is. */
export function CabinetName({ easel, draft, set, problem }: CabinetProps) {
  return (
    <section aria-label="The cabinet">
      <Field label="What you call it" value={draft.name} max={120} problem={beside(problem, 'name')} onInput={(name) => set({ name })} />
      <CabinetSize key={`${easel.drawing.widthMm} ${easel.drawing.heightMm}`} easel={easel} />
    </section>
  );
}

/** A size is taken when the field is left: half of a figure would squeeze all fronts. */
function CabinetSize({ easel }: { easel: Easel }) {
  const units = useUnits();
  const { widthMm, heightMm } = easel.drawing;
  const [typed, setTyped] = useState({ wide: shownLength(widthMm, units), high: shownLength(heightMm, units) });
  const [wrong, setWrong] = useState<string | undefined>();
  function take(): void {
    const [wide, high] = [parseTypedNumber(typed.wide), parseTypedNumber(typed.high)];
    if (isProblem(wide) || isProblem(high) || wide === undefined || high === undefined)
      return setWrong('Say how wide and how high its front is.');
    const [width, height] = [
      typed.wide === shownLength(widthMm, units) ? widthMm : Math.round(mmFrom(wide, units.length) * 10) / 10,
      typed.high === shownLength(heightMm, units) ? heightMm : Math.round(mmFrom(high, units.length) * 10) / 10,
    ];
    if (width === widthMm && height === heightMm) return setWrong(undefined);
    const next = resizeCabinet(easel.drawing, width, height);
    if (isProblem(next)) return setWrong(next.says);
    easel.take(() => next, 'The cabinet has another size; its fronts went along.');
  }
  return (
    <form
      class="two"
      onFocusOut={take}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <Field
        label="Width of its front"
        keys="decimal"
        unit={units.length}
        value={typed.wide}
        problem={wrong}
        onInput={(wide) => setTyped({ ...typed, wide })}
      />
      <Field label="Height" keys="decimal" unit={units.length} value={typed.high} onInput={(high) => setTyped({ ...typed, high })} />
      <input type="submit" hidden />
    </form>
  );
}

/** Where it stands, and whether it is an open rack. */
export function CabinetPlace({ draft, set, problem }: Omit<CabinetProps, 'easel'>) {
  const shelf = useShelf();
  const rooms = [...shelf.things.place.values()]
    .filter((place) => place.kind === 'room' && !place.retired)
    .map((place) => ({ id: place.id, word: titleOf(shelf, place) }));
  return (
    <section class="card" aria-label="Where it stands">
      <h2>Where it stands</h2>
      <PickOne
        legend="Room"
        options={rooms}
        picked={draft.newRoom.trim() === '' ? draft.room : 'new'}
        problem={beside(problem, 'in')}
        onPick={(room) => set({ room, newRoom: '' })}
        none="No room is recorded yet. A studio of one room needs none."
      />
      <Field
        label="Or a new room"
        value={draft.newRoom}
        max={120}
        problem={beside(problem, 'newRoom')}
        onInput={(newRoom) => set({ newRoom })}
      />
      <Choices
        legend="What it is"
        options={[
          { value: 'no', word: 'cabinet with drawers' },
          { value: 'yes', word: 'open rack with shelves' },
        ]}
        picked={[draft.isRack ? 'yes' : 'no']}
        onPick={([rack]) => set({ isRack: rack === 'yes' })}
      />
    </section>
  );
}
