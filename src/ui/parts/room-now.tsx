import { useId } from 'preact/hooks';
import { sayTemperature, sayTemperatures } from '../../domain/measure-words.ts';
import { temperatureIn, type Units } from '../../domain/units.ts';
import type { WaxToday } from '../../views/wax-today.ts';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';

interface RoomNowProps {
  typed: string;
  onType: (typed: string) => void;
  today: WaxToday;
  units: Units;
  problem: string | undefined;
}

/** The room’s temperature in large figures, or, while none is typed, what the month is taken to be. */
export function RoomNow({ typed, onType, today, units, problem }: RoomNowProps) {
  const id = useId();
  const { room } = today;
  const step = (by: number) => {
    const now = Number(typed.replace(',', '.').replace('−', '-'));
    const from = typed.trim() === '' || !Number.isFinite(now) ? Math.round(temperatureIn(today.assumedC, units.temperature)) : now;
    onType(String(Math.round((from + by) * 10) / 10));
  };
  const usual = sayTemperatures(room.lowC, room.highC, units);
  return (
    <section class="card room-now" aria-label="The room">
      <label for={id}>The room is at</label>
      <div class="room-row">
        <button type="button" class="stepper-button" aria-label="One degree colder" onClick={() => step(-1)}>
          <Icon name="minus" />
        </button>
        <input
          id={id}
          class="room-input"
          inputMode="decimal"
          autoComplete="off"
          placeholder={sayTemperature(today.assumedC, units).replace(/\s.*/, '')}
          value={typed}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={`${id}-note`}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        <span class="field-unit room-unit">{units.temperature}</span>
        <button type="button" class="stepper-button" aria-label="One degree warmer" onClick={() => step(1)}>
          <Icon name="plus" />
        </button>
      </div>
      <div id={`${id}-note`}>
        {problem && <p class="field-problem">{problem}</p>}
        <p class="room-season">
          {today.month} is {today.season} here: the workshop is usually {usual}
          {room.isOwn ? '' : ', until you say otherwise below'}. {typed.trim() === '' ? 'The verdicts below are for that.' : ''}
        </p>
      </div>
      {typed.trim() !== '' && (
        <Button onClick={() => onType('')}>
          Take {today.month}: {usual}
        </Button>
      )}
    </section>
  );
}
