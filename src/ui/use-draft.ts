import { useCallback, useRef, useState } from 'preact/hooks';
import { useDeps } from './studio.tsx';

export interface Draft<T> {
  readonly values: T;
  /** Also after the screen is left, such as when the camera brings something back for it. */
  readonly set: (changes: Partial<T>) => void;
  /** The form is done. */
  readonly clear: () => void;
}

/** What a form holds, kept at every key stroke, and found again after a reload, a crash or a look elsewhere. */
export function useDraft<T extends object>(form: string, start: () => T): Draft<T> {
  const { drafts } = useDeps();
  const [values, setValues] = useState<T>(() => fitting(drafts.read(form), start()));
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
  return { values, set, clear };
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
