import { setRoomTable } from '../../actions/room-table.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { isProblem } from '../../domain/problem.ts';
import { hemisphereOf, type Month, roomTable } from '../../domain/room.ts';
import { monthName, seasonOf } from '../../domain/season.ts';
import { HEMISPHERES } from '../../domain/studio.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { celsiusFrom, temperatureIn } from '../../domain/units.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { useUnits } from '../use-units.ts';
import { Button } from './button.tsx';
import { Choices } from './field.tsx';
import { ProblemNote } from './note.tsx';
import { SaveProblem } from './save-problem.tsx';

/** The workshop’s low and high in each month, and which half of the world it is in; folded away until wanted. */
export function RoomMonths() {
  const deps = useDeps();
  const { studio } = useShelf();
  const units = useUnits();
  const table = roomTable(studio);
  const hemisphere = hemisphereOf(studio);
  // Only what was typed is kept in the draft: the other months follow the studio’s own table.
  const {
    values,
    set,
    clear,
    problem: lost,
  } = useDraft<{ typed: readonly string[] }>(`room-months:${units.temperature}`, () => ({ typed: [] }));
  const typed = new Map(values.typed.map((line) => line.split('|', 2) as [string, string]));
  const save = useSave(Object.fromEntries(table.map(({ month }) => [month, `${typed.get(`${month} low`)} ${typed.get(`${month} high`)}`])));
  const keep = (cell: string, text: string) =>
    set({ typed: [...new Map(typed).set(cell, text.replaceAll('|', ''))].map(([key, value]) => `${key}|${value}`) });
  const shown = (celsius: number) => String(Math.round(temperatureIn(celsius, units.temperature) * 10) / 10);

  function submit(): void {
    const months: { [M in Month]?: { lowC?: number; highC?: number } } = {};
    for (const room of table) {
      const [low, high] = (['low', 'high'] as const).map((end) => typed.get(`${room.month} ${end}`));
      if (low === undefined && high === undefined) continue;
      const read = (text: string | undefined, now: number) => {
        const number = text === undefined ? undefined : parseTypedNumber(text);
        return text === undefined
          ? now
          : isProblem(number) || number === undefined
            ? number
            : Math.round(celsiusFrom(number, units.temperature) * 10) / 10;
      };
      const [lowC, highC] = [read(low, room.lowC), read(high, room.highC)];
      for (const each of [lowC, highC])
        if (isProblem(each)) return save.show(formProblem({ [room.month]: `${monthName(Number(room.month))}: ${each.says}` }));
      months[room.month] = { ...(typeof lowC === 'number' ? { lowC } : {}), ...(typeof highC === 'number' ? { highC } : {}) };
    }
    void save.run(
      () => setRoomTable(deps, { months, units }),
      (entries) => {
        clear();
        set({ typed: [] });
        return entries.length > 0 ? 'The workshop’s months are written down.' : undefined;
      },
    );
  }

  return (
    <details class="card room-months">
      <summary>The workshop through the year</summary>
      <p>How cold and how warm the room usually gets. Figures marked “assumed” are common practice until you put your own in.</p>
      {lost && <ProblemNote problem={lost} />}
      <SaveProblem save={save} />
      <Choices
        legend="The workshop is in the"
        options={HEMISPHERES.map((value) => ({ value, word: value }))}
        picked={[hemisphere]}
        onPick={([picked]) => {
          if (picked)
            void save.run(
              () => setRoomTable(deps, { hemisphere: picked }),
              (entries) => (entries.length > 0 ? `Seasons of the ${picked}.` : undefined),
            );
        }}
      />
      <table class="months">
        <thead>
          <tr>
            <th scope="col">Month</th>
            <th scope="col">Low, {units.temperature}</th>
            <th scope="col">High, {units.temperature}</th>
          </tr>
        </thead>
        <tbody>
          {table.map((room) => {
            const name = monthName(Number(room.month));
            const problem = beside(save.problem, room.month);
            return (
              <tr key={room.month}>
                <th scope="row">
                  {name}
                  <span class="row-detail">
                    {seasonOf(Number(room.month), hemisphere)}
                    {room.isOwn ? '' : ', assumed'}
                  </span>
                </th>
                {(['low', 'high'] as const).map((end) => (
                  <td key={end}>
                    <input
                      inputMode="decimal"
                      autoComplete="off"
                      aria-label={`${name}, ${end}`}
                      aria-invalid={problem ? 'true' : undefined}
                      value={typed.get(`${room.month} ${end}`) ?? shown(end === 'low' ? room.lowC : room.highC)}
                      onInput={(event) => keep(`${room.month} ${end}`, event.currentTarget.value)}
                    />
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
      <div class="button-row">
        <Button look="main" disabled={save.isBusy || typed.size === 0} onClick={submit}>
          Keep these months
        </Button>
      </div>
    </details>
  );
}
