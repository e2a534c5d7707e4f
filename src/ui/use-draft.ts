import { useCallback, useRef, useState } from 'preact/hooks';
import type { Day } from '../domain/brand.ts';
import { useDeps } from './studio.tsx';

export interface Draft<T> {
  readonly values: T;
  /** Also after the screen is left, such as when the camera brings something back for it. */
  readonly set: (changes: Partial<T>) => void;
  /** The form is done. */
  readonly clear: () => void;
  /** The earlier day this form was typed into and left, when it was found again. */
  readonly keptOn: Day | undefined;
  /** Throws away what was found again. */
  readonly startAfresh: () => void;
}

/**
 * What a form holds, kept at every key stroke, and found again after a reload, a crash or a look elsewhere. `sound` leaves of what was found
 * what can be read, where a form is more than texts, figures and marks.
 */
export function useDraft<T extends object>(form: string, start: () => T, sound = (kept: T, _start: T): T => kept): Draft<T> {
  const { drafts, today } = useDeps();
  const [found] = useState(() => drafts.read(form));
  const [values, setValues] = useState<T>(() => {
    const begun = start();
    return found ? sound(fitting(found.values, begun), begun) : begun;
  });
  const [keptOn, setKeptOn] = useState(() => (found && found.on < today() ? found.on : undefined));
  const current = useRef(values);
  const set = useCallback(
    (changes: Partial<T>) => {
      current.current = { ...current.current, ...changes };
      drafts.keep(form, current.current);
      setValues(current.current);
    },
    [drafts, form],
  );
  const clear = useCallback(() => drafts.clear(form), [drafts, form]);
  const startAfresh = () => {
    clear();
    current.current = start();
    setValues(current.current);
    setKeptOn(undefined);
  };
  return { values, set, clear, keptOn, startAfresh };
}

/** Of what was kept, the parts that this form still has, in the kind it expects: an older version may have kept others. */
function fitting<T extends object>(raw: unknown, start: T): T {
  if (typeof raw !== 'object' || raw === null) return start;
  const kept: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(start)) {
    const found = (raw as Record<string, unknown>)[key];
    if (typeof found === typeof value && Array.isArray(found) === Array.isArray(value)) kept[key] = found;
  }
  return { ...start, ...kept };
}
