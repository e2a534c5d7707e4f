import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { text } from '../../domain/field.ts';
import { isProblem, type Problem } from '../../domain/problem.ts';

interface FieldProps {
  label: string;
  /** For who looks at the field from outside, such as a scanner that types. */
  name?: string;
  value: string;
  onInput: (value: string) => void;
  hint?: string;
  problem?: Problem | string | undefined;
  /** `decimal` and `numeric` bring up the number keys. */
  keys?: 'text' | 'decimal' | 'numeric' | 'search' | 'url';
  type?: 'text' | 'date' | 'search';
  lines?: number;
  unit?: string;
  /** Characters that fit. What is longer is not cut but said: no one sees what a browser leaves away of a pasted text. */
  max?: number;
  list?: readonly string[];
  autoFocus?: boolean;
}

/** A labelled text field, its unit, a hint and what is wrong with it. */
export function Field({
  label,
  name,
  value,
  onInput,
  hint,
  problem,
  keys = 'text',
  type = 'text',
  lines = 1,
  unit,
  max,
  list,
  autoFocus,
}: FieldProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (autoFocus) input.current?.focus();
  }, [autoFocus]);
  const read = max === undefined || value.trim() === '' ? undefined : text(max)(value);
  const wrong = isProblem(read) ? read : problem;
  const says = typeof wrong === 'string' ? wrong : wrong?.says;
  const common = {
    id,
    name,
    value,
    'aria-invalid': says ? ('true' as const) : undefined,
    'aria-describedby': says || hint ? `${id}-note` : undefined,
    onInput: (event: Event) => onInput((event.currentTarget as HTMLInputElement).value),
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="field-row">
        {lines > 1 ? (
          <textarea {...common} rows={lines} />
        ) : (
          <input {...common} type={type} inputMode={keys} list={list ? `${id}-list` : undefined} autoComplete="off" ref={input} />
        )}
        {unit && <span class="field-unit">{unit}</span>}
      </div>
      {list && (
        <datalist id={`${id}-list`}>
          {list.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
      {(says || hint) && (
        <p id={`${id}-note`} class={says ? 'field-problem' : 'field-hint'}>
          {says ?? hint}
        </p>
      )}
    </div>
  );
}

export function Select({
  label,
  value,
  options,
  onInput,
  hint,
}: {
  label: string;
  value: string;
  options: readonly { readonly value: string; readonly word: string }[];
  onInput: (value: string) => void;
  hint?: string;
}) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onInput(event.currentTarget.value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.word}
          </option>
        ))}
      </select>
      {hint && <p class="field-hint">{hint}</p>}
    </div>
  );
}

/** One or several of a few, as large buttons. `picked` holds the chosen values. */
export function Choices<T extends string>({
  legend,
  options,
  picked,
  onPick,
  several = false,
}: {
  legend: string;
  options: readonly { readonly value: T; readonly word: string; readonly sign?: ComponentChildren }[];
  picked: readonly T[];
  onPick: (picked: readonly T[]) => void;
  several?: boolean;
}) {
  const name = useId();
  return (
    <fieldset class="choices">
      <legend>{legend}</legend>
      {options.map(({ value, word, sign }) => (
        <label key={value} class="choice">
          <input
            type={several ? 'checkbox' : 'radio'}
            name={name}
            checked={picked.includes(value)}
            onChange={() => {
              if (!several) onPick([value]);
              else onPick(picked.includes(value) ? picked.filter((each) => each !== value) : [...picked, value]);
            }}
          />
          {sign}
          <span>{word}</span>
        </label>
      ))}
    </fieldset>
  );
}
