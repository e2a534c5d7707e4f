import { useCallback, useRef, useState } from 'preact/hooks';
import type { Day } from '../domain/brand.ts';
import { isProblem, type Problem } from '../domain/problem.ts';
import { useDeps } from './studio.tsx';

export interface Draft<T> {
  readonly values: T;
  /** Also after the screen is left, such as when the camera brings something back for it. */
  readonly set: (changes: Partial<T>) => void;
  /** The form is done. */
  readonly clear: () => void;
  /** The earlier day this form was typed into and left, when it was found again. */
  readonly keptOn: Day | undefined;
  /** What of it could not be read. It lies where it was until something is typed. */
  readonly problem: Problem | undefined;
  /** Throws away what was found again. */
  readonly startAfresh: () => void;
}

/** What can be read of what was found again, and a Problem that says what cannot. */
export interface FoundAgain<T> {
  readonly values: T;
  readonly problem?: Problem | undefined;
}

/** `kept` is the form as far as its fields are of the kind it expects, `raw` all that was found, empty when it could not be read at all. */
export type Sound<T> = (kept: T, start: T, raw: object) => FoundAgain<T>;

/**
 * What a form holds, kept at every key stroke, and found again after a reload, a crash or a look elsewhere. `sound` leaves of what was found
 * what can be read, where a form is more than texts, figures and marks.
 */
export function useDraft<T extends object>(form: string, start: () => T, sound: Sound<T> = asItIs): Draft<T> {
  const { drafts, today } = useDeps();
  const [found] = useState(() => drafts.read(form));
  const [{ values: first, problem: lost }] = useState<FoundAgain<T>>(() => {
    const begun = start();
    if (!found) return { values: begun };
    if (!isProblem(found)) return sound(fitting(found.values, begun), begun, found.values);
    const { values, problem = found } = sound(begun, begun, {});
    return { values, problem };
  });
  const [values, setValues] = useState(first);
  const [problem, setProblem] = useState(lost);
  const [keptOn, setKeptOn] = useState(() => (found && !isProblem(found) && found.on < today() ? found.on : undefined));
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
    setProblem(undefined);
  };
  return { values, set, clear, keptOn, problem, startAfresh };
}

function asItIs<T>(kept: T): FoundAgain<T> {
  return { values: kept };
}

/** Of what was kept, the parts that this form still has, in the kind it expects: an older version may have kept others. */
function fitting<T extends object>(raw: object, start: T): T {
  const kept: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(start)) {
    const found = (raw as Record<string, unknown>)[key];
    if (typeof found === typeof value && Array.isArray(found) === Array.isArray(value)) kept[key] = found;
  }
  return { ...start, ...kept };
}
