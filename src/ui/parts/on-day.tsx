import { useId, useState } from 'preact/hooks';
import type { Day } from '../../domain/brand.ts';
import { dayFrom } from '../../domain/day-words.ts';
import { isProblem } from '../../domain/problem.ts';
import { parsePastDay, UNFINISHED_DAY } from '../../domain/typed-day.ts';

/** On which day it happened: today, in one line, unless somebody opens it. Empty means today, so that a form kept overnight stays right. */
export function OnDay({
  today,
  value,
  problem,
  onChange,
}: {
  today: Day;
  value: string;
  problem: string | undefined;
  onChange: (day: string) => void;
}) {
  const id = useId();
  const [isOpen, setOpen] = useState(value !== '');
  const read = parsePastDay(value, today);
  const says = (isProblem(read) ? read.says : undefined) ?? problem;
  const word = isProblem(read) ? 'not clear yet' : dayFrom(today, read ?? today);
  return (
    <details class="more" open={isOpen || says !== undefined} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="unseen">On which day: </span>
        {word[0]?.toUpperCase()}
        {word.slice(1)} · change
      </summary>
      <div class="field">
        <label for={id}>On which day</label>
        <input
          id={id}
          type="date"
          max={today}
          // Never the mark of an unfinished day: it would wipe the parts that were typed.
          value={value === UNFINISHED_DAY ? '' : value || today}
          aria-invalid={says ? 'true' : undefined}
          aria-describedby={says ? `${id}-note` : undefined}
          onInput={({ currentTarget: { value: day, validity } }) => onChange(validity.badInput ? UNFINISHED_DAY : day === today ? '' : day)}
        />
        {says && (
          <p id={`${id}-note`} class="field-problem">
            {says}
          </p>
        )}
      </div>
    </details>
  );
}
