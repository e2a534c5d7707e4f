import { useId } from 'preact/hooks';
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
  const set = (next: number) => onChange(Math.min(high, Math.max(low, next)));
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
          value={String(value)}
          onFocus={(event) => event.currentTarget.select()}
          onInput={(event) => {
            const typed = Number(event.currentTarget.value.replace(',', '.'));
            if (Number.isFinite(typed)) set(Math.round(typed));
          }}
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
