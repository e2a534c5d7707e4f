import { useId, useState } from 'preact/hooks';
import { sayNumber } from '../../domain/measure-words.ts';
import { useRefused } from '../refused.ts';
import { Icon } from './icon.tsx';

interface StepperProps {
  label: string;
  value: number;
  onChange: (value: number) => void;
  low?: number;
  high?: number;
  /** Bigger steps offered beside plus and minus one. */
  leaps?: readonly number[];
  unit?: string;
}

/** A number for waxy thumbs: minus, the number itself, plus, and bigger steps. */
export function Stepper({ label, value, onChange, low = 0, high = 100_000, leaps = [], unit }: StepperProps) {
  const id = useId();
  /** As typed, until the field is left: what is half typed must not be written over. What is wrong stays, and nothing is saved until it is put right. */
  const [typed, setTyped] = useState<string | undefined>();
  const [wrong, setWrong] = useState<string | undefined>();
  useRefused(id, wrong && `${label}: ${wrong}`);
  const leave = () => {
    if (wrong === undefined) setTyped(undefined);
  };
  const set = (next: number) => {
    setTyped(undefined);
    setWrong(undefined);
    onChange(Math.min(high, Math.max(low, next)));
  };
  const type = (text: string) => {
    setTyped(text);
    const read = text.trim() === '' ? undefined : readCount(text, low, high);
    setWrong(typeof read === 'string' ? read : undefined);
    if (typeof read === 'number') onChange(read);
  };
  return (
    <div class="stepper">
      <label for={id}>{label}</label>
      <div class="stepper-row">
        <button
          type="button"
          class="stepper-button"
          aria-label={`${label}: one less`}
          disabled={value <= low}
          onClick={() => set(value - 1)}
        >
          <Icon name="minus" />
        </button>
        <input
          id={id}
          inputMode="numeric"
          value={typed ?? String(value)}
          aria-invalid={wrong !== undefined}
          aria-describedby={wrong ? `${id}-wrong` : undefined}
          onFocus={(event) => event.currentTarget.select()}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={leave}
          onKeyDown={(event) => event.key === 'Enter' && leave()}
        />
        {unit && <span class="field-unit">{unit}</span>}
        <button
          type="button"
          class="stepper-button"
          aria-label={`${label}: one more`}
          disabled={value >= high}
          onClick={() => set(value + 1)}
        >
          <Icon name="plus" />
        </button>
      </div>
      {wrong && (
        <p class="field-problem" id={`${id}-wrong`} role="alert">
          {wrong} It was {value}.
        </p>
      )}
      {leaps.length > 0 && (
        <div class="stepper-leaps">
          {leaps.map((leap) => (
            <button
              type="button"
              key={leap}
              class="button button-quiet"
              aria-label={`${label}: ${Math.abs(leap)} ${leap < 0 ? 'less' : 'more'}`}
              onClick={() => set(value + leap)}
            >
              {leap < 0 ? `−${-leap}` : `+${leap}`}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

/** The number typed, or what is wrong with it. */
function readCount(text: string, low: number, high: number): number | string {
  const written = text.trim().replace('−', '-');
  if (!/^-?\d+$/.test(written)) return `“${text.trim()}” is no whole number.`;
  const count = Number(written);
  if (count < low) return `${low} is the least.`;
  return count > high ? `${sayNumber(high)} is the most.` : count;
}
